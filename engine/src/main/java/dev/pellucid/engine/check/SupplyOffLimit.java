package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.Optional;

/**
 * What a premix supplies at its dose is by itself above a maximum of a feed; or it is less than
 * half of a broken minimum to which all else brings less than three quarters. The slip is in the
 * premix then, and not in the recipe that shows it.
 */
final class SupplyOffLimit implements Rule {
  private static final Code CODE = new Code("supply-off-limit");
  private static final double HALF = 0.5;
  private static final double MUCH = 0.75;

  @Override
  public Code code() {
    return CODE;
  }

  /** The supply is written once, and each limit that shows it would say so again. */
  @Override
  public boolean oncePerPlace() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (recipe.feed().isEmpty()) {
      return;
    }
    List<Supplied> supplied = List.of();
    for (LimitStatus status : recipe.limits()) {
      List<Nutrient> addends = status.limit().subject().addends();
      if (status.state().isBroken() && addends.size() == 1) {
        supplied = supplied.isEmpty() ? Supplied.to(recipe.recipe()) : supplied;
        for (Supplied one : supplied) {
          if (one.supply().nutrient().equals(addends.get(0)) && Closeness.same(one.times(), 1)) {
            look(recipe.feed().get(), status, one, out);
          }
        }
      }
    }
  }

  private static void look(ComputedFeed feed, LimitStatus status, Supplied one, Remarks out) {
    Limit limit = status.limit();
    double bound = Minima.asFed(feed, limit);
    boolean min = limit.side() == Bound.Side.MIN;
    double others = status.expected().value() * bound / limit.inForce() - one.amount();
    if (!min && Closeness.isAbove(one.amount(), bound)) {
      out.accept(finding(one, limit, "above", meant(one, 0.1, 0, bound)), status);
    } else if (min && one.amount() < HALF * bound && others < MUCH * bound) {
      out.accept(
          finding(one, limit, "less than half of", TenfoldSlip.meant(one, 10, bound)), status);
    }
  }

  private static Optional<String> meant(Supplied one, double factor, double low, double high) {
    double meant = one.amount() * factor;
    return meant > low && meant <= high
        ? Optional.of("did you mean " + one.told(one.supply().amount() * factor) + "?")
        : Optional.empty();
  }

  private static Finding finding(Supplied one, Limit limit, String how, Optional<String> meant) {
    String nutrient = one.supply().nutrient().name();
    String code = one.premix().code();
    Finding finding =
        Finding.warning(
                CODE,
                one.supply().written().amount().span(),
                code
                    + " supplies "
                    + nutrient
                    + " "
                    + one.told(one.amount())
                    + ", "
                    + how
                    + " the "
                    + (limit.side() == Bound.Side.MIN ? "minimum" : "maximum")
                    + " of "
                    + limit.writtenInForce().asWritten()
                    + limit.basis().words()
                    + " of "
                    + limit.origin().name())
            .seeing("limit written", limit.origin().span())
            .about(new About(nutrient, About.Side.NONE, List.of(code, one.supply().from())));
    return meant.isPresent()
        ? finding.helping(meant.get())
        : finding.helping("fix the supply, or give this feed another premix");
  }
}
