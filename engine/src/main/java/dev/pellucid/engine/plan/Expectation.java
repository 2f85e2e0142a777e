package dev.pellucid.engine.plan;

import dev.pellucid.engine.quantity.Certainty;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the laboratory should find, beside what is asked.
 *
 * @param basis words after the figure; empty for as fed
 * @param unit of the expected figure; empty for a plain quotient
 * @param expected on target and fresh, in that unit
 * @param certainty whether there may be more, or less: some ingredient does not tell its content,
 *     or tells it as below a figure
 */
public record Expectation(
    String title,
    String basis,
    String unit,
    double expected,
    Certainty certainty,
    List<Held> held) {
  public Expectation {
    held = List.copyOf(held);
  }

  /**
   * One bound and the figure held against it.
   *
   * @param bound side and figure as written: {@code min 35 % in 95 % of batches}
   * @param judged at the end where it is judged, in the unit of the bound
   * @param shown what is to be shown of it: what is told alone, where only a bound of the rest
   *     breaks the limit
   * @param certainty of what is shown
   * @param limit the bound in force, in the same unit
   * @param unit of the judged figure
   * @param kind need, practice, law or recipe
   * @param origin the profile that asks, or the code of the recipe
   * @param waivedUntil the last day on which a waiver stands in its place
   */
  public record Held(
      String bound,
      double judged,
      double shown,
      Certainty certainty,
      double limit,
      String unit,
      String kind,
      String origin,
      Optional<LocalDate> waivedUntil,
      boolean keeps) {

    /** What is left to the bound, in percent of it; below zero where it is broken. */
    public double roomPercent() {
      double room = bound.startsWith("min") ? judged - limit : limit - judged;
      return limit == 0 ? (room == 0 ? 0 : Double.POSITIVE_INFINITY * room) : 100 * room / limit;
    }
  }
}
