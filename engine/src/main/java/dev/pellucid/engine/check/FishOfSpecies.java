package dev.pellucid.engine.check;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Range;
import dev.pellucid.text.Meant;
import java.util.List;
import java.util.Optional;

/**
 * Fish that are heavier than any of their species grows: kg written for g. By the sizes that the
 * file of the species tells; an error where it is more than five times beyond the largest.
 */
final class FishOfSpecies implements Rule {
  private static final Code CODE = new Code("fish-beyond-species");

  /** Beyond this no fish of the species has been grown: common sense, no source. */
  private static final double IMPOSSIBLE = 5;

  /** A table of sizes ends before the fish do. */
  private static final double DOUBTFUL = 2;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Range> fish = recipe.recipe().fish();
    Optional<Species> species = recipe.recipe().species();
    if (fish.isPresent() && species.isPresent()) {
      Optional<Finding> found = finding(fish.get(), species.get());
      if (found.isPresent()) {
        out.accept(found.get());
      }
    }
  }

  /** Whether fish are so far beyond their species that nothing else need be said of them. */
  static boolean isBeyond(Range fish, Optional<Species> species) {
    return species.isPresent()
        && heaviest(species.get()) > 0
        && fish.highBase() > DOUBTFUL * heaviest(species.get());
  }

  /** The same of a profile: beyond the largest of all its species. */
  static void look(Profile profile, FeedTables tables, List<Finding> out) {
    if (profile.fish().isEmpty()) {
      return;
    }
    Species largest = null;
    for (Species one : tables.species().values()) {
      for (String name : profile.species()) {
        if (one.is(name) && (largest == null || heaviest(one) > heaviest(largest))) {
          largest = one;
        }
      }
    }
    if (largest != null) {
      Optional<Finding> found = finding(profile.fish().get(), largest);
      if (found.isPresent()) {
        out.add(found.get());
      }
    }
  }

  private static Optional<Finding> finding(Range fish, Species species) {
    double heaviest = heaviest(species);
    if (heaviest <= 0 || fish.highBase() <= DOUBTFUL * heaviest) {
      return Optional.empty();
    }
    String headline =
        "fish of "
            + fish.asWritten()
            + ": the largest "
            + species.name()
            + " of this folder weighs "
            + mass(heaviest);
    Finding finding =
        fish.highBase() > IMPOSSIBLE * heaviest
            ? Finding.error(CODE, fish.span(), headline)
            : Finding.warning(CODE, fish.span(), headline);
    Species.Size last = species.sizes().get(species.sizes().size() - 1);
    finding =
        finding
            .seeing("sizes written", last.place())
            .about(new About("fish", About.Side.MAX, List.of()));
    boolean gram = fish.unit() == Unit.KG && fish.highBase() / 1000 <= DOUBTFUL * heaviest;
    String meant = fish.low().text() + " to " + fish.high().text() + " g";
    return Optional.of(
        gram
            ? finding.helping(Meant.question(meant)).mending(fish.span(), meant)
            : finding.helping(
                "mend the mass, or add a size to species/" + species.name() + ".yaml"));
  }

  private static String mass(double kg) {
    return kg < 1 ? Figures.plain(kg, Unit.G) : Figures.plain(kg, Unit.KG);
  }

  private static double heaviest(Species species) {
    double heaviest = 0;
    for (Species.Size size : species.sizes()) {
      heaviest = Math.max(heaviest, size.heaviest());
    }
    return heaviest;
  }
}
