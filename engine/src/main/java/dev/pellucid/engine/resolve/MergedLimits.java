package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The limits of all that a recipe meets, each demand once: of two that ask the same of the same
 * side on the same basis with the same confidence, the tighter. They are the same for all recipes
 * that meet the same profiles, and each lays its own over them.
 *
 * <p>A recipe that asks less than its profile, and two sides that leave no room, are findings; the
 * latter cannot be judged.
 */
final class MergedLimits {
  static final Code LOOSER = new Code("looser-than-profile");
  static final Code CONTRADICT = new Code("limits-contradict");

  /** Far below any digit that can be written, far above what a change of unit rounds off. */
  private static final double SAME = 1e-12;

  private final List<Limit> merged = new ArrayList<>();
  private final Map<String, List<Integer>> places = new HashMap<>();
  private final List<Limit> law = new ArrayList<>();
  private final boolean contradict;

  /**
   * @param profiles in the order in which the recipe meets them
   */
  MergedLimits(List<Profile> profiles) {
    for (Profile profile : profiles) {
      for (Limit limit : profile.limits()) {
        int same = place(limit);
        if (same < 0) {
          places
              .computeIfAbsent(limit.subject().text(), text -> new ArrayList<>())
              .add(merged.size());
          merged.add(limit);
        } else if (tighter(limit, merged.get(same))) {
          merged.set(same, limit);
        }
        if (limit.origin().kind() == Limit.Kind.LAW) {
          law.add(limit);
        }
      }
    }
    this.contradict = !contradictions(merged, new ArrayList<>()).isEmpty();
  }

  /** The limits of one file, each once; of two that ask the same the first, with a finding. */
  static List<Limit> once(List<Limit> ofOneFile, List<Finding> findings) {
    List<Limit> first = new ArrayList<>();
    for (Limit limit : ofOneFile) {
      int same = sameDemand(first, limit);
      if (same < 0) {
        first.add(limit);
      } else {
        findings.add(
            Finding.error(
                    Lines.TWICE,
                    limit.origin().span(),
                    limit.demand().about() + " stands here twice")
                .seeing("first written", first.get(same).origin().span())
                .helping("keep the one that is meant"));
      }
    }
    return first;
  }

  /**
   * The same with the limits of a recipe.
   *
   * @param own each once
   */
  List<Limit> with(List<Limit> own, List<Finding> findings) {
    List<Limit> all = new ArrayList<>(merged);
    boolean contradicted = contradict;
    for (Limit limit : own) {
      int same = place(limit);
      if (same < 0) {
        all.add(limit);
      } else if (tighter(limit, merged.get(same))) {
        all.set(same, limit);
      } else {
        reportLooser(limit, merged.get(same), findings);
      }
      contradicted |= isContradicted(limit, own);
    }
    if (contradicted) {
      all.removeAll(contradictions(all, findings));
    }
    return all;
  }

  /** Whether a limit of a recipe may leave no room with another, of its profiles or its own. */
  private boolean isContradicted(Limit limit, List<Limit> own) {
    for (int place : places.getOrDefault(limit.subject().text(), List.of())) {
      if (leaveNoRoom(limit, merged.get(place))) {
        return true;
      }
    }
    for (Limit other : own) {
      if (leaveNoRoom(limit, other)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The limits of a recipe with each of the law again that a waived limit, tighter before, has
   * stood in for.
   */
  List<Limit> withLawInForce(List<Limit> waived) {
    List<Limit> inForce = new ArrayList<>(waived);
    for (Limit one : law) {
      // What asks the same stands where it stood here, as long as none before it was taken out.
      int place = place(one);
      boolean there = place < waived.size() && asksTheSame(waived.get(place), one);
      if (there ? !standsFor(waived.get(place), one) : !hasOneFor(one, waived)) {
        inForce.add(one);
      }
    }
    return inForce;
  }

  private static boolean hasOneFor(Limit law, List<Limit> limits) {
    for (Limit limit : limits) {
      if (standsFor(limit, law)) {
        return true;
      }
    }
    return false;
  }

  private static boolean standsFor(Limit limit, Limit law) {
    return asksTheSame(limit, law)
        && (law.side() == Bound.Side.MIN
            ? limit.inForce() >= law.bound()
            : limit.inForce() <= law.bound());
  }

  /** Where the limit stands here that asks the same; below zero where none does. */
  private int place(Limit limit) {
    for (int place : places.getOrDefault(limit.subject().text(), List.of())) {
      if (asksTheSame(merged.get(place), limit)) {
        return place;
      }
    }
    return -1;
  }

  /** Where the limit stands that asks the same; below zero where none does. */
  private static int sameDemand(List<Limit> limits, Limit limit) {
    for (int i = 0; i < limits.size(); i++) {
      if (asksTheSame(limits.get(i), limit)) {
        return i;
      }
    }
    return -1;
  }

  /** Guidance stands for nothing else, and nothing else for guidance. */
  private static boolean asksTheSame(Limit one, Limit other) {
    return one.side() == other.side()
        && isGuidance(one) == isGuidance(other)
        && sameSubject(one, other)
        && one.inBatches().equals(other.inBatches());
  }

  private static boolean isGuidance(Limit limit) {
    return limit.origin().kind() == Limit.Kind.GUIDANCE;
  }

  private static boolean sameSubject(Limit one, Limit other) {
    return one.subject().text().equals(other.subject().text()) && one.basis().equals(other.basis());
  }

  /** Whether no figure can be on the right side of both. */
  private static boolean leaveNoRoom(Limit one, Limit other) {
    if (one.side() == other.side()
        || isGuidance(one)
        || isGuidance(other)
        || !sameSubject(one, other)) {
      return false;
    }
    return one.side() == Bound.Side.MIN
        ? above(one.bound(), other.bound())
        : above(other.bound(), one.bound());
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
    for (Limit min : limits) {
      for (Limit max : min.side() == Bound.Side.MIN ? limits : List.<Limit>of()) {
        if (max.side() == Bound.Side.MAX && leaveNoRoom(min, max)) {
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
                  .helping("no feed can meet both: fix one of them"));
        }
      }
    }
    return found;
  }
}
