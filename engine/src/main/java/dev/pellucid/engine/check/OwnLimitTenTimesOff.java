package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/** A limit of the recipe's own that is more than five times tighter than those of its profiles. */
final class OwnLimitTenTimesOff implements Rule {
  private static final double FAR = 5;

  @Override
  public Code code() {
    return LimitTenTimesOff.CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Limit limit : recipe.recipe().limits()) {
      if (limit.origin().kind() == Limit.Kind.RECIPE
          && limit.bound() > 0
          && LimitTenTimesOff.usual(limit).isEmpty()) {
        look(recipe.recipe(), limit, out);
      }
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

  /** Law bounds what is harmful, and may lie far off what is good. */
  private static List<Limit> asked(Profile profile, Limit own) {
    List<Limit> found = new ArrayList<>();
    if (profile.kind() != Limit.Kind.LAW) {
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
