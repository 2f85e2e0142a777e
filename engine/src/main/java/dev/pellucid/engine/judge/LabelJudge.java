package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.RetentionGap;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Tolerance;
import dev.pellucid.engine.data.Tolerance.Side;
import dev.pellucid.engine.judge.LabelVerdict.Outcome;
import dev.pellucid.engine.resolve.Label.Claim;
import dev.pellucid.engine.resolve.Label.Manner;
import dev.pellucid.measure.Closeness;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Holds what a label says against the feed as it reaches the customer: below the label the figure
 * at the end of shelf life counts, above it the one at packing. What is put in so that it lasts is
 * no spending of the tolerance: that is told above the label only of what is still there at the
 * end.
 *
 * <p>A declaration may be off by the rounding that the rules grant without a word; a guarantee by
 * nothing.
 */
public final class LabelJudge {
  private final LabelRules rules;
  private final ComputedFeed feed;

  private LabelJudge(LabelRules rules, ComputedFeed feed) {
    this.rules = rules;
    this.feed = feed;
  }

  /** One verdict for each claim of a feed; none without rules or label. */
  public static List<LabelVerdict> verdicts(ComputedFeed feed, FeedTables tables) {
    if (tables.label().isEmpty() || feed.recipe().label().isEmpty()) {
      return List.of();
    }
    LabelJudge judge = new LabelJudge(tables.label().get(), feed);
    return feed.recipe().label().get().claims().stream().map(judge::verdict).toList();
  }

  private LabelVerdict verdict(Claim claim) {
    LabelContent content = LabelContent.of(feed, claim.nutrient());
    Optional<Tolerance> tolerance =
        Optional.ofNullable(rules.tolerances().get(claim.nutrient().name()));
    LabelVerdict below = below(claim, content, tolerance);
    LabelVerdict above = above(claim, content, tolerance);
    return switch (claim.manner()) {
      case AT_LEAST -> below;
      case AT_MOST -> above;
      case DECLARED ->
          tolerance.isEmpty() ? withOutcome(below, Outcome.NO_TOLERANCE) : below.orGraver(above);
    };
  }

  private LabelVerdict below(Claim claim, LabelContent content, Optional<Tolerance> tolerance) {
    OptionalDouble allowed = allowed(claim, Side.BELOW, tolerance);
    double shortfall = claim.base() - content.stored();
    Outcome outcome = outcome(claim, shortfall, shortfall, allowed);
    if (outcome == Outcome.BEYOND && content.decays() && lossIsUntold()) {
      outcome = Outcome.CANNOT_TELL;
    }
    if (outcome == Outcome.BEYOND && couldBeEnough(claim.nutrient(), content, shortfall, allowed)) {
      outcome = Outcome.CANNOT_TELL;
    }
    return new LabelVerdict(
        claim,
        outcome,
        Side.BELOW,
        content.stored(),
        content.stored(),
        content.decays(),
        allowed,
        tolerance);
  }

  /** Whether the recipe itself does not say what the feed goes through, or how long it is kept. */
  private boolean lossIsUntold() {
    for (RetentionGap gap : feed.retentionGaps()) {
      if (gap.isOfWayUntold()) {
        return true;
      }
    }
    return false;
  }

  private LabelVerdict above(Claim claim, LabelContent content, Optional<Tolerance> tolerance) {
    OptionalDouble allowed = allowed(claim, Side.ABOVE, tolerance);
    double fresh = content.fresh() - claim.base();
    double lasting = Math.min(fresh, content.stored() - claim.base());
    Outcome outcome = outcome(claim, fresh, lasting, allowed);
    boolean couldBeMore =
        content.unknown()
            && allowed.isPresent()
            && fresh + content.untold() > allowed.getAsDouble() + Closeness.to(claim.base());
    if (outcome != Outcome.BEYOND && couldBeMore) {
      outcome = Outcome.CANNOT_TELL;
    }
    boolean atTheEnd = outcome == Outcome.SPENDS && content.decays();
    return new LabelVerdict(
        claim,
        outcome,
        Side.ABOVE,
        atTheEnd ? content.stored() : content.fresh(),
        content.stored(),
        atTheEnd,
        allowed,
        tolerance);
  }

  /**
   * @param off how far it lies off at the worst
   * @param spent how much of that is no provision for the store
   */
  private Outcome outcome(Claim claim, double off, double spent, OptionalDouble allowed) {
    if (allowed.isEmpty()) {
      return Outcome.KEPT;
    }
    double free = claim.manner() == Manner.DECLARED ? rules.rounding() : 0;
    if (off > allowed.getAsDouble() + Closeness.to(claim.base())) {
      return Outcome.BEYOND;
    }
    return spent > free * allowed.getAsDouble() + Closeness.to(claim.base())
        ? Outcome.SPENDS
        : Outcome.KEPT;
  }

  /**
   * What the label takes without a word, or with a word where it is so today.
   *
   * @param least per kg as fed, in the base of the nutrient's kind; empty where any is
   * @param most the same
   */
  public record Takes(OptionalDouble least, OptionalDouble most) {}

  /**
   * The figures between which a claim stays as it was judged: as good as it stands, and no worse.
   * Above the label it counts what is there when the bag is filled; of what decays that may be all
   * that the tolerance takes, since it is put in to last. Empty of what is beyond its tolerance
   * today, or has none.
   */
  public static Optional<Takes> takes(LabelVerdict verdict, ComputedFeed feed, FeedTables tables) {
    Claim claim = verdict.claim();
    Outcome outcome = verdict.outcome();
    if (tables.label().isEmpty() || outcome == Outcome.BEYOND || outcome == Outcome.NO_TOLERANCE) {
      return Optional.empty();
    }
    double granted = claim.manner() == Manner.DECLARED ? tables.label().get().rounding() : 0;
    boolean lasts = LabelContent.of(feed, claim.nutrient()).decays();
    OptionalDouble below = allowed(claim, Side.BELOW, verdict.tolerance());
    OptionalDouble above = allowed(claim, Side.ABOVE, verdict.tolerance());
    double lower = outcome != Outcome.KEPT && verdict.side() == Side.BELOW ? 1 : granted;
    double upper = lasts || outcome != Outcome.KEPT && verdict.side() == Side.ABOVE ? 1 : granted;
    return Optional.of(
        new Takes(
            claim.manner() == Manner.AT_MOST || below.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(claim.base() - lower * below.getAsDouble()),
            claim.manner() == Manner.AT_LEAST || above.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(claim.base() + upper * above.getAsDouble())));
  }

  /** Nothing is taken where the rules tell no tolerance. */
  private static OptionalDouble allowed(Claim claim, Side side, Optional<Tolerance> tolerance) {
    return tolerance.isEmpty()
        ? OptionalDouble.of(0)
        : tolerance.get().allowed(side, claim.base(), claim.written().unit());
  }

  /**
   * Whether what is not told could make up for what is missing. What is part of nothing, such as a
   * vitamin, has no bound where it is not told; there the label counts on what is told at all.
   */
  private static boolean couldBeEnough(
      Nutrient nutrient, LabelContent content, double shortfall, OptionalDouble allowed) {
    boolean unbounded = nutrient.partOf().isEmpty() && !nutrient.ofTheWhole();
    return content.unknown()
        && (unbounded ? content.fresh() == 0 : shortfall - content.untold() <= allowed.orElse(0));
  }

  private static LabelVerdict withOutcome(LabelVerdict verdict, Outcome outcome) {
    return new LabelVerdict(
        verdict.claim(),
        outcome,
        verdict.side(),
        verdict.figure(),
        verdict.lasting(),
        verdict.atTheEnd(),
        verdict.allowed(),
        verdict.tolerance());
  }
}
