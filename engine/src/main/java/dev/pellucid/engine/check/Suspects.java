package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.Optional;

/**
 * Slips that may be behind a broken minimum, told with it and not beside it: a premix that supplies
 * less than half of it, and a salt at the very share that the limit asks of its element.
 */
final class Suspects {
  private Suspects() {}

  static Finding named(Finding finding, ComputedFeed feed, Verdict broken) {
    List<Nutrient> addends = broken.limit().subject().addends();
    if (broken.limit().side() == Bound.Side.MIN && addends.size() == 1) {
      Nutrient nutrient = addends.get(0);
      return salt(smallSupply(finding, feed, broken, nutrient), feed, broken, nutrient);
    }
    return finding;
  }

  private static Finding smallSupply(
      Finding finding, ComputedFeed feed, Verdict broken, Nutrient nutrient) {
    double least = Minima.asFed(feed, broken.limit());
    Finding told = finding;
    for (Supplied one : Supplied.to(feed.recipe())) {
      if (one.supply().nutrient().equals(nutrient) && one.amount() < least / 2) {
        told =
            told.seeing("supplied by " + one.premix().code(), one.supply().written().span())
                .noting(
                    one.premix().code()
                        + " supplies "
                        + one.told(one.amount())
                        + " of it, less than half of the minimum");
        boolean atDose = Closeness.same(one.times(), 1);
        Optional<String> meant = atDose ? TenfoldSlip.meant(one, 10, least) : Optional.empty();
        told = meant.isPresent() ? told.helping(meant.get()) : told;
      }
    }
    return told;
  }

  private static Finding salt(
      Finding finding, ComputedFeed feed, Verdict broken, Nutrient nutrient) {
    Finding told = finding;
    for (Row row : feed.rows()) {
      Line line = row.line();
      boolean salt =
          row.path().size() == 1
              && (row.ingredient().traits().contains(Trait.SALT)
                  || row.ingredient().traits().contains(Trait.TRACE_SALT));
      if (salt && isFigureOf(line, broken)) {
        double holds = row.amount(Scenario.EXPECTED, nutrient.index()) / row.kg();
        told =
            told.noting(
                line.material().name()
                    + " is at "
                    + line.designed()
                    + ", the figure of the limit, and only "
                    + Figures.plain(holds * 100)
                    + " % of it is "
                    + nutrient.name());
      }
    }
    return told;
  }

  private static boolean isFigureOf(Line line, Verdict broken) {
    return broken.limit().writtenInForce().measured().isPresent()
        && Math.abs(line.designed().part() / broken.limit().inForce() - 1) < 1e-6;
  }
}
