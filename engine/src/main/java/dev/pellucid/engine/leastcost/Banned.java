package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.OwnSpecies;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;

/** Why an ingredient must not be in a feed at all, whatever it costs. */
final class Banned {
  private Banned() {}

  static List<Refusal> of(RuleContext recipe, Ingredient one) {
    List<Refusal> all = new ArrayList<>();
    for (LimitStatus status : recipe.limits()) {
      Limit limit = status.limit();
      boolean isNone = limit.side() == Bound.Side.MAX && limit.inForce() == 0;
      if (isNone && names(recipe, limit, one)) {
        all.add(
            new Refusal(
                one.name(),
                limit.origin().span().file().path(),
                limit.demand().lineNow() + " (" + limit.origin().name() + ")"));
      }
    }
    return all;
  }

  private static boolean names(RuleContext recipe, Limit limit, Ingredient one) {
    if (OwnSpecies.isSubject(limit)) {
      return recipe.recipe().species().filter(it -> OwnSpecies.is(one, it)).isPresent();
    }
    return limit
        .subject()
        .byKind(sum -> false, ratio -> false, names -> one.isOf(names.names()), cost -> false);
  }
}
