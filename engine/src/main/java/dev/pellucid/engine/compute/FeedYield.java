package dev.pellucid.engine.compute;

import dev.pellucid.engine.quantity.Sum;
import java.util.List;

/**
 * How much finished feed the dry matter of a recipe comes to, on target; kg per 100 kg of recipe.
 *
 * @param moisture the place of moisture among the nutrients
 * @param dryMatter of all that goes in, the coat too
 */
record FeedYield(int moisture, double dryMatter, double finished) {

  static FeedYield of(List<ExplodedLine> leaves, int moisture, Balance expected) {
    Sum dryMatter = new Sum();
    for (ExplodedLine leaf : leaves) {
      dryMatter.add(dryMatter(leaf, moisture));
    }
    return new FeedYield(moisture, dryMatter.total(), expected.finished());
  }

  static double dryMatter(ExplodedLine leaf, int moisture) {
    return leaf.kg() * (1 - leaf.composition().expected().at(moisture));
  }

  /** What so much of the dry matter comes to; nothing of a feed that has none. */
  double finished(double part) {
    return dryMatter > 0 ? part / dryMatter * finished : 0;
  }
}
