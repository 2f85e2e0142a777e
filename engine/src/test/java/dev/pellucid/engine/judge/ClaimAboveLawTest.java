package dev.pellucid.engine.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A label of 10 mg/kg selenium on a feed of 10 % moisture: 11.11 mg/kg on dry matter, 9.778 mg/kg
 * at 12 % moisture, whatever the feed holds.
 */
class ClaimAboveLawTest {
  private final Cooked pantry = new Cooked().ingredient("meal", "moisture: 10 %, selenium: none");

  private List<ClaimAboveLaw> above(String limit, Limit.Kind kind) {
    ResolvedRecipe recipe =
        pantry
            .feed(
                "mix\n  meal  100 %\nlabel\n  selenium  10 mg/kg\nlimits\n  selenium  "
                    + (limit + "\n"))
            .recipe();
    List<Limit> limits = recipe.limits().stream().map(one -> asked(one, kind)).toList();
    return Judgement.of(pantry.feedOf(held(recipe, limits)), pantry.tables()).aboveLaw();
  }

  private static Limit asked(Limit limit, Limit.Kind kind) {
    Limit.Origin by = limit.origin();
    return new Limit(
        limit.subject(),
        limit.side(),
        limit.bound(),
        limit.written(),
        limit.basis(),
        limit.inBatches(),
        new Limit.Origin(kind, by.name(), by.source(), by.span()),
        limit.waiver());
  }

  private static ResolvedRecipe held(ResolvedRecipe recipe, List<Limit> limits) {
    return new ResolvedRecipe(
        recipe.source(),
        recipe.code(),
        recipe.title(),
        recipe.status(),
        recipe.reviewed(),
        recipe.species(),
        recipe.fish(),
        recipe.habit(),
        recipe.batch(),
        recipe.plant(),
        recipe.lines(),
        recipe.process(),
        recipe.profiles(),
        limits,
        recipe.label(),
        recipe.declared());
  }

  @ParameterizedTest
  @CsvSource({
    "max 10 mg/kg, 0",
    "max 9.99999 mg/kg, 1",
    "max 11.1112 mg/kg on dry matter, 0",
    "max 11.1111 mg/kg on dry matter, 1",
    "max 9.7778 mg/kg at 12 % moisture, 0",
    "max 9.7777 mg/kg at 12 % moisture, 1",
    "min 1 mg/kg, 0",
  })
  void whatTheLabelSaysIsHeldAgainstTheBasisOfTheLaw(String limit, int above) {
    assertEquals(above, above(limit, Limit.Kind.LAW).size());
    assertEquals(0, above(limit, Limit.Kind.PRACTICE).size());
  }
}
