package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A limit told on another basis, or with other confidence, than all its sisters; or as fed where
 * nearly all others of its file have one basis. The same figure then asks for more or less.
 */
final class LimitTermsDiffer {
  static final Code CODE = new Code("limit-terms-differ");

  /** So many others of a file with one basis are a habit: common sense, no source. */
  private static final int HABIT = 3;

  /** Law and guidance are written on one basis, so two are enough. */
  private static final int HABIT_OF_LAW = 2;

  private static final double MOST = 0.8;

  private LimitTermsDiffer() {}

  /** Whether it speaks. */
  static boolean look(Sisters.Asked one, Sisters sisters, List<Finding> out) {
    List<Sisters.Asked> others = new ArrayList<>();
    for (Sisters.Asked other : sisters.ofKind(one)) {
      if (other.limit().side() == one.limit().side()) {
        others.add(other);
      }
    }
    if (others.size() > 1) {
      Limit first = others.get(0).limit();
      if (!first.basis().equals(one.limit().basis()) && agreeOnBasis(others)) {
        out.add(finding(one.limit(), first, Sisters.named(others) + says(first)));
        return true;
      }
      if (!first.inBatches().equals(one.limit().inBatches()) && agreeOnBatches(others)) {
        out.add(finding(one.limit(), first, Sisters.named(others) + says(first)));
        return true;
      }
    }
    return inItsFile(one, out);
  }

  private static boolean agreeOnBasis(List<Sisters.Asked> others) {
    Basis first = others.get(0).limit().basis();
    for (Sisters.Asked other : others) {
      if (!other.limit().basis().equals(first)) {
        return false;
      }
    }
    return true;
  }

  private static boolean agreeOnBatches(List<Sisters.Asked> others) {
    OptionalDouble first = others.get(0).limit().inBatches();
    for (Sisters.Asked other : others) {
      if (!other.limit().inBatches().equals(first)) {
        return false;
      }
    }
    return true;
  }

  private static String says(Limit first) {
    String terms = first.demand().terms();
    return terms.isEmpty() ? " ask it plainly, as fed" : " ask it" + terms;
  }

  private static boolean inItsFile(Sisters.Asked one, List<Finding> out) {
    int habit = one.profile().kind().bindsByItself() ? HABIT_OF_LAW : HABIT;
    return besides(one, one.profile().limits(), habit, "of its file", out);
  }

  /** Of raw materials, where nearly all that is asked of them has one basis. */
  static boolean ofMaterials(Sisters.Asked one, List<Profile> profiles, List<Finding> out) {
    List<Limit> all = new ArrayList<>();
    for (Profile profile : profiles) {
      if (profile.kind() == one.profile().kind()) {
        all.addAll(profile.limits());
      }
    }
    return besides(one, all, HABIT, "of raw materials", out);
  }

  private static boolean besides(
      Sisters.Asked one, List<Limit> all, int habit, String where, List<Finding> out) {
    if (!hasBasis(one.limit())) {
      return false;
    }
    List<Limit> with = new ArrayList<>();
    int others = 0;
    for (Limit limit : all) {
      if (!limit.origin().span().equals(one.limit().origin().span()) && hasBasis(limit)) {
        others++;
        if (!limit.basis().words().isEmpty()
            && (with.isEmpty() || with.get(0).basis().equals(limit.basis()))) {
          with.add(limit);
        }
      }
    }
    if (with.size() < habit
        || with.size() < MOST * others
        || with.get(0).basis().equals(one.limit().basis())) {
      return false;
    }
    String rest =
        (with.size() == others ? "all " : "")
            + Plural.of(with.size(), "other limit")
            + " "
            + where
            + " are"
            + with.get(0).basis().words();
    out.add(finding(one.limit(), with.get(0), rest));
    return true;
  }

  /** A ratio and an inclusion are the same on every basis, or nearly. */
  private static boolean hasBasis(Limit limit) {
    return !limit.subject().addends().isEmpty();
  }

  private static Finding finding(Limit limit, Limit other, String said) {
    String terms = limit.demand().terms();
    String asked = other.demand().terms();
    Finding finding =
        Finding.warning(
                CODE,
                limit.origin().span(),
                limit.demand().line() + (terms.isEmpty() ? ", as fed: " : ": ") + said)
            .seeing("one of these", other.origin().span())
            .about(new About(limit.subject().text(), About.Side.NONE, List.of()));
    return asked.isEmpty()
        ? finding.helping("take" + terms + " out, or write it in the others too")
        : finding
            .helping("write" + asked + " behind it, if that was meant")
            .fixing(LimitWritten.figure(limit), limit.written().asWritten() + " " + asked);
  }
}
