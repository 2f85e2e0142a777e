package dev.pellucid.engine.leastcost;

import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a person asks for beside least cost.
 *
 * @param freed lines that may change though they tell no {@code within}
 * @param tried ingredients that may come in
 * @param without ingredients that do not come
 * @param move the most points by which a line, and all together, may change
 * @param worth money per tonne in the bags below which a change is not worth its trouble
 * @param keepLabel whether the label must stay as it is printed
 * @param margin the part of batches in which limits must be kept that do not say so themselves
 * @param fromStock whether a batch may take no more than there is in the store
 * @param anyPrices whether old prices are taken as they are
 * @param sweep what is to go from here to there, beside the answer
 */
public record Wishes(
    Set<String> freed,
    List<String> tried,
    Set<String> without,
    OptionalDouble move,
    double worth,
    boolean keepLabel,
    OptionalDouble margin,
    boolean fromStock,
    boolean anyPrices,
    Optional<Swept> sweep) {
  /** Nothing beside. */
  public static final Wishes NONE =
      new Wishes(
          Set.of(),
          List.of(),
          Set.of(),
          OptionalDouble.empty(),
          0,
          false,
          OptionalDouble.empty(),
          false,
          false,
          Optional.empty());

  public Wishes {
    freed = Set.copyOf(freed);
    tried = List.copyOf(tried);
    without = Set.copyOf(without);
  }

  /**
   * What goes from here to there.
   *
   * @param of an ingredient whose price goes, or what a limit is about as its file names it
   * @param isPrice whether it is a price
   * @param side of the limit, where one was named
   * @param unit of both ends
   * @param symbol of the unit as it was written: {@code EUR/kg}
   * @param from in the unit
   * @param to in the unit, above from
   */
  public record Swept(
      String of,
      boolean isPrice,
      Optional<Bound.Side> side,
      Unit unit,
      String symbol,
      double from,
      double to) {}
}
