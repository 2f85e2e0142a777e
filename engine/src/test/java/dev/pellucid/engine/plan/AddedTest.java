package dev.pellucid.engine.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.plan.OnScales.LoadLine;
import dev.pellucid.engine.plan.OnScales.Turn;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class AddedTest {
  private static LoadLine line(String name, Turn turn, double kg) {
    boolean micro = turn == Turn.SMALL || turn == Turn.APART_FROM_VITAMINS;
    return new LoadLine(
        name, name, "", micro, turn, Mass.of(kg, 3), Optional.empty(), 0, Optional.empty());
  }

  private static String order(LoadLine... lines) {
    return Added.inOrder(List.of(lines)).stream()
        .map(added -> added.line().name() + " " + added.part())
        .collect(Collectors.joining(", "));
  }

  @Test
  void smallLinesLieBetweenTheHalvesOfTheLargestAndLiquidsComeLast() {
    assertEquals(
        "meal FIRST_HALF, salt ALL, premix ALL, choline ALL, maize ALL, meal OTHER_HALF, oil ALL",
        order(
            line("oil", Turn.LIQUID, 50),
            line("choline", Turn.APART_FROM_VITAMINS, 0.1),
            line("maize", Turn.LARGE, 10),
            line("meal", Turn.LARGE, 20),
            line("salt", Turn.SMALL, 0.2),
            line("premix", Turn.SMALL, 0.5)));
  }

  @Test
  void withoutSmallLinesNothingIsHalved() {
    assertEquals(
        "maize ALL, meal ALL", order(line("maize", Turn.LARGE, 1), line("meal", Turn.LARGE, 2)));
  }

  @Test
  void withoutALargeLineThereIsNoBed() {
    assertEquals("salt ALL", order(line("salt", Turn.SMALL, 1)));
  }
}
