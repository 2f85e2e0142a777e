package dev.pellucid.engine.sharing;

import java.time.LocalDate;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What there is of an ingredient that is short.
 *
 * @param kg that may be taken in all
 * @param lasting what of it is still good on each later day, where some of it spoils before
 * @param inStore whether it is what the lots of the store hold
 * @param perKg its price on the day of the run
 */
public record Supply(
    String ingredient,
    double kg,
    SortedMap<LocalDate, Double> lasting,
    boolean inStore,
    double perKg) {
  public Supply {
    lasting = Collections.unmodifiableSortedMap(new TreeMap<>(lasting));
  }

  /** The same amount on every day. */
  public static Supply of(String ingredient, double kg, double perKg) {
    return new Supply(ingredient, kg, new TreeMap<>(), false, perKg);
  }
}
