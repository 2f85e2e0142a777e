package dev.pellucid.engine.plan;

import dev.pellucid.engine.plan.OnScales.LoadLine;
import dev.pellucid.engine.resolve.Line.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What all loads, or all rounds of the coater, take of a line together. */
public final class Totals {
  private static final int TENTHS_OF_A_GRAM = 4;

  private Totals() {}

  /**
   * One line that is weighed out more than once.
   *
   * @param share the recipe share in percent
   * @param extra overage, in percent of the recipe share; zero where there is none
   * @param times in how many loads or rounds
   * @param coat whether these are rounds of the coater
   */
  public record Total(
      String title, double share, double extra, Mass kg, int times, boolean coat, String lot) {}

  /** The lines of a batch that are weighed out more than once, in the order of the recipe. */
  public static List<Total> of(BatchPlan plan) {
    List<Total> totals = new ArrayList<>();
    if (plan.scales().isPresent()) {
      for (Weighed line : plan.weighing()) {
        int times = plan.scales().get().weighings(line.place());
        if (times > 1) {
          boolean coat = line.place() == Place.COAT;
          double extra = line.extra().isZero() ? 0 : extra(line);
          Mass kg = together(line, plan.scales());
          totals.add(new Total(line.title(), line.share(), extra, kg, times, coat, line.lot()));
        }
      }
    }
    return totals;
  }

  /**
   * What a line weighs in all loads or rounds.
   *
   * @param name by which a record names it
   */
  public record OfLine(String name, Mass kg) {}

  /** The line that a dilution is made for, itself, and then its carrier with all that it gives. */
  public static List<OfLine> ofDilution(LoadLine diluted, BatchPlan plan, OnScales scales) {
    String carrier = diluted.thinned().map(OnScales.Thinned::carrier).orElse("");
    Place place = scales.coat().contains(diluted) ? Place.COAT : Place.MIX;
    List<OfLine> lines = new ArrayList<>();
    for (Weighed line : plan.weighing()) {
      boolean itself = line.name().equals(diluted.name());
      if (line.place() == place && (itself || line.title().equals(carrier))) {
        OfLine total = new OfLine(line.name(), together(line, Optional.of(scales)));
        lines.add(itself ? 0 : lines.size(), total);
      }
    }
    return lines;
  }

  private static double extra(Weighed line) {
    return line.target().isZero()
        ? 0
        : line.extra().kg().doubleValue() / line.target().asDouble() * 100;
  }

  /** As the scales show it; as the recipe asks for it where dilutions come in between. */
  static Mass together(Weighed line, Optional<OnScales> scales) {
    Optional<Mass> shown = scales.flatMap(plan -> shown(line, plan));
    int decimals = Math.min(TENTHS_OF_A_GRAM, line.total().kg().scale());
    Mass mass = shown.orElseGet(() -> line.total().at(decimals));
    return mass.stripped();
  }

  private static Optional<Mass> shown(Weighed line, OnScales plan) {
    List<LoadLine> lines = line.place() == Place.COAT ? plan.coat() : plan.mix();
    boolean thinned =
        lines.stream()
            .flatMap(one -> one.thinned().stream())
            .anyMatch(one -> one.carrier().equals(line.title()));
    return lines.stream()
        .filter(one -> one.name().equals(line.name()) && one.thinned().isEmpty() && !thinned)
        .findFirst()
        .flatMap(LoadLine::shown)
        .map(shown -> shown.together(plan.weighings(line.place())));
  }
}
