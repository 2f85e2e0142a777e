package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.leastcost.Wishes.SweepWish;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.Optional;

/**
 * What a person wants to go from here to there, before it is known which limits a recipe has.
 *
 * @param of an ingredient whose price goes, or what a limit is about as its file names it
 * @param isPrice whether it is a price
 * @param side of the limit, where one was named
 * @param unit of both ends
 * @param symbol of the unit as it was written: {@code EUR/kg}; empty for a ratio
 * @param from in the unit
 * @param to in the unit, above from
 */
public record SweepAsked(
    String of,
    boolean isPrice,
    Optional<Bound.Side> side,
    Unit unit,
    String symbol,
    double from,
    double to) {

  /**
   * Of a recipe with these limits; a minimum where both sides are in force and none was named.
   * Empty where it has none on it.
   */
  public Optional<SweepWish> in(List<LimitStatus> limits) {
    if (isPrice) {
      return Optional.of(new SweepWish(of, from, to, symbol));
    }
    Optional<String> about = Optional.empty();
    for (LimitStatus status : limits) {
      boolean meant =
          status.limit().subject().text().equals(of)
              && (side.isEmpty() || side.get() == status.limit().side());
      if (meant && (about.isEmpty() || status.limit().side() == Bound.Side.MIN)) {
        about = Optional.of(status.limit().demand().about());
      }
    }
    return about.map(name -> new SweepWish(name, from, to, symbol));
  }
}
