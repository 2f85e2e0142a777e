package dev.pellucid.engine.made;

import dev.pellucid.engine.larder.Content;
import dev.pellucid.engine.larder.Ingredient;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.larder.Lot;
import dev.pellucid.engine.larder.Lot.Inspection;
import dev.pellucid.engine.larder.Nutrients;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The lots to take for a line when none is named: first expired, first out. Only lots that are
 * there, not expired on the day, inspected and passed, and dry enough; what does not age goes last,
 * and of one day the one received first.
 *
 * @param picks in the order in which they are to be emptied
 * @param shortfall kg that no lot can give
 */
public record LotChoice(List<Pick> picks, double shortfall) {
  private static final double CLOSE = 1e-9;

  public LotChoice {
    picks = List.copyOf(picks);
  }

  /** So many kg of a lot. */
  public record Pick(Lot lot, double kg) {}

  /** Nothing at all where the folder keeps no lots of the ingredient. */
  public static Optional<LotChoice> of(
      Ingredient ingredient, double kg, LocalDate day, Larder larder, Stock stock) {
    List<Lot> lots =
        larder.lots().values().stream()
            .filter(lot -> lot.ingredient().equals(ingredient.name()))
            .toList();
    return lots.isEmpty() ? Optional.empty() : Optional.of(of(ingredient, kg, day, lots, stock));
  }

  private static LotChoice of(
      Ingredient ingredient, double kg, LocalDate day, List<Lot> lots, Stock stock) {
    List<Pick> picks = new ArrayList<>();
    double wanted = kg;
    for (Lot lot : lots.stream().filter(it -> isFit(it, ingredient, day)).sorted(ORDER).toList()) {
      double taken = Math.min(wanted, stock.left(lot));
      if (taken > kg * CLOSE) {
        picks.add(new Pick(lot, taken));
        wanted -= taken;
      }
    }
    return new LotChoice(picks, wanted > kg * CLOSE ? wanted : 0);
  }

  private static final Comparator<Lot> ORDER =
      Comparator.comparing((Lot lot) -> lot.bestBefore().orElse(LocalDate.MAX))
          .thenComparing(Lot::received)
          .thenComparing(Lot::number);

  private static boolean isFit(Lot lot, Ingredient ingredient, LocalDate day) {
    Optional<Content> moisture = lot.measured(Nutrients.MOISTURE);
    boolean dry =
        moisture.isEmpty()
            || ingredient.wettest().isEmpty()
            || moisture.get().high() < ingredient.wettest().getAsDouble();
    return dry
        && !lot.received().isAfter(day)
        && !lot.isExpired(day)
        && lot.inspection().filter(told -> told == Inspection.PASSED).isPresent();
  }
}
