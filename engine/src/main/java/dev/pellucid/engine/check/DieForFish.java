package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Range;
import java.util.Optional;

/** A die that makes a pellet which none of the fish of this feed takes. */
final class DieForFish implements Rule {
  private static final Code CODE = new Code("die-for-fish");
  private static final double FAR = 3;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Taken> taken = taken(recipe);
    if (taken.isPresent() && taken.get().isOutside(1)) {
      out.accept(finding(recipe, taken.get()));
    }
  }

  /** Whether the die is so far off that it is the die of other fish: a factor of three. */
  static boolean isOfOtherFish(RuleContext recipe) {
    Optional<Taken> taken = taken(recipe);
    return taken.isPresent() && taken.get().isOutside(FAR);
  }

  /**
   * The die, and the pellets that the fish of the feed take, in mm.
   *
   * @param first the smallest size of fish that the feed is for
   */
  private record Taken(
      Setting die, Range fish, Species.Size first, double thinnest, double thickest) {

    /** Whether the pellet is more than so many times too thick, or too thin. */
    boolean isOutside(double times) {
      return Closeness.isBelow(die.low(), thinnest / times)
          || Closeness.isAbove(die.high(), thickest * times);
    }
  }

  private static Optional<Taken> taken(RuleContext recipe) {
    Passes passes = recipe.recipe().process();
    Optional<Setting> die = passes.die();
    Optional<Range> fish = recipe.recipe().fish();
    Optional<Species> species = recipe.recipe().species();
    return die.isPresent() && fish.isPresent() && species.isPresent()
        ? taken(die.get(), fish.get(), species.get())
        : Optional.empty();
  }

  private static Optional<Taken> taken(Setting die, Range fish, Species species) {
    double lightest = fish.lowBase();
    double heaviest = fish.highBase();
    Species.Size first = null;
    double thinnest = Double.POSITIVE_INFINITY;
    double thickest = 0;
    for (Species.Size size : species.sizes()) {
      if (size.lightest() < heaviest && size.heaviest() > lightest) {
        first = first == null ? size : first;
        thinnest = Math.min(thinnest, size.thinnest());
        thickest = Math.max(thickest, size.thickest());
      }
    }
    return first == null
        ? Optional.empty()
        : Optional.of(new Taken(die, fish, first, thinnest, thickest));
  }

  private static Finding finding(RuleContext recipe, Taken taken) {
    Setting die = taken.die();
    boolean thick = die.high() > taken.thickest();
    Species.Size size = taken.first();
    String species = recipe.recipe().species().map(Species::name).orElse("");
    return Finding.of(
            CODE,
            taken.isOutside(FAR) ? Severity.ERROR : Severity.WARNING,
            die.span(),
            "the die is "
                + Figures.plain(thick ? die.high() : die.low(), Unit.MM)
                + ", "
                + species
                + " of "
                + taken.fish().asWritten()
                + " takes "
                + Figures.plain(taken.thinnest())
                + " to "
                + Figures.plain(taken.thickest(), Unit.MM))
        .seeing("pellet sizes written", size.place())
        .noting("the sizes are " + size.source().reliability().inWords())
        .helping((thick ? "take a finer die" : "take a coarser die") + ", or feed other fish");
  }
}
