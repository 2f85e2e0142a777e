package dev.pellucid.engine.records;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.records.FirstExpiredFirstOut.Pick;
import dev.pellucid.engine.records.MaterialRequirements.Planned;
import dev.pellucid.engine.records.PurchaseList.Spoiling;
import dev.pellucid.measure.Closeness;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Lots that are past their date before the planned batches use them up. */
final class PastDate {
  /** So far ahead a store is looked at, whatever is planned; common practice, no source. */
  private static final int DAYS = 30;

  private final FeedTables tables;
  private final Stock stock;
  private final List<Planned> planned;
  private final Map<String, Map<String, FirstExpiredFirstOut>> taken;
  private final LocalDate today;

  /**
   * @param stock after all planned batches
   * @param planned in the order of their days
   */
  PastDate(
      FeedTables tables,
      Stock stock,
      List<Planned> planned,
      Map<String, Map<String, FirstExpiredFirstOut>> taken,
      LocalDate today) {
    this.tables = tables;
    this.stock = stock;
    this.planned = planned;
    this.taken = taken;
    this.today = today;
  }

  /** The first that is past its date first. */
  List<Spoiling> lots() {
    LocalDate end = today.plusDays(DAYS);
    for (Planned one : planned) {
      end = one.day().isAfter(end) ? one.day() : end;
    }
    Bins bins = new Bins(tables);
    List<Spoiling> lots = new ArrayList<>();
    for (Lot lot : tables.lots().values()) {
      boolean ends = lot.bestBefore().isPresent() && lot.bestBefore().get().isBefore(end);
      if (ends && stock.left(lot) > Closeness.to(lot.kg()) && bins.isThere(lot, today)) {
        lots.add(spoiling(lot, lot.bestBefore().get()));
      }
    }
    lots.sort(Comparator.comparing(Spoiling::until).thenComparing(Spoiling::lot));
    return lots;
  }

  private Spoiling spoiling(Lot lot, LocalDate until) {
    Ingredient ingredient = tables.ingredients().get(lot.ingredient());
    List<String> couldTake = new ArrayList<>();
    List<String> wouldTake = new ArrayList<>();
    for (Planned one : planned) {
      if (isFor(lot, one)) {
        boolean inTime = !one.day().isAfter(until);
        (inTime ? couldTake : wouldTake).add(one.number());
      }
    }
    Optional<Price> price = tables.price(lot.ingredient(), today);
    return new Spoiling(
        lot.number(),
        ingredient == null ? lot.ingredient() : ingredient.title(),
        until,
        stock.left(lot),
        price.isPresent() ? OptionalDouble.of(price.get().perKg()) : OptionalDouble.empty(),
        stopped(lot),
        couldTake,
        wouldTake);
  }

  private Optional<String> stopped(Lot lot) {
    GoesInto nothing = new GoesInto("", Set.of(), false, 0, today, today);
    return lot.isPassed(today) ? Optional.empty() : Passing.hindrance(lot, nothing);
  }

  /**
   * Whether a batch takes of the ingredient, not of this lot alone, and the lot is passed for it.
   */
  private boolean isFor(Lot lot, Planned one) {
    double asked =
        one.order().asks().stream()
            .filter(ask -> ask.material().single().isPresent())
            .filter(ask -> ask.material().isCalled(lot.ingredient()))
            .mapToDouble(BatchTarget.TargetWeight::kg)
            .sum();
    FirstExpiredFirstOut choice = taken.getOrDefault(one.number(), Map.of()).get(lot.ingredient());
    double ofLot =
        choice == null
            ? 0
            : choice.picks().stream()
                .filter(pick -> pick.lots().contains(lot.number()))
                .mapToDouble(Pick::kg)
                .sum();
    return asked - ofLot > Closeness.to(asked)
        && !lot.received().isAfter(one.day())
        && Passing.hindrance(lot, one.goesInto(today)).isEmpty();
  }
}
