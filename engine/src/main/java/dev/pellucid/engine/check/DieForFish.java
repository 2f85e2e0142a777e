package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Range;
import java.util.Optional;
import java.util.function.Consumer;

/** A die that makes a pellet which none of the fish of this feed takes. */
final class DieForFish implements Rule {
  private static final Code CODE = new Code("die-for-fish");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Passes passes = recipe.recipe().process();
    Optional<Setting> die = passes.die();
    Optional<Range> fish = recipe.recipe().fish();
    Optional<Species> species = recipe.recipe().species();
    if (die.isPresent() && fish.isPresent() && species.isPresent()) {
      look(die.get(), fish.get(), species.get(), out);
    }
  }

  private static void look(Setting die, Range fish, Species species, Consumer<Finding> out) {
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
    if (first != null
        && (Closeness.isBelow(die.low(), thinnest) || Closeness.isAbove(die.high(), thickest))) {
      out.accept(finding(die, fish, species, first, thinnest, thickest));
    }
  }

  private static Finding finding(
      Setting die,
      Range fish,
      Species species,
      Species.Size size,
      double thinnest,
      double thickest) {
    boolean thick = die.high() > thickest;
    return Finding.warning(
            CODE,
            die.span(),
            "the die is "
                + Figures.plain(thick ? die.high() : die.low(), Unit.MM)
                + ", "
                + species.name()
                + " of "
                + fish.asWritten()
                + " takes "
                + Figures.plain(thinnest)
                + " to "
                + Figures.plain(thickest, Unit.MM))
        .seeing("pellet sizes written", size.place())
        .noting("the sizes are " + size.source().reliability().inWords())
        .helping((thick ? "take a finer die" : "take a coarser die") + ", or feed other fish");
  }
}
