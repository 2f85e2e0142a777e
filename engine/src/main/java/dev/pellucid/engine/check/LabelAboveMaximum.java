package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Label.Claim;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.function.Consumer;

/**
 * A label that says more than the law allows, whatever the feed holds: brought to the moisture of
 * the law at the moisture that is aimed at.
 */
final class LabelAboveMaximum implements Rule {
  private static final Code CODE = new Code("label-above-maximum");
  private static final double CLOSE = 1e-9;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(Inspection recipe, Consumer<Finding> out) {
    if (recipe.feed().isEmpty() || recipe.recipe().label().isEmpty()) {
      return;
    }
    ComputedFeed feed = recipe.feed().get();
    for (Claim claim : recipe.recipe().label().get().claims()) {
      for (Limit limit : recipe.recipe().limits()) {
        double said = claim.base() * factor(limit.basis(), feed);
        if (isLawOn(limit, claim) && said > limit.bound() * (1 + CLOSE)) {
          out.accept(finding(recipe, claim, limit, said));
        }
      }
    }
  }

  private static boolean isLawOn(Limit limit, Claim claim) {
    return limit.side() == Bound.Side.MAX
        && limit.origin().kind() == Limit.Kind.LAW
        && limit.subject() instanceof Subject.Nutrients sum
        && sum.nutrients().equals(List.of(claim.nutrient()));
  }

  private static double factor(Basis basis, ComputedFeed feed) {
    double dry = 1 - feed.balances().expected().moisture();
    if (basis instanceof Basis.DryMatter) {
      return 1 / dry;
    }
    return basis instanceof Basis.AtMoisture told ? (1 - told.moisture()) / dry : 1;
  }

  private static Finding finding(Inspection recipe, Claim claim, Limit limit, double said) {
    LimitWords words = new LimitWords(limit);
    Figures.Pair figures = words.against(said);
    String name = claim.nutrient().name();
    return Finding.error(
            CODE,
            claim.written().span(),
            "the label says "
                + figures.value()
                + words.unit()
                + " "
                + name
                + limit.basis().words()
                + ", the "
                + BrokenLimit.maximum(recipe, limit)
                + " is "
                + figures.other()
                + words.unit())
        .seeing("limit written", limit.origin().span())
        .helping("declare no more than the law allows")
        .about(new About(name, About.Side.MAX, List.of("label")));
  }
}
