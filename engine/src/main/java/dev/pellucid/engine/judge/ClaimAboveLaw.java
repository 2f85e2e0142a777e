package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.resolve.Label;
import dev.pellucid.engine.resolve.Label.Claim;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;

/**
 * A claim of a label that passes a maximum of the law.
 *
 * @param said what the label says, brought to the basis of the limit at the moisture that is aimed
 *     at, in the base of its kind
 */
public record ClaimAboveLaw(Claim claim, Limit limit, double said) {
  /**
   * The claims of a feed that pass a maximum of the law on their nutrient alone, in the order of
   * the claims and then of the limits.
   */
  static List<ClaimAboveLaw> in(ComputedFeed feed) {
    List<ClaimAboveLaw> above = new ArrayList<>();
    double dry = 1 - feed.balances().expected().moisture();
    for (Claim claim : feed.recipe().label().map(Label::claims).orElse(List.of())) {
      for (Limit limit : feed.recipe().limits()) {
        double said = claim.base() * limit.basis().fromAsFed(dry);
        if (isLawOn(limit, claim) && Closeness.isAbove(said, limit.bound())) {
          above.add(new ClaimAboveLaw(claim, limit, said));
        }
      }
    }
    return above;
  }

  private static boolean isLawOn(Limit limit, Claim claim) {
    return limit.side() == Bound.Side.MAX
        && limit.origin().kind() == Limit.Kind.LAW
        && limit.subject().addends().equals(List.of(claim.nutrient()));
  }
}
