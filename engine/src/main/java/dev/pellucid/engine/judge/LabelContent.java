package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;

/**
 * A nutrient as the customer gets it, per kg of feed as fed, on target and without what is weighed
 * on top, in the base of its kind.
 *
 * @param fresh when the bag is filled; what is not told counts as nothing
 * @param stored at the end of shelf life; the same where it does not decay
 * @param untold what ingredients that do not tell it could still bring, where that is bounded
 * @param unknown whether some ingredient does not tell it
 */
record LabelContent(double fresh, double stored, double untold, boolean unknown) {

  static LabelContent of(ComputedFeed feed, Nutrient nutrient) {
    int index = nutrient.index();
    double fresh = feed.content(Scenario.EXPECTED, index);
    if (feed.nutrients().isMoisture(index)) {
      return new LabelContent(fresh, fresh, 0, false);
    }
    double stored = 0;
    double untold = 0;
    boolean decays = false;
    boolean unknown = false;
    for (Row row : feed.rows()) {
      decays |= row.composition().stability().get(index) != 0;
      stored += row.amount(Scenario.POOREST, index);
      if (row.composition().isUnknown(index) && row.kg() > 0) {
        unknown = true;
        untold += row.amount(Scenario.RICHEST, index) * row.kg() / row.kgRichest();
      }
    }
    double finished = feed.balances().expected().finished();
    return new LabelContent(fresh, decays ? stored / finished : fresh, untold / finished, unknown);
  }

  boolean decays() {
    return stored != fresh;
  }
}
