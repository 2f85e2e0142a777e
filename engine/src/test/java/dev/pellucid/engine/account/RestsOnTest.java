package dev.pellucid.engine.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.account.RestsOn.Group;
import dev.pellucid.engine.account.RestsOn.Kind;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Source.Reliability;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.resolve.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * A meal as the trade has it and one that is invented, so few figures that each can be counted by
 * hand.
 */
class RestsOnTest {
  private static final String HALVES = "mix\n  meal  50 %\n  other  50 %\n";

  private static Cooked cooked(String meal, String other) {
    return with(with(new Cooked(), "meal", "handbook", meal), "other", "pantry", other);
  }

  private static Cooked with(Cooked pantry, String name, String source, String rest) {
    return pantry.with(
        "ingredients/" + name + ".yaml",
        "name: "
            + name
            + "\ngroups: []\nform: meal\ncontents:\n  - source: "
            + source
            + "\n"
            + rest);
  }

  private static RestsOn of(Cooked pantry, String lines) {
    ComputedFeed feed = pantry.feed(lines);
    return RestsOn.of(feed, Judge.limits(feed), pantry.tables().practice());
  }

  private static List<String> figures(RestsOn rests) {
    List<String> figures = new ArrayList<>();
    for (RestsOn.Figure one : rests.figures()) {
      figures.add(one.kind() + " " + one.of() + " " + one.what() + ": " + one.source());
    }
    return figures;
  }

  /** What no limit reads is not counted, and what is read twice counts once. */
  @Test
  void contentsOfWhatLimitsRead() {
    RestsOn rests =
        of(
            cooked(
                "    moisture: 10 %\n    crude-protein: 40 %\n    zinc: 80 mg/kg\n",
                "    moisture: 10 %\n    crude-protein: 20 %\n    lysine: 1 %\n"),
            HALVES
                + "limits\n  crude-protein  min 28 %  max 35 %\n  lysine : crude-protein min 1 %\n");
    assertEquals(
        List.of(
            "CONTENT meal crude-protein: handbook",
            "CONTENT other crude-protein: pantry",
            "CONTENT other lysine: pantry"),
        figures(rests));
    assertEquals(3, rests.count());
    assertEquals(1, rests.count(Reliability.COMMON_PRACTICE));
    assertEquals(0, rests.count(Reliability.FROM_MEMORY));
    assertEquals(2, rests.count(Reliability.INVENTED));
    assertEquals(0, rests.count(Reliability.PUBLISHED));
    assertEquals(
        List.of(new Group(Kind.CONTENT, "other", Reliability.INVENTED, 2)),
        rests.groups(Reliability.INVENTED));
  }

  /** 0.04 % of 20 is a thousandth of 20: no more than a trace. */
  @Test
  void whatBringsATraceIsNotCounted() {
    String limit = HALVES + "limits\n  crude-protein  min 5 %\n";
    String meal = "    moisture: 10 %\n    crude-protein: 20 %\n";
    assertEquals(
        1, of(cooked(meal, "    moisture: 10 %\n    crude-protein: 0.02 %\n"), limit).count());
    assertEquals(
        2, of(cooked(meal, "    moisture: 10 %\n    crude-protein: 0.03 %\n"), limit).count());
    assertEquals(
        1, of(cooked(meal, "    moisture: 10 %\n    crude-protein: none\n"), limit).count());
  }

  /** Half a gram of a vitamin brings all of it. */
  @Test
  void aLittleThatBringsAllIsCounted() {
    Cooked pantry = cooked("    moisture: 10 %\n", "    moisture: 10 %\n    vitamin-c: 90 %\n");
    RestsOn rests =
        of(pantry, "mix\n  meal  rest\n  other  0.0005 %\nlimits\n  vitamin-c  max 10 mg/kg\n");
    assertEquals(List.of("CONTENT other vitamin-c: pantry"), figures(rests));
  }

  @Test
  void whatFollowsFromOthersIsFollowedDown() {
    Cooked pantry =
        cooked(
            """
                moisture: 10 %
                crude-protein: 40 %
            digestibility:
              - source: catfish-trials
                species: african-catfish
                crude-protein: 88 %
            """,
            "    moisture: 10 %\n    methionine: 0.5 %\n    cystine: 0.4 %\n    crude-protein: 1 %\n");
    RestsOn rests =
        of(
            pantry,
            "  species  african-catfish\n"
                + HALVES
                + "process\n  blend  time  10 min\n"
                + "limits\n  digestible-protein  min 15 %\n  methionine-cystine  min 0.4 %\n");
    assertEquals(
        List.of(
            "CONTENT meal crude-protein: handbook",
            "CONTENT other cystine: pantry",
            "CONTENT other methionine: pantry",
            "DIGESTIBILITY meal digestible-protein: catfish-trials",
            "FORMULA methionine-cystine methionine + cystine: handbook"),
        figures(rests).stream().sorted().toList());
    assertEquals(1, rests.count(Reliability.PUBLISHED));
  }

  /** The ± of an ingredient counts for it alone; what practice tells counts once for all. */
  @Test
  void spreadsCountWhereALimitAsksForBatches() {
    Cooked pantry =
        cooked(
            "    moisture: 10 %\n    crude-protein: 40 ± 1 %\n    crude-fat: 10 %\n",
            "    moisture: 10 %\n    crude-protein: 20 %\n    crude-fat: 8 %\n");
    String limits = "limits\n  crude-protein  min 25 %%%s\n  crude-fat  min 5 %%%<s\n";
    assertEquals(4, of(pantry, HALVES + limits.formatted("")).count());
    RestsOn rests = of(pantry, HALVES + limits.formatted("  in 95 % of batches"));
    assertEquals(
        List.of(
            "SPREAD meal crude-protein: handbook",
            "SPREAD practice/spreads.yaml crude-protein: workshop",
            "SPREAD practice/spreads.yaml crude-fat: workshop"),
        figures(rests).stream().filter(one -> one.startsWith("SPREAD")).toList());
    assertEquals(7, rests.count());
  }

  /** The class tells what is left in the dryer and in the store; of the mixer nothing is asked. */
  @Test
  void whatIsLeftOfAVitaminCountsForEachStep() {
    Cooked pantry =
        with(
            cooked("    moisture: 10 %\n", "    moisture: 10 %\n"),
            "vitamin",
            "workshop",
            """
                moisture: 1 %
                vitamin-c: 35 %
            stability:
              vitamin-c: vitamin-c-phosphate
            """);
    RestsOn rests =
        of(
            pantry,
            """
            mix
              meal  rest
              vitamin  0.1 %
            limits
              vitamin-c  min 50 mg/kg
            process
              blend  time  10 min
              dry  temperature  60 °C
              dry  moisture  9 %
              store  shelf-life  60 d
              store  temperature  25 °C
            """);
    assertEquals(
        List.of(
            "RETENTION vitamin-c-phosphate dry: handbook",
            "RETENTION vitamin-c-phosphate store: handbook",
            "CONTENT vitamin vitamin-c: workshop"),
        figures(rests));
  }

  /** 2 mg/kg are told; of the rest only the ash of its meal bounds how much there may be. */
  @Test
  void whatCannotBeJudgedIsLeftOut() {
    RestsOn rests =
        of(
            cooked(
                "    moisture: 10 %\n    crude-ash: 1 %\n    selenium: 4 mg/kg\n",
                "    moisture: 10 %\n    crude-ash: 0.01 %\n"),
            HALVES + "limits\n  selenium  max 3 mg/kg\n");
    assertEquals(List.of(), rests.figures());
  }

  /** What profiles and the law ask has a source; what the recipe asks itself has none. */
  @Test
  void limitsCountByTheirSource() {
    ExamplePlans example = ExamplePlans.open();
    ComputedFeed feed = example.feed("catfish/CG-36.recipe", UnaryOperator.identity());
    List<LimitStatus> limits = Judge.limits(feed);
    RestsOn rests = RestsOn.of(feed, limits, example.tables().practice());
    List<String> figures = figures(rests);
    assertTrue(figures.contains("LIMIT eu-other-fish zinc max at 12 % moisture: eu-zinc"));
    assertTrue(figures.contains("LIMIT catfish-grower lysine min: nrc-2011"));
    assertFalse(figures.contains("LIMIT CG-36 crude-protein min: "));
    long asked =
        limits.stream().filter(one -> one.limit().origin().kind() != Limit.Kind.RECIPE).count();
    assertEquals(asked, rests.figures().stream().filter(one -> one.kind() == Kind.LIMIT).count());
    int all = 0;
    for (Reliability standing : Reliability.values()) {
      int grouped = 0;
      int before = Integer.MAX_VALUE;
      for (Group group : rests.groups(standing)) {
        assertTrue(group.figures() <= before);
        before = group.figures();
        grouped += group.figures();
      }
      assertEquals(rests.count(standing), grouped);
      all += grouped;
    }
    assertEquals(rests.count(), all);
    assertEquals(
        new Group(Kind.CONTENT, "fish-meal-65", Reliability.FROM_MEMORY, 47),
        rests.groups(Reliability.FROM_MEMORY).get(0));
  }
}
