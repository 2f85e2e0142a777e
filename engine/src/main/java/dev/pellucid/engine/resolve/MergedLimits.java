package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The limits of a recipe and of all it meets, each demand once: of two that ask the same of the
 * same side on the same basis with the same confidence, the tighter. A recipe that asks less than
 * its profile, and two sides that leave no room, are findings; the latter cannot be judged.
 */
final class MergedLimits {
  static final Code LOOSER = new Code("looser-than-profile");
  static final Code CONTRADICT = new Code("limits-contradict");

  /** Far below any digit that can be written, far above what a change of unit rounds off. */
  private static final double SAME = 1e-12;

  private MergedLimits() {}

  /** The limits of one file, each once; of two that ask the same the first, with a finding. */
  static List<Limit> once(List<Limit> ofOneFile, List<Finding> findings) {
    List<Limit> first = new ArrayList<>();
    for (Limit limit : ofOneFile) {
      OptionalInt same = sameDemand(first, limit);
      if (same.isEmpty()) {
        first.add(limit);
      } else {
        findings.add(
            Finding.error(
                    Lines.TWICE,
                    limit.origin().span(),
                    limit.demand().about() + " stands here twice")
                .seeing("first written", first.get(same.getAsInt()).origin().span())
                .helping("keep the one that is meant"));
      }
    }
    return first;
  }

  static List<Limit> of(List<Limit> all, List<Finding> findings) {
    List<Limit> merged = new ArrayList<>();
    for (Limit limit : all) {
      OptionalInt same = sameDemand(merged, limit);
      if (same.isEmpty()) {
        merged.add(limit);
      } else if (tighter(limit, merged.get(same.getAsInt()))) {
        merged.set(same.getAsInt(), limit);
      } else {
        reportLooser(limit, merged.get(same.getAsInt()), findings);
      }
    }
    merged.removeAll(contradictions(merged, findings));
    return merged;
  }

  /**
   * The limits with each of the law again that a waived limit, tighter before, has stood in for.
   */
  static List<Limit> withLawInForce(List<Limit> waived, List<Limit> all) {
    List<Limit> inForce = new ArrayList<>(waived);
    for (Limit law : all) {
      if (law.origin().kind() == Limit.Kind.LAW
          && waived.stream().noneMatch(limit -> standsFor(limit, law))) {
        inForce.add(law);
      }
    }
    return inForce;
  }

  private static boolean standsFor(Limit limit, Limit law) {
    return asksTheSame(limit, law)
        && (law.side() == Bound.Side.MIN
            ? limit.inForce() >= law.bound()
            : limit.inForce() <= law.bound());
  }

  private static OptionalInt sameDemand(List<Limit> limits, Limit limit) {
    for (int i = 0; i < limits.size(); i++) {
      if (asksTheSame(limits.get(i), limit)) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  private static boolean asksTheSame(Limit one, Limit other) {
    return sameSubject(one, other)
        && one.side() == other.side()
        && one.inBatches().equals(other.inBatches());
  }

  private static boolean sameSubject(Limit one, Limit other) {
    return one.subject().text().equals(other.subject().text()) && one.basis().equals(other.basis());
  }

  private static boolean tighter(Limit one, Limit other) {
    return one.side() == Bound.Side.MIN
        ? above(one.bound(), other.bound())
        : above(other.bound(), one.bound());
  }

  /** 351 g/kg is not above 35.1 %, though their doubles differ in the last bit. */
  private static boolean above(double one, double other) {
    return one - other > SAME * Math.abs(other);
  }

  private static void reportLooser(Limit limit, Limit kept, List<Finding> findings) {
    if (limit.origin().kind() != Limit.Kind.RECIPE || !tighter(kept, limit)) {
      return;
    }
    findings.add(
        Finding.error(
                LOOSER,
                limit.origin().span(),
                limit.demand().about()
                    + " "
                    + limit.written().asWritten()
                    + " is looser than the "
                    + kept.written().asWritten()
                    + " of "
                    + kept.origin().name())
            .seeing("limit written", kept.origin().span())
            .helping(
                kept.origin().kind() == Limit.Kind.LAW
                    ? "law cannot be loosened: take the line out"
                    : "to go below a profile for a time, write the line under waivers"));
  }

  /** Says which limits contradict each other, and gives them: one of the two is always broken. */
  private static List<Limit> contradictions(List<Limit> limits, List<Finding> findings) {
    List<Limit> found = new ArrayList<>();
    List<Limit> maxima = limits.stream().filter(l -> l.side() == Bound.Side.MAX).toList();
    for (Limit min : limits) {
      for (Limit max : min.side() == Bound.Side.MIN ? maxima : List.<Limit>of()) {
        if (sameSubject(min, max) && above(min.bound(), max.bound())) {
          found.add(min);
          found.add(max);
          findings.add(
              Finding.error(
                      CONTRADICT,
                      min.origin().span(),
                      min.subject().text()
                          + " must be at least "
                          + min.written().asWritten()
                          + " and at most "
                          + max.written().asWritten())
                  .seeing("the other side", max.origin().span())
                  .helping("no feed can meet both: mend one of them"));
        }
      }
    }
    return found;
  }
}
