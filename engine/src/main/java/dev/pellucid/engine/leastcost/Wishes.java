package dev.pellucid.engine.leastcost;

import java.util.ArrayList;
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
 * @param anyPrices whether old and invented prices are taken as they are
 * @param sweep what goes from here to there, if anything
 * @param inFull whether reasons are wanted that take a while: for one recipe, not for a folder
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
    Optional<SweepWish> sweep,
    boolean inFull) {
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
          Optional.empty(),
          false);

  /**
   * One price or one limit that goes from here to there.
   *
   * @param of an ingredient, or a limit with its side: {@code crude-protein min}
   * @param unit of both figures: {@code EUR/kg}, {@code %}; empty for a quotient without one
   */
  public record SweepWish(String of, double from, double to, String unit) {}

  public Wishes {
    freed = Set.copyOf(freed);
    tried = List.copyOf(tried);
    without = Set.copyOf(without);
  }

  /** The same with reasons that take a while. */
  public Wishes explained(Optional<SweepWish> wish) {
    return new Wishes(
        freed, tried, without, move, worth, keepLabel, margin, fromStock, anyPrices, wish, true);
  }

  /** The same with other bounds of what may change. */
  Wishes moving(OptionalDouble points) {
    return new Wishes(
        freed, tried, without, points, worth, keepLabel, margin, fromStock, anyPrices, sweep,
        inFull);
  }

  /** The same with one ingredient more that may come in. */
  Wishes trying(String name) {
    List<String> more = new ArrayList<>(tried);
    more.add(name);
    return new Wishes(
        freed, more, without, move, worth, keepLabel, margin, fromStock, anyPrices, sweep, inFull);
  }
}
