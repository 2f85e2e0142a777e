package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import java.util.List;

/**
 * A minimum where all sister profiles have a maximum, or the other way, and none has both; or a
 * minimum of nothing.
 */
final class LimitOnOtherSide {
  static final Code CODE = new Code("limit-on-other-side");

  private LimitOnOtherSide() {}

  /** Whether it speaks. */
  static boolean look(Sisters.Asked one, Sisters sisters, List<Finding> out) {
    Bound.Side side = one.limit().side();
    if (side == Bound.Side.MIN && one.limit().bound() == 0) {
      out.add(asksForNothing(one.limit()));
      return true;
    }
    if (hasOther(one)) {
      return false;
    }
    List<Sisters.Asked> others = sisters.ofKind(one);
    for (Sisters.Asked other : others) {
      if (other.limit().side() == side) {
        return false;
      }
    }
    if (others.isEmpty()) {
      return false;
    }
    out.add(finding(one.limit(), others));
    return true;
  }

  private static Finding asksForNothing(Limit limit) {
    return Finding.warning(
            CODE,
            limit.origin().span(),
            limit.demand().line() + " asks for nothing: every feed holds so much")
        .helping("write max for min to keep it out, or take the line out")
        .mending(LimitWritten.side(limit), Bound.Side.MAX.word())
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
    String meant = others.get(0).limit().side().word();
    return Finding.warning(
            CODE,
            limit.origin().span(),
            limit.demand().line()
                + ": "
                + Sisters.named(others)
                + " have a "
                + (meant.equals("min") ? "minimum" : "maximum")
                + " here")
        .seeing("written in another profile", others.get(0).limit().origin().span())
        .helping("write " + meant + " for " + limit.side().word() + ", if that was meant")
        .mending(LimitWritten.side(limit), meant)
        .about(new About(limit.subject().text(), About.Side.NONE, List.of()));
  }
}
