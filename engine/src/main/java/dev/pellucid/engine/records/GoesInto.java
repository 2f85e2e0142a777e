package dev.pellucid.engine.records;

import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is to be made of a lot. A lot may be passed for some feeds alone.
 *
 * @param names what {@code only-for} and {@code not-for} may call it by: its code, its species,
 *     groups of these, its profiles
 * @param premix whether it is a premix, of which nobody knows here what it goes into
 * @param feedKg kg of feed that hold all of it, of which {@code at-most} is a share
 * @param day of the batch
 * @param known the day of which the states of lots count
 */
public record GoesInto(
    String code, Set<String> names, boolean premix, double feedKg, LocalDate day, LocalDate known) {
  public GoesInto {
    names = Set.copyOf(names);
  }

  /** A batch of a feed. */
  public static GoesInto of(ResolvedRecipe recipe, double kg, LocalDate day, LocalDate today) {
    Set<String> names = new TreeSet<>();
    names.add(recipe.code());
    recipe
        .species()
        .ifPresent(
            species -> {
              names.add(species.name());
              names.addAll(species.groups());
            });
    recipe.profiles().forEach(met -> names.add(met.profile().name()));
    return new GoesInto(recipe.code(), names, false, kg, day, later(day, today));
  }

  /** A batch of a premix; where no dose is told, a feed might be of it alone. */
  public static GoesInto of(ResolvedPremix premix, double kg, LocalDate day, LocalDate today) {
    double dose = premix.dose().map(share -> share.part()).orElse(1.0);
    return ofPremix(premix.code(), kg / dose, day, today);
  }

  /** What a batch is ordered for, on its own day or later. */
  static GoesInto of(BatchTarget order, LocalDate day, LocalDate known) {
    return order
        .feed()
        .map(feed -> of(feed.recipe(), order.kg(), day, known))
        .orElseGet(() -> ofPremix(order.code(), order.kg() / order.dose().orElse(1), day, known));
  }

  private static GoesInto ofPremix(String code, double feedKg, LocalDate day, LocalDate known) {
    return new GoesInto(code, Set.of(code), true, feedKg, day, later(day, known));
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }
}
