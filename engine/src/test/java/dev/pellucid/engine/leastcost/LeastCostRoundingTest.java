package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * What is offered is written with the decimals of the recipe, comes to 100 %, keeps every limit as
 * the checker judges it and costs what shares without rounding would, or says how much more; asked
 * again, nothing is left to offer. On recipes of the example as they stand, and drawn at random:
 * with {@code -Dpellucid.leastCosts=1000} so many.
 */
class LeastCostRoundingTest {
  private static final int PROBLEMS = Integer.getInteger("pellucid.leastCosts", 60);
  private static final int SEED = Integer.getInteger("pellucid.leastCostsSeed", 20261128);
  private static final double MUCH = 1e-3;

  private final Map<String, Integer> stood = new TreeMap<>();
  private final List<String> failed = new ArrayList<>();
  private int loose;

  @Test
  void everyRecipeOfTheExample() throws IOException {
    Texts example = Texts.at(Example.whole()).held();
    for (String path : example.ending(".recipe")) {
      look(path, example, path, Wishes.NONE);
    }
    assertEquals(List.of(), failed);
    assertEquals(Set.of("CHEAPER", "again CHEAPEST"), stood.keySet());
  }

  @Test
  void recipesAtRandom() throws IOException {
    Texts example = Texts.at(Example.whole()).held();
    List<String> recipes = example.ending(".recipe");
    Random random = new Random(SEED);
    for (int i = 0; i < PROBLEMS; i++) {
      RandomProblems drawn =
          new RandomProblems(random, example, recipes.get(random.nextInt(recipes.size())));
      Texts texts = drawn.drawn();
      look(i + " " + drawn.recipe, texts, drawn.recipe, wishes(random));
    }
    System.out.println("least costs: " + stood + ", " + loose + " cost much more when rounded");
    assertTrue(failed.isEmpty(), () -> failed.size() + ":\n" + String.join("\n", failed));
    assertTrue(
        stood.getOrDefault("CHEAPER", 0) + stood.getOrDefault("KEEPS_AGAIN", 0) > PROBLEMS / 3);
  }

  private static Wishes wishes(Random random) {
    return random.nextInt(4) == 0
        ? Changed.wishes(Set.of(), OptionalDouble.of(1 + random.nextInt(5)), 0, false)
        : Wishes.NONE;
  }

  private void look(String name, Texts texts, String path, Wishes wishes) {
    RuleContext before = recipe(texts, path);
    Advice advice = advice(texts, path, wishes);
    stood.merge(advice.standing().name(), 1, Integer::sum);
    String at = name + ": " + advice.standing() + ": ";
    boolean sound = before.feed().isPresent() && !isBroken(before);
    if (advice.standing() == Standing.NOT_PROVEN && sound) {
      failed.add(at + advice.why());
    }
    if (!advice.change().isSome()) {
      return;
    }
    Texts changed = texts.over(Map.of(path, advice.change().after()));
    RuleContext after = recipe(changed, path);
    for (LimitStatus status : after.limits()) {
      if (status.state().isBroken()) {
        failed.add(at + status.limit().name() + " is broken");
      }
    }
    Share sum = Share.ZERO;
    for (Line line : after.recipe().lines()) {
      sum = sum.plus(line.designed());
    }
    if (!sum.equals(Share.WHOLE)) {
      failed.add(at + "comes to " + sum);
    }
    Advice.Costs costs = advice.costs().orElseThrow();
    double cost = after.feed().orElseThrow().costPerKg();
    if (Math.abs(cost - costs.then()) > 1e-9 * cost) {
      failed.add(at + "costs " + cost + " and says " + costs.then());
    }
    if (cost > costs.least() * (1 + MUCH)) {
      loose++;
      if (costs.rounding().isEmpty()) {
        failed.add(at + cost / costs.least() + " and does not say why");
      }
    }
    if (wishes.move().isEmpty()) {
      again(at, changed, path, wishes);
      String approved =
          advice.change().after().replaceFirst("(?m)^( +status +)draft", "$1approved");
      again(at + "approved: ", texts.over(Map.of(path, approved)), path, wishes);
    }
  }

  private void again(String at, Texts texts, String path, Wishes wishes) {
    Advice again = advice(texts, path, wishes);
    stood.merge("again " + again.standing().name(), 1, Integer::sum);
    if (again.change().isSome()) {
      failed.add(
          at
              + "a second run saves "
              + again.costs().orElseThrow().savesPerTonne()
              + " of "
              + again.costs().orElseThrow().now() * 1000);
    }
  }

  private static boolean isBroken(RuleContext recipe) {
    for (LimitStatus status : recipe.limits()) {
      if (status.state().isBroken()) {
        return true;
      }
    }
    return false;
  }

  private static RuleContext recipe(Texts texts, String path) {
    return new Changed(texts).recipe(path);
  }

  private static Advice advice(Texts texts, String path, Wishes wishes) {
    return new Changed(texts).advice(path, wishes);
  }
}
