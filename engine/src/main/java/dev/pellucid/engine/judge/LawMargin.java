package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Bound;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is left to a limit of the law that a feed keeps on average, when lots differ. Lots are taken
 * to lie around their mean as a normal distribution does.
 *
 * <p>Only contents differ from lot to lot: ratios, inclusions and the cost are left as they are,
 * and so is a limit that says itself in how many batches it must hold.
 *
 * @param status of the limit as it is written, kept
 * @param reading the figure that is judged, with its deviation between batches; without where the
 *     maximum is far above it
 * @param keeps the part of all batches that keeps the bound, by what is told
 */
public record LawMargin(LimitStatus status, Reading reading, double keeps) {
  /** So many deviations off, all batches are on one side. */
  private static final double FAR = 8;

  /** Of a maximum that is ten times the figure, each deviation would have to be many times it. */
  private static final double TIMES_BELOW = 10;

  /** Empty for what is no such limit, and for one that is not kept. */
  public static Optional<LawMargin> of(LimitStatus status) {
    Limit limit = status.limit();
    if (!isOf(limit) || !status.state().isKept()) {
      return Optional.empty();
    }
    Reading judged = status.verdict().reading();
    Reading reading =
        isFarBelow(limit, judged)
            ? judged
            : status
                .readings()
                .judged(limit.subject(), limit.basis(), limit.side(), true)
                .reading();
    return Optional.of(new LawMargin(status, reading, keeps(limit, reading)));
  }

  /** Whether it is a limit of the law that asks for a margin once it is kept. */
  public static boolean isOf(Limit limit) {
    return limit.origin().kind() == Limit.Kind.LAW
        && limit.inBatches().isEmpty()
        && !limit.subject().addends().isEmpty();
  }

  /** Whether the bound is so near that lots of what is told could pass it. */
  public boolean isNear() {
    return !isFarBelow(limit(), status.verdict().reading());
  }

  /** Whether no lots of what is told can bring a feed to its maximum; then no spread is asked. */
  private static boolean isFarBelow(Limit limit, Reading judged) {
    return limit.side() == Bound.Side.MAX && judged.value() * TIMES_BELOW < limit.inForce();
  }

  private static double keeps(Limit limit, Reading reading) {
    double over = reading.withoutUntold() - limit.inForce();
    double room = limit.side() == Bound.Side.MAX ? -over : over;
    if (reading.deviation() <= Closeness.to(limit.inForce())) {
      return 1;
    }
    double deviations = room / reading.deviation();
    return deviations > FAR ? 1 : Normal.below(Math.max(-FAR, deviations));
  }

  public Limit limit() {
    return status.limit();
  }

  /** The part of all batches that is beyond the bound. */
  public double beyond() {
    return 1 - keeps;
  }

  /** Whether enough batches keep it; a part within 1e-9 of what is asked does. */
  public boolean isEnough(double keptIn) {
    return Closeness.isAtLeast(keeps, keptIn);
  }

  /** The same limit, asked in so many batches. */
  public LimitStatus askedIn(double keptIn) {
    Limit asked = limit().askedIn(OptionalDouble.of(keptIn));
    Verdict verdict = Judge.verdict(status.readings(), asked);
    LimitStatus.State state = verdict.keeps() ? status.state() : LimitStatus.State.BROKEN;
    return new LimitStatus(
        verdict, status.readings(), state, OptionalDouble.empty(), status.withoutWaiver());
  }
}
