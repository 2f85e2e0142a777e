package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.resolve.Line;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Of two rules for lines below a share, the lower share counts, in whatever order they stand. */
class NarrowestOverageTest {
  private static final String HALF = "  lines below 0.5 %  20 %  for handling\n";
  private static final String ONE = "  lines below 1 %  10 %  for handling\n";

  @ParameterizedTest
  @ValueSource(strings = {HALF + ONE, ONE + HALF})
  void theLowerShareCounts(String rules) {
    Cooked pantry = new Cooked();
    for (String name : List.of("meal", "spice", "dust")) {
      pantry.ingredient(name, "moisture: 10 %");
    }
    List<Line> lines =
        pantry
            .resolved(
                """
                mix
                  meal   98.8 %
                  spice   0.8 %
                  dust    0.4 %
                overage
                """
                    + rules)
            .lines();
    assertEquals(0, lines.get(0).onTop().kgPer100());
    assertEquals(0.08, lines.get(1).onTop().kgPer100());
    assertEquals(0.08, lines.get(2).onTop().kgPer100());
  }
}
