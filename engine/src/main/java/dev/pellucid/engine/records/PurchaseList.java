package dev.pellucid.engine.records;

import dev.pellucid.engine.data.Ordering;
import dev.pellucid.measure.Closeness;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * What is to be bought, and what premixes are to be made first, for the batches that are planned:
 * what they weigh out, less what the store has left of what was really used.
 *
 * @param batches the numbers of the batches, in the order of their days
 * @param goods in the order of the days on which they are to be ordered or begin to lack, then
 *     those that do not lack
 * @param premixes those that the batches need more of than is there or planned
 * @param spoiling lots that are past their date before they are used up, the first first
 */
public record PurchaseList(
    List<String> batches, List<Good> goods, List<ToMake> premixes, List<Spoiling> spoiling) {
  public PurchaseList {
    batches = List.copyOf(batches);
    goods = List.copyOf(goods);
    premixes = List.copyOf(premixes);
    spoiling = List.copyOf(spoiling);
  }

  /** What lacks first, by the day of the order where that is told; then by name. */
  static final Comparator<Good> ORDER =
      Comparator.comparing((Good good) -> good.lacking() == 0)
          .thenComparing(good -> good.orderBy().orElse(good.from()))
          .thenComparing(Good::title);

  /**
   * An ingredient; masses in kg.
   *
   * @param name by which recipes call it
   * @param needed by all batches, and by the premixes that are to be made for them
   * @param lacking what of it no lot gives that is passed, dry and good on the day of the batch
   * @param from the first day on which it lacks, or on which it is needed where nothing lacks
   * @param firstFor the batch for which it lacks first, or which needs it first
   * @param perKg its price on the day of the list
   * @param ordering how it is ordered, where that is told
   */
  public record Good(
      String name,
      String title,
      double needed,
      double lacking,
      LocalDate from,
      String firstFor,
      OptionalDouble perKg,
      Optional<Ordering> ordering) {
    /** What the store gives. */
    public double fromStore() {
      return needed - lacking;
    }

    /** kg of a pack. */
    public OptionalDouble pack() {
      return ordering.map(Ordering::pack).orElse(OptionalDouble.empty());
    }

    /** Whole packs of what lacks. */
    public OptionalLong packs() {
      return pack().isPresent()
          ? OptionalLong.of((long) Closeness.up(lacking / pack().getAsDouble()))
          : OptionalLong.empty();
    }

    /** kg that are to be ordered: whole packs, else what lacks. */
    public double ordered() {
      return packs().isPresent() ? packs().getAsLong() * pack().orElseThrow() : lacking;
    }

    /** kg that come and are not needed yet. */
    public double over() {
      return ordered() - lacking;
    }

    /** The last day on which an order comes in time. */
    public Optional<LocalDate> orderBy() {
      OptionalLong days = ordering.map(Ordering::leadDays).orElse(OptionalLong.empty());
      return lacking > 0 && days.isPresent()
          ? Optional.of(from.minusDays(days.getAsLong()))
          : Optional.empty();
    }

    /** Whether an order of a day comes too late. */
    public boolean isLate(LocalDate today) {
      return orderBy().filter(today::isAfter).isPresent();
    }

    /** The day on which an order of a day comes, where the days that it takes are told. */
    public Optional<LocalDate> comes(LocalDate ordered) {
      OptionalLong days = ordering.map(Ordering::leadDays).orElse(OptionalLong.empty());
      return days.isPresent() ? Optional.of(ordered.plusDays(days.getAsLong())) : Optional.empty();
    }

    /** Money for what is to be ordered; nothing where no price is told. */
    public double money() {
      return ordered() * perKg.orElse(0);
    }

    public OptionalDouble perPack() {
      return perKg.isPresent() && pack().isPresent()
          ? OptionalDouble.of(perKg.getAsDouble() * pack().getAsDouble())
          : OptionalDouble.empty();
    }
  }

  /**
   * A premix; kg, and the first day on which it lacks.
   *
   * @param planned the number of a batch that is planned for a day too late; absent where none is
   */
  public record ToMake(
      String title, String code, double kg, LocalDate from, Optional<String> planned) {}

  /**
   * A lot of which something is left on its last good day.
   *
   * @param kg that the planned batches leave of it
   * @param perKg its price on the day of the list
   * @param hindrance why nobody may take of it; empty where somebody may
   * @param couldTake planned batches by that day that take others of the ingredient
   * @param wouldTake planned batches after that day that take some of the ingredient
   */
  public record Spoiling(
      String lot,
      String title,
      LocalDate until,
      double kg,
      OptionalDouble perKg,
      Optional<String> hindrance,
      List<String> couldTake,
      List<String> wouldTake) {
    public Spoiling {
      couldTake = List.copyOf(couldTake);
      wouldTake = List.copyOf(wouldTake);
    }
  }

  public boolean isEmpty() {
    return batches.isEmpty();
  }
}
