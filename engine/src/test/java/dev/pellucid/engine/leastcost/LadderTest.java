package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Advice.Rung;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.Task;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LadderTest {
  private static final String CARP = "carp/KG-33.recipe";

  private final Changed example = Changed.example();

  @Test
  void eachRungSavesMoreThanTheOneBefore() {
    for (String path : example.recipes()) {
      Advice advice = example.advice(path, Wishes.NONE);
      double before = advice.costs().orElseThrow().now();
      int lines = 1;
      for (Rung rung : advice.ladder()) {
        assertTrue(rung.cost() < before, path);
        assertTrue(rung.lines().size() > lines, path);
        double moved = 0;
        for (LineMove line : rung.lines()) {
          moved += line.moved();
        }
        assertEquals(0, moved, 1e-9, path);
        before = rung.cost();
        lines = rung.lines().size();
        double cost =
            example.as(path, rung.change().after()).recipe(path).feed().orElseThrow().costPerKg();
        assertEquals(rung.cost(), cost, 1e-12, path);
      }
      assertEquals(advice.costs().orElseThrow().then(), before, 1e-12, path);
    }
  }

  /** Every pair and every three, each by the solver. */
  @Test
  void noOtherPairOrThreeIsBetter() {
    for (String path : java.util.List.of(CARP, "shrimp/SF-34.recipe")) {
      Posed posed = example.posed(path, Wishes.NONE);
      Advice advice = example.advice(path, Wishes.NONE);
      int lines = posed.task().free().size();
      double two = Double.POSITIVE_INFINITY;
      double three = Double.POSITIVE_INFINITY;
      for (int i = 0; i < lines; i++) {
        for (int j = 0; j < i; j++) {
          two = Math.min(two, cost(posed.task(), i, j, j));
          for (int k = 0; k < j; k++) {
            three = Math.min(three, cost(posed.task(), i, j, k));
          }
        }
      }
      assertEquals(two, advice.ladder().get(0).cost(), 3e-4 * two, path);
      assertEquals(three, advice.ladder().get(1).cost(), 3e-4 * three, path);
    }
  }

  private static double cost(Task task, int i, int j, int k) {
    Answer answer =
        new Optimiser(Solver.standard())
            .solve(task.of(Set.of(index(task, i), index(task, j), index(task, k, j))));
    return answer.byKind(
        found -> found.feed().costPerKg(),
        unmet -> Double.POSITIVE_INFINITY,
        undecided -> Double.POSITIVE_INFINITY);
  }

  private static int index(Task task, int i) {
    return task.free().get(i).line().index();
  }

  /** Another that is none of the lines, where there are only two. */
  private static int index(Task task, int k, int j) {
    return k == j ? -1 : index(task, k);
  }

  @Test
  void linesAndAllTogetherMoveNoFurtherThanAsked() {
    Advice advice = example.advice(CARP, Changed.wishes(Set.of(), OptionalDouble.of(3), 0, false));
    assertEquals(Standing.CHEAPER, advice.standing());
    double risen = 0;
    for (LineMove line : advice.lines()) {
      assertTrue(Math.abs(line.moved()) <= 3 + 1e-9);
      risen += Math.max(0, line.moved());
    }
    assertTrue(risen <= 3 + 1e-9);
    for (Rung rung : advice.ladder()) {
      assertTrue(rung.lines().stream().allMatch(line -> Math.abs(line.moved()) <= 3 + 1e-9));
    }
  }

  @Test
  void whatSavesLessThanIsWorthAChangeIsNotOffered() {
    Advice advice =
        example.advice(CARP, Changed.wishes(Set.of(), OptionalDouble.empty(), 200, false));
    assertEquals(Standing.NOT_WORTH, advice.standing());
    assertTrue(advice.ladder().isEmpty());
    assertTrue(advice.change().edits().isEmpty());
    Advice some = example.advice(CARP, Changed.wishes(Set.of(), OptionalDouble.empty(), 15, false));
    for (int i = 1; i < some.ladder().size(); i++) {
      double more = some.ladder().get(i - 1).cost() - some.ladder().get(i).cost();
      assertTrue(more * 1000 >= 15);
    }
  }

  /** Against every choice of steps and of what is left out. */
  @Test
  void whatMayBeLeftOutAndStepsAreAsGoodAsAllThereIsToChooseFrom() {
    Changed steps =
        example
            .with(CARP, "(rapeseed-meal .*within) 0 to 15 %", "$1 4 to 12 % or none")
            .with(CARP, "(fish-meal-65 .*within 3 to 10 %)", "$1  step 0.5 %");
    Posed posed = steps.posed(CARP, Wishes.NONE);
    int rape = place(posed.task(), "rapeseed-meal");
    int fish = place(posed.task(), "fish-meal-65");
    double best = Double.POSITIVE_INFINITY;
    for (int out = 0; out < 2; out++) {
      for (double share = 3; share <= 10; share += 0.5) {
        java.util.List<Free> lines = new java.util.ArrayList<>(posed.task().free());
        Free meal = lines.get(rape);
        lines.set(rape, new Free(meal.line(), out == 0 ? 0 : 4, out == 0 ? 0 : 12, false, 0));
        lines.set(fish, new Free(lines.get(fish).line(), share, share, false, 0));
        Answer answer = new Optimiser(Solver.standard()).solve(posed.task().with(lines));
        best =
            Math.min(
                best,
                answer.byKind(
                    found -> found.feed().costPerKg(),
                    unmet -> Double.POSITIVE_INFINITY,
                    undecided -> Double.POSITIVE_INFINITY));
      }
    }
    Advice advice = steps.advice(CARP, Wishes.NONE);
    assertEquals(best, advice.costs().orElseThrow().least(), 1e-6 * best);
    LineMove meal = line(advice, "rapeseed-meal");
    assertTrue(meal.then() == 0 || meal.then() >= 4);
    double taken = line(advice, "fish-meal-65").then() / 0.5;
    assertEquals(Math.rint(taken), taken, 1e-9);
  }

  private static int place(Task task, String name) {
    for (int i = 0; i < task.free().size(); i++) {
      if (task.free().get(i).line().material().name().equals(name)) {
        return i;
      }
    }
    throw new AssertionError(name);
  }

  private static LineMove line(Advice advice, String name) {
    return advice.lines().stream().filter(it -> it.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void aStepIsNoFinerThanTheScaleShows() {
    Changed fine = example.with(CARP, "(fish-meal-65 .*within 3 to 10 %)", "$1  step 0.001 %");
    Posed posed = fine.posed(CARP, Wishes.NONE);
    double step = posed.task().free().get(place(posed.task(), "fish-meal-65")).step();
    assertTrue(step > 0.001);
    assertEquals(Math.rint(step / 0.001), step / 0.001, 1e-9);
  }
}
