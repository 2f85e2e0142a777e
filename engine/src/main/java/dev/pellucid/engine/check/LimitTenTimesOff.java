package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrient.UsualBound;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A bound more than five times, or less than a fifth, of that of every sister profile; or one
 * outside the span in which its nutrient says that they lie, which then counts alone. Most often a
 * slipped point or a unit taken for another.
 *
 * <p>Five times: a slip of ten shows as long as what is right differs by less than two from the
 * nearest sister. Common practice, no source.
 */
final class LimitTenTimesOff {
  static final Code CODE = new Code("limit-ten-times-off");
  private static final double FAR = 5;

  /** What law asks of one material is up to six times what it asks of the next. */
  private static final double FAR_OF_MATERIALS = 8;

  /** So far apart both sides of a ratio never are: common sense, no source. */
  private static final double APART = 20;

  private LimitTenTimesOff() {}

  static void look(Sisters.Asked one, Sisters sisters, List<Finding> out) {
    Limit limit = one.limit();
    Optional<UsualBound> usual = usual(limit);
    if (limit.bound() <= 0) {
      return;
    }
    if (usual.isPresent()) {
      usual(limit, usual.get(), out);
      return;
    }
    if (besideOthers(one, sisters, FAR, out) < 2) {
      apart(one, out);
    }
  }

  /** Of raw materials, which differ by their nature. */
  static void ofMaterials(Sisters.Asked one, Sisters sisters, List<Finding> out) {
    besideOthers(one, sisters, FAR_OF_MATERIALS, out);
  }

  /** Against the others alone; tells how many there are. */
  private static int besideOthers(
      Sisters.Asked one, Sisters sisters, double far, List<Finding> out) {
    Limit limit = one.limit();
    List<Limit> others = new ArrayList<>();
    for (Sisters.Asked other : sisters.onSide(one)) {
      if (other.limit().bound() > 0) {
        others.add(other.limit());
      }
    }
    if (others.size() > 1 && limit.bound() > 0) {
      Optional<Limit> nearest = nearest(limit, others, far);
      if (nearest.isPresent()) {
        out.add(finding(limit, nearest.get(), others));
      }
    }
    return others.size();
  }

  /** The nearest of the others, where all of them are far and on one side of it. */
  private static Optional<Limit> nearest(Limit limit, List<Limit> others, double far) {
    double figure = Magnitude.asFed(limit);
    Limit least = others.get(0);
    Limit most = others.get(0);
    for (Limit other : others) {
      least = Magnitude.asFed(other) < Magnitude.asFed(least) ? other : least;
      most = Magnitude.asFed(other) > Magnitude.asFed(most) ? other : most;
    }
    if (figure > far * Magnitude.asFed(most)) {
      return Optional.of(most);
    }
    return figure < Magnitude.asFed(least) / far ? Optional.of(least) : Optional.empty();
  }

  private static Finding finding(Limit limit, Limit nearest, List<Limit> others) {
    Finding finding =
        Finding.warning(
                CODE,
                LimitWritten.figure(limit),
                limit.demand().line()
                    + " is "
                    + Magnitude.times(Magnitude.asFed(limit), Magnitude.asFed(nearest))
                    + " the "
                    + nearest.written().asWritten()
                    + " of "
                    + nearest.origin().name()
                    + ", and no profile comes nearer")
            .seeing("limit written", nearest.origin().span())
            .about(new About(limit.subject().text(), About.Side.NONE, List.of()));
    Finding asked = Magnitude.meant(finding, limit, others);
    List<Nutrient> addends = limit.subject().addends();
    return addends.size() == 1
        ? asked.helping(
            "if the source says so, tell " + key(limit) + " of " + addends.get(0).name())
        : asked;
  }

  private static String key(Limit limit) {
    return limit.side() == Bound.Side.MAX ? "usual-maximum" : "usual-minimum";
  }

  /** Where bounds of all that it adds up usually lie: of a sum, between the most and the sum. */
  static Optional<UsualBound> usual(Limit limit) {
    UsualBound found = null;
    for (Nutrient one : limit.subject().addends()) {
      Optional<UsualBound> its =
          limit.side() == Bound.Side.MAX ? one.usualMaximum() : one.usualMinimum();
      if (its.isEmpty()) {
        return Optional.empty();
      }
      found = found == null ? its.get() : found.with(its.get());
    }
    return Optional.ofNullable(found);
  }

  /** Of a ratio that is bounded on both sides, one so far from the other that it bounds nothing. */
  private static void apart(Sisters.Asked one, List<Finding> out) {
    Limit min = one.limit();
    if (!min.subject().isRatio() || min.side() != Bound.Side.MIN) {
      return;
    }
    for (Limit max : one.profile().limits()) {
      if (max.side() == Bound.Side.MAX
          && max.subject().text().equals(min.subject().text())
          && max.bound() > APART * min.bound()) {
        out.add(
            Finding.warning(
                    CODE,
                    min.origin().span(),
                    min.demand().line()
                        + " and "
                        + max.demand().bound()
                        + " are "
                        + Magnitude.times(max.bound(), min.bound())
                        + " apart")
                .seeing("the other side", max.origin().span())
                .helping("fix the one that is ten times off")
                .about(new About(min.subject().text(), About.Side.NONE, List.of())));
      }
    }
  }

  private static void usual(Limit limit, UsualBound usual, List<Finding> out) {
    double figure = Magnitude.asFed(limit);
    if (figure >= usual.low() && figure <= usual.high()) {
      return;
    }
    Finding finding =
        Finding.warning(
                CODE,
                LimitWritten.figure(limit),
                limit.demand().line()
                    + ": "
                    + (limit.side() == Bound.Side.MAX ? "maxima" : "minima")
                    + " of it in feed usually lie at "
                    + usual.asWritten())
            .seeing("the usual span", usual.place())
            .about(new About(limit.subject().text(), About.Side.NONE, List.of()));
    Optional<String> meant = Magnitude.meant(limit, usual.low(), usual.high());
    finding =
        meant.isPresent()
            ? finding
                .helping("did you mean " + meant.get() + "?")
                .fixing(LimitWritten.figure(limit), meant.get())
            : finding;
    out.add(finding.helping("if the source says so, widen " + key(limit) + " of " + usual.name()));
  }
}
