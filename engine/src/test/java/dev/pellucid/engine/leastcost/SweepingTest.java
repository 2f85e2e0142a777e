package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.leastcost.FoundFeeds.Case;
import dev.pellucid.engine.leastcost.Reasons.Sweep;
import dev.pellucid.engine.leastcost.Wishes.SweepWish;
import dev.pellucid.engine.optimise.Answer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A sweep says at each point what solving afresh says there, and where it turns. */
class SweepingTest {
  private static Optional<Sweep> sweep(Case one, SweepWish wish) {
    return new Sweeping(one.posed(), one.found(), one.nearby()).of(wish);
  }

  private static Optional<Answer.Found> afresh(Case one, SweepWish wish, double at) {
    return FoundFeeds.solved(Swept.of(one.posed(), one.found(), wish).orElseThrow().task(at));
  }

  private static Sweep isTrue(Case one, SweepWish wish) {
    Sweep sweep = sweep(one, wish).orElseThrow();
    assertTrue(sweep.points().size() >= 25);
    for (Sweep.Point point : sweep.points()) {
      Optional<Answer.Found> found = afresh(one, wish, point.at());
      assertEquals(found.isPresent(), point.cost().isPresent(), () -> "at " + point);
      OptionalDouble cost = point.cost();
      found.ifPresent(
          it -> assertEquals(it.feed().costPerKg(), cost.getAsDouble(), 1e-7, () -> "at " + point));
    }
    double close = Math.abs(wish.to() - wish.from()) / 1000;
    for (Sweep.Turn turn : sweep.turns()) {
      if (!turn.name().equals(Sweeping.UNMET)) {
        assertEquals(turn.begins(), binds(one, wish, turn.at() + close, turn.name()), "" + turn);
        assertEquals(!turn.begins(), binds(one, wish, turn.at() - close, turn.name()), "" + turn);
      }
    }
    return sweep;
  }

  private static boolean binds(Case one, SweepWish wish, double at, String name) {
    return BoundWords.binding(afresh(one, wish, at).orElseThrow()).contains(name);
  }

  @Test
  void aPriceOfAnIngredientInUse() {
    Case one = FoundFeeds.of("catfish/CG-36.recipe", Wishes.NONE);
    Sweep sweep = isTrue(one, new SweepWish("fish-meal-65", 0.3, 2.4, "EUR/kg"));
    assertEquals("fish-meal-65", sweep.of());
    assertFalse(sweep.turns().isEmpty());
    double share = Double.POSITIVE_INFINITY;
    for (Sweep.Point point : sweep.points()) {
      assertTrue(point.share() <= share + 1e-6, "more of what gets dearer: " + point);
      share = point.share();
    }
  }

  @Test
  void aPriceForATonneIsAThousandth() {
    Case one = FoundFeeds.of("catfish/CG-36.recipe", Wishes.NONE);
    Sweep kg = sweep(one, new SweepWish("fish-meal-65", 1, 2, "EUR/kg")).orElseThrow();
    Sweep tonne = sweep(one, new SweepWish("fish-meal-65", 1000, 2000, "EUR/t")).orElseThrow();
    assertEquals(
        kg.points().get(0).cost().getAsDouble(), tonne.points().get(0).cost().getAsDouble(), 1e-9);
  }

  @Test
  void aLimitUntilNothingKeepsAll() {
    Case one = FoundFeeds.of("carp/KG-33.recipe", Wishes.NONE);
    Sweep sweep = isTrue(one, new SweepWish("crude-protein min", 30, 40, "%"));
    Sweep.Turn last = sweep.turns().get(sweep.turns().size() - 1);
    assertEquals(Sweeping.UNMET, last.name());
    assertTrue(last.begins());
    double cost = 0;
    for (Sweep.Point point : sweep.points()) {
      assertTrue(point.cost().orElse(cost) >= cost - 1e-9, "cheaper with more asked: " + point);
      cost = point.cost().orElse(cost);
    }
  }

  @Test
  void aQuotientWithoutUnit() {
    Case one = FoundFeeds.of("carp/KG-33.recipe", Wishes.NONE);
    isTrue(one, new SweepWish("calcium : phosphorus min", 0.6, 0.75, ""));
  }

  @Test
  void whatIsTriedHasAPriceToo() {
    Wishes tried =
        new Wishes(
            java.util.Set.of(),
            List.of("poultry-meal-60"),
            java.util.Set.of(),
            OptionalDouble.empty(),
            0,
            false,
            OptionalDouble.empty(),
            false,
            true,
            Optional.empty(),
            false);
    Case one = FoundFeeds.of("catfish/CG-36.recipe", tried);
    Sweep sweep = isTrue(one, new SweepWish("poultry-meal-60", 0.5, 2.5, "EUR/kg"));
    assertTrue(sweep.points().get(0).share() > 0);
    assertEquals(0, sweep.points().get(sweep.points().size() - 1).share());
  }

  @Test
  void whatNothingIsCalledAndAnotherUnitAreNoSweep() {
    Case one = FoundFeeds.of("carp/KG-33.recipe", Wishes.NONE);
    assertTrue(sweep(one, new SweepWish("squid-meal", 1, 2, "EUR/kg")).isEmpty());
    assertTrue(sweep(one, new SweepWish("crude-protein min", 30, 40, "kcal/kg")).isEmpty());
    assertTrue(sweep(one, new SweepWish("crude-protein", 30, 40, "%")).isEmpty());
  }
}
