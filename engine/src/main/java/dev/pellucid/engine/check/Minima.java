package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** For each nutrient the highest minimum that is about it alone, brought to the feed as fed. */
final class Minima {
  private final ComputedFeed feed;
  private final Map<Integer, Limit> byNutrient = new HashMap<>();

  Minima(ComputedFeed feed) {
    this.feed = feed;
    for (Limit limit : feed.recipe().limits()) {
      List<Nutrient> addends = limit.subject().addends();
      if (limit.side() == Bound.Side.MIN && addends.size() == 1) {
        byNutrient.merge(addends.get(0).index(), limit, this::higher);
      }
    }
  }

  private Limit higher(Limit one, Limit other) {
    return asFed(other) > asFed(one) ? other : one;
  }

  Optional<Limit> of(Nutrient nutrient) {
    return Optional.ofNullable(byNutrient.get(nutrient.index()));
  }

  /** The bound in force per kg of feed as fed, in the base of its kind. */
  double asFed(Limit limit) {
    return asFed(feed, limit);
  }

  static double asFed(ComputedFeed feed, Limit limit) {
    double dry = 1 - feed.balances().expected().moisture();
    return limit.basis().toAsFed(limit.inForce(), dry);
  }
}
