package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A limit of the recipe's own that is more than five times tighter than those of its profiles, or,
 * on cost and shares, which no profile has, far from what the feed has.
 */
final class OwnLimitTenTimesOff implements Rule {
  private static final double FAR = 5;

  /** A limit that is broken is seldom broken by so much. */
  private static final double FAR_BROKEN = 3;

  @Override
  public Code code() {
    return LimitTenTimesOff.CODE;
  }

  @Override
  public boolean isCause() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (LimitStatus status : recipe.limits()) {
      far(status, out);
    }
    for (Limit limit : recipe.recipe().limits()) {
      if (limit.origin().kind() == Limit.Kind.RECIPE
          && limit.bound() > 0
          && LimitTenTimesOff.usual(limit).isEmpty()) {
        look(recipe.recipe(), limit, out);
      }
    }
  }

  /** A bound on cost or on shares that the feed passes by far: nobody writes such a one. */
  private static void far(LimitStatus status, Remarks out) {
    Limit own = status.limit();
    boolean alone = own.subject().addends().isEmpty() && !own.subject().isRatio();
    if (own.origin().kind() != Limit.Kind.RECIPE
        || !alone
        || own.bound() <= 0
        || status.state() != LimitStatus.State.BROKEN) {
      return;
    }
    double times = status.verdict().reading().value() / own.bound();
    if (times > FAR_BROKEN || times < 1 / FAR_BROKEN) {
      out.accept(
          Finding.warning(
                  LimitTenTimesOff.CODE,
                  LimitWritten.figure(own),
                  own.demand().line() + " is far from what the feed has")
              .helping("look for a slipped decimal point or a wrong unit")
              .about(new About(own.subject().text(), About.Side.NONE, List.of())));
    }
  }

  private static void look(ResolvedRecipe recipe, Limit own, Remarks out) {
    List<Limit> others = new ArrayList<>();
    Limit nearest = own;
    double distance = Double.MAX_VALUE;
    for (ResolvedRecipe.Met met : recipe.profiles()) {
      for (Limit limit : asked(met.profile(), own)) {
        double times = Magnitude.asFed(own) / Magnitude.asFed(limit);
        double apart = Math.max(times, 1 / times);
        others.add(limit);
        nearest = apart < distance ? limit : nearest;
        distance = Math.min(apart, distance);
      }
    }
    if (!others.isEmpty() && distance > FAR) {
      out.accept(finding(own, nearest, others));
    }
  }

  /** Law and guidance bound what is harmful, and may lie far off what is good. */
  private static List<Limit> asked(Profile profile, Limit own) {
    List<Limit> found = new ArrayList<>();
    if (!profile.kind().bindsByItself()) {
      for (Limit limit : profile.limits()) {
        if (limit.side() == own.side()
            && limit.bound() > 0
            && limit.subject().text().equals(own.subject().text())) {
          found.add(limit);
        }
      }
    }
    return found;
  }

  private static Finding finding(Limit own, Limit nearest, List<Limit> others) {
    Finding finding =
        Finding.warning(
                LimitTenTimesOff.CODE,
                LimitWritten.figure(own),
                own.demand().line()
                    + " is "
                    + Magnitude.times(Magnitude.asFed(own), Magnitude.asFed(nearest))
                    + " the "
                    + nearest.written().asWritten()
                    + " of "
                    + nearest.origin().name())
            .seeing("limit written", nearest.origin().span())
            .about(new About(own.subject().text(), About.Side.NONE, List.of()));
    return Magnitude.meant(finding, own, others);
  }
}
