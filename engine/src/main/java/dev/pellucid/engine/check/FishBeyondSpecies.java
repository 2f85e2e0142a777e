package dev.pellucid.engine.check;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Range;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Fish that are larger than the largest of their species, as its file tells sizes: of a recipe, and
 * of a profile, which may be for several species. Far larger, and the unit is another than meant; a
 * little larger, and a profile that does not cover them says so first.
 */
final class FishBeyondSpecies implements Rule {
  private static final Code CODE = new Code("fish-beyond-species");
  private static final double FAR = 5;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Range> fish = recipe.recipe().fish();
    Optional<Species> species = recipe.recipe().species();
    if (fish.isPresent() && species.isPresent()) {
      Optional<Species.Size> largest = largest(species.get(), Optional.empty());
      if (largest.isPresent()
          && isBeyond(fish.get(), largest.get(), 1)
          && (isFar(recipe) || !FishOutsideProfile.isSaid(recipe))) {
        out.accept(finding(fish.get(), species.get().name(), largest.get()));
      }
    }
  }

  /** The same of a profile. */
  static void look(Profile profile, FeedTables tables, Consumer<Finding> out) {
    Optional<Species.Size> largest = largest(profile, tables);
    if (profile.fish().isPresent()
        && largest.isPresent()
        && isBeyond(profile.fish().get(), largest.get(), 1)) {
      out.accept(
          finding(profile.fish().get(), String.join(" and ", profile.species()), largest.get()));
    }
  }

  /** Whether this is said of a profile, so that what follows from it needs no words. */
  static boolean isSaidOf(Profile profile, FeedTables tables) {
    Optional<Species.Size> largest = largest(profile, tables);
    return profile.fish().isPresent()
        && largest.isPresent()
        && isBeyond(profile.fish().get(), largest.get(), 1);
  }

  /** Whether it is an error of a recipe, so that what follows from it needs no words. */
  static boolean isFar(RuleContext recipe) {
    Optional<Range> fish = recipe.recipe().fish();
    Optional<Species> species = recipe.recipe().species();
    Optional<Species.Size> largest =
        species.isPresent() ? largest(species.get(), Optional.empty()) : Optional.empty();
    return fish.isPresent() && largest.isPresent() && isBeyond(fish.get(), largest.get(), FAR);
  }

  private static Optional<Species.Size> largest(Profile profile, FeedTables tables) {
    Optional<Species.Size> largest = Optional.empty();
    for (String name : profile.species()) {
      for (Species species : tables.species().values()) {
        if (species.is(name)) {
          if (species.sizes().isEmpty()) {
            return Optional.empty();
          }
          largest = largest(species, largest);
        }
      }
    }
    return largest;
  }

  private static Optional<Species.Size> largest(Species species, Optional<Species.Size> before) {
    Optional<Species.Size> largest = before;
    for (Species.Size size : species.sizes()) {
      if (largest.isEmpty() || size.heaviest() > largest.get().heaviest()) {
        largest = Optional.of(size);
      }
    }
    return largest;
  }

  private static boolean isBeyond(Range fish, Species.Size largest, double times) {
    return Closeness.isAbove(fish.highBase(), largest.heaviest() * times);
  }

  private static Finding finding(Range fish, String species, Species.Size largest) {
    boolean far = isBeyond(fish, largest, FAR);
    boolean kilos = fish.unit() == Unit.KG;
    return Finding.of(
            CODE,
            far ? Severity.ERROR : Severity.WARNING,
            fish.span(),
            "fish of "
                + fish.asWritten()
                + ", sizes of "
                + species
                + " are given up to "
                + Figures.plain(largest.heaviest(), largest.heaviest() < 10 ? Unit.G : Unit.KG))
        .seeing("size written", largest.place())
        .helping(
            far && kilos && !Closeness.isAbove(fish.highBase() / 1000, largest.heaviest())
                ? "did you mean g?"
                : far
                    ? "look for a slipped decimal point or a wrong unit"
                    : "fix the size, or add the larger fish to the sizes in species/");
  }
}
