package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.resolve.Limit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a feed stands with one limit.
 *
 * @param verdict the figure that is judged, and where
 * @param readings of the feed
 * @param withoutOverage the judged figure with all handling overage lost; only where the overage
 *     alone breaks the limit
 * @param withoutWaiver how it would stand with the bound that a waiver stands in for; only where
 *     there is a waiver
 */
public record LimitStatus(
    Verdict verdict,
    Readings readings,
    State state,
    OptionalDouble withoutOverage,
    Optional<LimitStatus> withoutWaiver) {
  public LimitStatus {
    if (!state.hangsOnFeed() && verdict.keeps() != state.isKept()
        || withoutOverage.isPresent() != (state == State.BROKEN_BY_OVERAGE)
        || withoutWaiver.isPresent() != verdict.limit().waiver().isPresent()) {
      throw new IllegalArgumentException(state + " of " + verdict);
    }
  }

  /** What came of judging a limit. */
  public enum State {
    /** By itself, whatever a waiver allows. */
    KEPT,
    /** The bound of its waiver is kept, and the one that was written is not. */
    KEPT_BY_WAIVER,
    /** As far as it is told, and nothing bounds what is not told and may break it. */
    KEPT_AS_TOLD,
    /** Both: by its waiver alone, and that only as far as it is told. */
    KEPT_AS_TOLD_BY_WAIVER,
    /** By what is told. */
    BROKEN,
    /** A maximum that is kept as soon as what is weighed on top for handling is lost. */
    BROKEN_BY_OVERAGE,
    /** Not to be judged: what bounds a content that is not told passes the limit. */
    CONTENT_NOT_TOLD,
    /** Not to be judged: a minimum that hangs on what a step leaves, which is not told. */
    LOSS_NOT_TOLD,
    /** Not to be judged, for both reasons. */
    CONTENT_AND_LOSS_NOT_TOLD,
    /** Not to be judged: what it is read off hangs on a species or a process, and none is told. */
    FEED_NOT_TOLD;

    /** Whether the bound in force is kept, as far as it is told. */
    public boolean isKept() {
      return switch (this) {
        case KEPT, KEPT_BY_WAIVER, KEPT_AS_TOLD, KEPT_AS_TOLD_BY_WAIVER -> true;
        case BROKEN,
            BROKEN_BY_OVERAGE,
            CONTENT_NOT_TOLD,
            LOSS_NOT_TOLD,
            CONTENT_AND_LOSS_NOT_TOLD,
            FEED_NOT_TOLD ->
            false;
      };
    }

    /** Whether it is kept by the bound of its waiver alone. */
    public boolean isByWaiver() {
      return this == KEPT_BY_WAIVER || this == KEPT_AS_TOLD_BY_WAIVER;
    }

    /** Whether what is told breaks it. */
    public boolean isBroken() {
      return this == BROKEN || this == BROKEN_BY_OVERAGE;
    }

    /** Whether it is kept or broken, and not open. */
    public boolean isJudged() {
      return isKept() || isBroken();
    }

    /** Whether a species or a process that is not told keeps it from being judged. */
    public boolean hangsOnFeed() {
      return this == FEED_NOT_TOLD;
    }

    /** Whether it is kept only as far as it is told. */
    public boolean isAsTold() {
      return this == KEPT_AS_TOLD || this == KEPT_AS_TOLD_BY_WAIVER;
    }

    /** Whether a content that is not told keeps it from being judged. */
    public boolean hangsOnContent() {
      return this == CONTENT_NOT_TOLD || this == CONTENT_AND_LOSS_NOT_TOLD;
    }

    /** Whether a loss that is not told keeps it from being judged. */
    public boolean hangsOnLoss() {
      return this == LOSS_NOT_TOLD || this == CONTENT_AND_LOSS_NOT_TOLD;
    }
  }

  public Limit limit() {
    return verdict.limit();
  }

  /** The figure on target and fresh, on average. */
  public Reading expected() {
    return readings.at(limit().subject(), limit().basis(), Scenario.EXPECTED);
  }

  /** Whether a waiver lets pass what the written bound would not. */
  public boolean isLetPass() {
    return withoutWaiver.isPresent() && state.isKept() && withoutWaiver.get().state().isBroken();
  }

  /** The same if nothing stood in place of its bound. */
  public LimitStatus asWritten() {
    return withoutWaiver.orElse(this);
  }
}
