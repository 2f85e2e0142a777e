package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.leastcost.FoundFeeds.Case;
import dev.pellucid.engine.leastcost.Reasons.LimitPrice;
import dev.pellucid.engine.leastcost.Reasons.SharePrice;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Bounding;
import dev.pellucid.engine.optimise.Movable;
import dev.pellucid.engine.optimise.Task;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What bounds cost is what solving again with the bound moved says, on all that is found. */
class LimitPricesTest {
  private static final int MANY = Integer.getInteger("pellucid.explained", 50);

  /** By which part of a step a bound is moved. */
  private static final double LITTLE = 2e-3;

  static Stream<Case> feeds() {
    return Stream.concat(FoundFeeds.ofExample().stream(), FoundFeeds.random(MANY).stream());
  }

  static Stream<Case> example() {
    return FoundFeeds.ofExample().stream();
  }

  /** A bound in its own measure, with the price of one more, per kg in the bags. */
  private record Told(
      String name,
      Bounding bounding,
      double bound,
      double step,
      double price,
      double from,
      double to) {}

  private static Stream<Told> told(Case one, boolean ranges) {
    LimitPrices prices = new LimitPrices(one.nearby(), one.found(), one.prices(), ranges);
    return Stream.concat(
        prices.limits().stream().map(price -> told(one, price)),
        prices.shares().stream().map(price -> told(one, price)));
  }

  private static Told told(Case one, LimitPrice price) {
    Movable movable = Movable.of(price.of()).orElseThrow();
    TradeStep step = TradeStep.of(movable);
    double size = step.base(price.step());
    return new Told(
        one + ": " + price.name() + " " + price.side(),
        Bounding.of(one.found().task(), movable),
        movable.bound(),
        size,
        price.perTonne() / 1000 / size,
        step.base(price.from()),
        step.base(price.to()));
  }

  private static Told told(Case one, SharePrice price) {
    Task task = one.found().task();
    for (int i = 0; i < task.free().size(); i++) {
      if (task.free().get(i).line().material().name().equals(price.name())) {
        return new Told(
            one + ": " + price.name() + " within " + price.side(),
            Bounding.of(task, i, price.side()),
            price.bound(),
            1,
            price.perTonne() / 1000,
            price.from(),
            price.to());
      }
    }
    throw new AssertionError(price);
  }

  private static OptionalDouble cost(Told told, double bound) {
    Optional<Answer.Found> found = FoundFeeds.solved(told.bounding().at(bound));
    return found.isPresent()
        ? OptionalDouble.of(found.get().feed().costPerKg())
        : OptionalDouble.empty();
  }

  /** What one more costs between two bounds; empty where one of them cannot be met. */
  private static OptionalDouble slope(Told told, double low, double high) {
    OptionalDouble below = cost(told, low);
    OptionalDouble above = cost(told, high);
    return below.isEmpty() || above.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            told.bounding().tighter() * (above.getAsDouble() - below.getAsDouble()) / (high - low));
  }

  @ParameterizedTest
  @MethodSource("feeds")
  void aPriceIsWhatAMovedBoundCosts(Case one) {
    told(one, true).forEach(LimitPricesTest::isWhatItCosts);
  }

  private static void isWhatItCosts(Told told) {
    double little = told.step() * LITTLE;
    double low = Math.max(told.bound() - little, told.from());
    double high = Math.min(told.bound() + little, told.to());
    if (high - low > little / 2) {
      double noise = 2e-9 / (high - low);
      double curve = low < told.bound() && high > told.bound() ? 1e-4 : 5e-4;
      assertEquals(
          told.price(),
          slope(told, low, high).orElseThrow(),
          curve * told.price() + noise,
          told.name());
    }
  }

  @ParameterizedTest
  @MethodSource("example")
  void aPriceHoldsJustInsideAndNotJustOutside(Case one) {
    told(one, true).forEach(LimitPricesTest::holdsInside);
    told(one, true).forEach(LimitPricesTest::holdsNotOutside);
  }

  private static void holdsInside(Told told) {
    double close = told.step() / 100;
    assertTrue(told.from() <= told.bound() && told.to() >= told.bound(), told.name());
    if (told.to() - told.from() > 3 * close) {
      double below = slope(told, told.to() - close, told.to()).orElseThrow();
      assertEquals(told.price(), below, 0.0105 * told.price(), "below the end of " + told);
      double above = slope(told, told.from(), told.from() + close).orElseThrow();
      assertEquals(told.price(), above, 0.0105 * told.price(), "above the start of " + told);
    }
  }

  private static void holdsNotOutside(Told told) {
    double close = told.step() / 100;
    OptionalDouble above = slope(told, told.to() + close, told.to() + 2 * close);
    assertTrue(isOther(above, told.price()), () -> above + " above " + told);
    if (told.from() > 2 * close) {
      OptionalDouble below = slope(told, told.from() - 2 * close, told.from() - close);
      assertTrue(isOther(below, told.price()), () -> below + " below " + told);
    }
  }

  private static boolean isOther(OptionalDouble price, double told) {
    return price.isEmpty() || Math.abs(price.getAsDouble() - told) > 0.0095 * told;
  }

  @Test
  void theDearestStandsFirstAndEveryPriceIsAboveZero() {
    for (Case one : FoundFeeds.ofExample()) {
      double last = Double.POSITIVE_INFINITY;
      for (LimitPrice price :
          new LimitPrices(one.nearby(), one.found(), one.prices(), false).limits()) {
        assertTrue(price.perTonne() > 0 && price.perTonne() <= last, one + ": " + price);
        last = price.perTonne();
      }
    }
  }

  @Test
  void whatSaysNothingOfBatchesIsKeptOnAverageOnly() {
    int onAverage = 0;
    int inBatches = 0;
    for (Case one : FoundFeeds.ofExample()) {
      for (LimitPrice price :
          new LimitPrices(one.nearby(), one.found(), one.prices(), false).limits()) {
        if (price.name().equals("crude-protein")) {
          inBatches++;
          assertFalse(price.onAverageOnly(), one + ": " + price);
        } else if (price.name().startsWith("digestible-")) {
          onAverage++;
          assertTrue(price.onAverageOnly(), one + ": " + price);
        }
      }
    }
    assertTrue(onAverage > 0 && inBatches > 0);
  }
}
