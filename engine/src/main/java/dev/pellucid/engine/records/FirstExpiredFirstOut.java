package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.measure.Closeness;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The lots to take for a line when none is named: first expired, first out. Only lots that are
 * there, not expired on the day, inspected and passed, dry enough and not over a legal maximum of
 * its material; what does not age goes last, and of one day the one received first.
 *
 * @param picks in the order in which they are to be emptied
 * @param shortfall kg that no lot can give
 */
public record FirstExpiredFirstOut(List<Pick> picks, double shortfall) {
  private static final double HOURS_A_DAY = 24;

  public FirstExpiredFirstOut {
    picks = List.copyOf(picks);
  }

  /** So many kg of a lot, or of a batch of a premix. */
  public record Pick(String number, double kg) {}

  /** Nothing at all where the folder keeps no lots of the ingredient. */
  public static Optional<FirstExpiredFirstOut> of(
      Ingredient ingredient, double kg, LocalDate day, FeedTables tables, Stock stock) {
    List<Lot> lots =
        tables.lots().values().stream()
            .filter(lot -> lot.ingredient().equals(ingredient.name()))
            .toList();
    List<Pick> there =
        lots.stream()
            .filter(lot -> isFit(lot, ingredient, day) && !stock.isBarred(lot))
            .sorted(ORDER)
            .map(lot -> new Pick(lot.number(), stock.left(lot)))
            .toList();
    return lots.isEmpty() ? Optional.empty() : Optional.of(of(kg, there));
  }

  /**
   * Of the batches of a premix that may be used, the oldest first; nothing at all where the folder
   * keeps no record of any.
   */
  public static Optional<FirstExpiredFirstOut> of(
      ResolvedPremix premix, double kg, LocalDate day, FeedTables tables, Stock stock) {
    List<BatchRecord> batches =
        tables.batches().values().stream()
            .filter(batch -> batch.code().equals(premix.code()) && batch.isMade())
            .toList();
    List<Pick> there =
        batches.stream()
            .filter(batch -> isFit(batch, premix, day))
            .sorted(Comparator.comparing(BatchRecord::day).thenComparing(BatchRecord::serial))
            .map(batch -> new Pick(batch.number(), stock.left(batch)))
            .toList();
    return batches.isEmpty() ? Optional.empty() : Optional.of(of(kg, there));
  }

  private static FirstExpiredFirstOut of(double kg, List<Pick> there) {
    List<Pick> picks = new ArrayList<>();
    double wanted = kg;
    for (Pick one : there) {
      double taken = Math.min(wanted, one.kg());
      if (taken > Closeness.to(kg)) {
        picks.add(new Pick(one.number(), taken));
        wanted -= taken;
      }
    }
    return new FirstExpiredFirstOut(picks, wanted > Closeness.to(kg) ? wanted : 0);
  }

  private static final Comparator<Lot> ORDER =
      Comparator.comparing((Lot lot) -> lot.bestBefore().orElse(LocalDate.MAX))
          .thenComparing(Lot::received)
          .thenComparing(Lot::number);

  private static boolean isFit(BatchRecord batch, ResolvedPremix premix, LocalDate day) {
    boolean keeps =
        premix
            .keeping()
            .map(keeping -> batch.day().plusDays((long) Math.floor(keeping.hours() / HOURS_A_DAY)))
            .filter(day::isAfter)
            .isEmpty();
    return keeps
        && !batch.closed()
        && !batch.isRejected()
        && !batch.isHeld()
        && !batch.day().isAfter(day);
  }

  private static boolean isFit(Lot lot, Ingredient ingredient, LocalDate day) {
    Optional<Content> moisture = lot.measured(Nutrients.MOISTURE);
    boolean dry =
        moisture.isEmpty()
            || ingredient.maxMoisture().isEmpty()
            || moisture.get().high() < ingredient.maxMoisture().getAsDouble();
    return dry && !lot.received().isAfter(day) && !lot.isExpired(day) && lot.isPassed(day);
  }
}
