package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.leastcost.FoundFeeds.Case;
import dev.pellucid.engine.leastcost.Reasons.IngredientValue;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Just above what an ingredient is worth none of it comes in, and just below some does. */
class IngredientValuesTest {
  /** By such a part a price is above or below. */
  private static final double LITTLE = 0.004;

  /** What costs as much as is left of rounding. */
  private static final double NONE = 1e-7;

  private static List<IngredientValue> values(Case one, boolean solved) {
    return new IngredientValues(
            one.posed(), one.found(), one.prices(), FoundFeeds.COMPUTER, one.nearby(), solved)
        .of();
  }

  @ParameterizedTest
  @ValueSource(strings = {"catfish/CG-36.recipe", "trout/TG-44.recipe", "shrimp/SF-34.recipe"})
  void comesInBelowItsWorthAndNotAbove(String path) {
    Case one = FoundFeeds.of(path, Wishes.NONE);
    int undecided = 0;
    for (IngredientValue value : values(one, true)) {
      if (isUndecided(one, value)) {
        undecided++;
      } else if (!isBanned(one, value)) {
        double part = Math.max(Math.abs(value.worth()) * LITTLE, 1e-4);
        double above = share(one, value, value.worth() + part);
        double below = share(one, value, value.worth() - part);
        assertTrue(above <= value.share() + NONE, value + " above " + above);
        assertTrue(below >= value.share() - NONE, value + " below " + below);
        if (value.share() == 0 && value.held().isEmpty() && value.worth() > 0) {
          assertTrue(below > NONE, value + " below " + below);
        }
      }
    }
    assertTrue(undecided <= 2, path + ": " + undecided);
  }

  /** Whether the solver cannot tell apart what it is asked. */
  private static boolean isUndecided(Case one, IngredientValue value) {
    double part = Math.max(Math.abs(value.worth()) * LITTLE, 1e-4);
    return solved(one, value, value.worth() + part).isEmpty()
        || solved(one, value, value.worth() - part).isEmpty();
  }

  private static boolean isBanned(Case one, IngredientValue value) {
    Ingredient ingredient = FoundFeeds.ingredient(value.name());
    return !Banned.of(one.posed().recipe(), ingredient).isEmpty();
  }

  private static boolean isFree(Case one, IngredientValue value) {
    for (Free free : one.found().task().free()) {
      if (free.line().material().name().equals(value.name())) {
        return true;
      }
    }
    return false;
  }

  /** Solved afresh with its line free, at this price. */
  private static double share(Case one, IngredientValue value, double perKg) {
    return FoundFeeds.share(
        solved(one, value, perKg).orElseThrow(() -> new AssertionError(value)), value.name());
  }

  private static Optional<Answer.Found> solved(Case one, IngredientValue value, double perKg) {
    Ingredient ingredient = FoundFeeds.ingredient(value.name());
    Price price = Repriced.of(one.posed().recipe(), ingredient, perKg).orElseThrow();
    EachOffered offered = new EachOffered(one.posed(), one.found(), FoundFeeds.COMPUTER);
    boolean isAbsent = offered.absent().contains(ingredient);
    Task task = isAbsent ? offered.task(List.of(ingredient)).orElseThrow() : one.found().task();
    List<Free> free = new ArrayList<>(task.free());
    if (!isFree(one, value)) {
      free.add(new Free(line(task, value.name()), 0, 100, false, 0));
    }
    List<Tightened> kept = new ArrayList<>(task.kept());
    if (isAbsent) {
      capped(one, ingredient).forEach(cap -> kept.add(new Tightened(cap, 0)));
    }
    Task freed = task.with(free).keeping(kept).priced(price);
    return FoundFeeds.solved(freed);
  }

  private static List<Requirement> capped(Case one, Ingredient ingredient) {
    return Requirements.of(one.posed().recipe(), Wishes.NONE, List.of(ingredient)).stream()
        .filter(
            it ->
                it.byKind(
                    limit -> false,
                    practice -> false,
                    cap -> cap.ingredient().name().equals(ingredient.name()),
                    label -> false,
                    order -> false,
                    stock -> false))
        .toList();
  }

  private static Line line(Task task, String name) {
    return task.feed().recipe().lines().stream()
        .filter(it -> it.material().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyIngredientOfTheFolderIsToldOnceByItsGap() {
    Case one = FoundFeeds.of("catfish/CG-36.recipe", Wishes.NONE);
    Set<String> names = new HashSet<>();
    double last = Double.POSITIVE_INFINITY;
    for (IngredientValue value : values(one, false)) {
      assertTrue(names.add(value.name()), value.name());
      assertTrue(value.gap().isEmpty() || value.gap().getAsDouble() <= last, value.name());
      last = value.gap().orElse(Double.NEGATIVE_INFINITY);
    }
    assertEquals(FoundFeeds.SHARED.tables().ingredients().keySet(), names);
  }

  @Test
  void whatStandsBetweenItsBoundsIsWorthItsPrice() {
    for (Case one : FoundFeeds.ofExample()) {
      for (IngredientValue value : values(one, false)) {
        for (int i = 0; i < one.found().shares().length; i++) {
          Free free = one.found().task().free().get(i);
          double share = one.found().shares()[i];
          boolean isBetween =
              free.step() == 0 && share > free.low() + 1e-6 && share < free.high() - 1e-6;
          if (isBetween && free.line().material().name().equals(value.name())) {
            assertEquals(value.price().orElseThrow(), value.worth(), 1e-6, one + " " + value);
          }
        }
      }
    }
  }

  @Test
  void proteinOfTheVerySpeciesNeverComesIn() {
    Case one = FoundFeeds.of("catfish/CG-36.recipe", Wishes.NONE.explained(Optional.empty()));
    for (IngredientValue value : values(one, true)) {
      if (value.name().equals("catfish-trimmings-meal")) {
        assertEquals(0, value.comesIn());
        assertEquals(
            "inclusion own-species-protein max 0 % (eu-bans)", value.held().get(0).missing());
        return;
      }
    }
    throw new AssertionError("not told");
  }

  @Test
  void whatIsBannedIsHeldByTheBanWhereItIsTried() {
    Wishes wishes = Wishes.NONE.trying("catfish-trimmings-meal");
    Posed posed = FoundFeeds.posed("catfish/CG-36.recipe", wishes);
    Refusal first = posed.held().get(0);
    assertEquals("catfish-trimmings-meal", first.ingredient());
    assertEquals("inclusion own-species-protein max 0 % (eu-bans)", first.missing());
    for (Free free : posed.task().free()) {
      if (free.line().material().name().equals("catfish-trimmings-meal")) {
        assertEquals(0, free.high());
        return;
      }
    }
    throw new AssertionError("not offered");
  }

  @Test
  void whatIsCheaperThanItsWorthComesInAtItsPrice() {
    Case one = FoundFeeds.of("trout/TG-44.recipe", Wishes.NONE.explained(Optional.empty()));
    for (IngredientValue value : values(one, true)) {
      if (value.held().isEmpty() && value.gap().orElse(0) > 0.01 && !isFree(one, value)) {
        double at = Math.min(value.price().orElseThrow(), value.worth() * 0.99);
        assertEquals(share(one, value, at), value.comesIn(), 0.01, value.name());
      }
    }
  }
}
