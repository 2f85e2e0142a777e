package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A minimum where all sister profiles have a maximum, or the other way, and none has both; or a
 * minimum of nothing.
 */
final class LimitOnOtherSide {
  static final Code CODE = new Code("limit-on-other-side");
  private static final int HABIT = 3;

  private LimitOnOtherSide() {}

  /** Whether it speaks. */
  static boolean look(Sisters.Asked one, Sisters sisters, List<Finding> out) {
    if (one.limit().side() == Bound.Side.MIN && one.limit().bound() == 0) {
      out.add(asksForNothing(one.limit()));
      return true;
    }
    if (hasOther(one)) {
      return false;
    }
    List<Sisters.Asked> others = sisters.ofKind(one);
    Set<String> onSide = profiles(others, one.limit().side());
    Set<String> onOther = profiles(others, one.limit().side().other());
    Set<String> all = new HashSet<>(onSide);
    all.addAll(onOther);
    if (!others.isEmpty() && onOther.equals(all)) {
      out.add(onSide.equals(all) ? lost(one.limit(), others) : finding(one.limit(), others));
      return true;
    }
    return others.isEmpty() && inItsFile(one, out);
  }

  private static Set<String> profiles(List<Sisters.Asked> asked, Bound.Side side) {
    Set<String> names = new HashSet<>();
    for (Sisters.Asked one : asked) {
      if (one.limit().side() == side) {
        names.add(one.profile().name());
      }
    }
    return names;
  }

  /** A file of law that has only maxima has no minimum. */
  private static boolean inItsFile(Sisters.Asked one, List<Finding> out) {
    List<Limit> others = new ArrayList<>();
    for (Limit limit : one.profile().limits()) {
      if (!limit.origin().span().equals(one.limit().origin().span())) {
        if (limit.side() == one.limit().side()) {
          return false;
        }
        others.add(limit);
      }
    }
    if (one.profile().kind() != Limit.Kind.LAW || others.size() < HABIT) {
      return false;
    }
    out.add(
        said(
            one.limit(),
            others.get(0),
            ": all other limits of " + one.profile().name() + " are " + words(others.get(0))));
    return true;
  }

  private static Finding asksForNothing(Limit limit) {
    return Finding.warning(
            CODE,
            limit.origin().span(),
            limit.demand().line() + " asks for nothing: every feed holds so much")
        .helping("write max for min to keep it out, or take the line out")
        .fixing(LimitWritten.side(limit), Bound.Side.MAX.word())
        .about(new About(limit.subject().text(), About.Side.NONE, List.of()));
  }

  private static boolean hasOther(Sisters.Asked one) {
    for (Limit limit : one.profile().limits()) {
      if (limit.side() != one.limit().side()
          && limit.subject().text().equals(one.limit().subject().text())) {
        return true;
      }
    }
    return false;
  }

  private static Finding finding(Limit limit, List<Sisters.Asked> others) {
    Limit other = others.get(0).limit();
    for (Sisters.Asked one : others) {
      other = one.limit().side() == limit.side() ? other : one.limit();
    }
    return said(limit, other, ": " + Sisters.named(others) + " have " + word(other) + " of it");
  }

  private static String word(Limit limit) {
    return limit.side() == Bound.Side.MIN ? "a minimum" : "a maximum";
  }

  private static String words(Limit limit) {
    return limit.side() == Bound.Side.MIN ? "minima" : "maxima";
  }

  private static Finding said(Limit limit, Limit other, String why) {
    String meant = other.side().word();
    return Finding.warning(CODE, limit.origin().span(), limit.demand().line() + why)
        .seeing("one of these", other.origin().span())
        .helping("write " + meant + " for " + limit.side().word() + ", if that was meant")
        .fixing(LimitWritten.side(limit), meant)
        .about(new About(limit.subject().text(), About.Side.NONE, List.of()));
  }

  private static Finding lost(Limit limit, List<Sisters.Asked> others) {
    Limit other = others.get(0).limit();
    for (Sisters.Asked one : others) {
      other = one.limit().side() == limit.side() ? other : one.limit();
    }
    return Finding.warning(
            LimitLost.CODE,
            limit.origin().span(),
            limit.origin().name()
                + " has no "
                + (other.side() == Bound.Side.MIN ? "minimum" : "maximum")
                + " of "
                + limit.subject().text()
                + "; "
                + Sisters.named(others)
                + " have both")
        .seeing("one of these", other.origin().span())
        .helping("if it was lost, write it again beside " + limit.demand().bound())
        .about(new About(limit.subject().text(), About.Side.NONE, List.of()));
  }
}
