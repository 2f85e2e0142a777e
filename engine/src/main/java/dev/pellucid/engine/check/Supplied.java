package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a premix supplies to a feed: its own figure is per kg of feed at its dose, and counts here
 * as much as the feed takes of it. Before overage, losses and storage.
 *
 * @param line of the recipe
 * @param premix on that line, or inside the premix on it
 * @param times the share that the feed takes of the premix over its dose
 */
record Supplied(Line line, ResolvedPremix premix, double times, ResolvedPremix.Supply supply) {

  /** In the base of the nutrient, per kg of weighed feed. */
  double amount() {
    return supply.amount() * times;
  }

  /** A base figure of this nutrient in the unit in which the supply was written. */
  String told(double base) {
    var written = supply.written().amount();
    return Figures.plain(written.unit().fromBase(base)) + " " + written.unitAsWritten();
  }

  /** Every supply of every premix, in the order of the lines. */
  static List<Supplied> to(ResolvedRecipe recipe) {
    List<Supplied> found = new ArrayList<>();
    for (Used used : premixes(recipe)) {
      Optional<Double> times = used.times();
      if (times.isPresent()) {
        for (ResolvedPremix.Supply one : used.premix().supplies()) {
          found.add(new Supplied(used.line(), used.premix(), times.get(), one));
        }
      }
    }
    return found;
  }

  /**
   * A premix in a feed.
   *
   * @param share of the weighed feed, before overage
   * @param direct whether it stands on the line itself, and not inside another premix
   */
  record Used(Line line, ResolvedPremix premix, Share share, boolean direct) {
    Optional<Double> times() {
      return premix
          .dose()
          .filter(Share::isPositive)
          .map(dose -> share.percent().doubleValue() / dose.percent().doubleValue());
    }
  }

  /** Every premix, those inside premixes too. */
  static List<Used> premixes(ResolvedRecipe recipe) {
    List<Used> found = new ArrayList<>();
    for (Line line : recipe.lines()) {
      open(line, line.material(), line.designed(), true, found);
    }
    return found;
  }

  private static void open(
      Line line, Material material, Share share, boolean direct, List<Used> found) {
    Optional<ResolvedPremix> premix = material.premixed();
    if (premix.isPresent()) {
      found.add(new Used(line, premix.get(), share, direct));
      for (ResolvedPremix.Part part : premix.get().parts()) {
        open(line, part.material(), part.designed().of(share), false, found);
      }
    }
  }
}
