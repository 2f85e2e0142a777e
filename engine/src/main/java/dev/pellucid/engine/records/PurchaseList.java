package dev.pellucid.engine.records;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is to be bought, and what premixes are to be made first, for the batches that are planned:
 * what they weigh out, less what the store has left of what was really used.
 *
 * @param batches the numbers of the batches, in the order of their days
 * @param goods in the order of the days on which they begin to lack, then those that do not lack
 * @param premixes those that the batches need more of than is there or planned
 */
public record PurchaseList(List<String> batches, List<Good> goods, List<ToMake> premixes) {
  public PurchaseList {
    batches = List.copyOf(batches);
    goods = List.copyOf(goods);
    premixes = List.copyOf(premixes);
  }

  /**
   * An ingredient; masses in kg.
   *
   * @param needed by all batches, and by the premixes that are to be made for them
   * @param lacking what of it no lot gives that is passed, dry and good on the day of the batch
   * @param from the first day on which it lacks, or on which it is needed where nothing lacks
   * @param perKg its price on the day of the list
   */
  public record Good(
      String title, double needed, double lacking, LocalDate from, OptionalDouble perKg) {
    /** What the store gives. */
    public double fromStore() {
      return needed - lacking;
    }
  }

  /** A premix; kg, and the first day on which it lacks. */
  public record ToMake(String title, String code, double kg, LocalDate from) {}

  /** Whether nothing is planned. */
  public boolean isEmpty() {
    return batches.isEmpty();
  }
}
