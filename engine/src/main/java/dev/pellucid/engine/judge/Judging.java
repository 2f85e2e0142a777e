package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.judge.LimitStatus.State;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One feed while it is held against its limits. Where a limit is not kept, it asks what alone may
 * be to blame: the handling overage, a content or a loss that is not told. The feed without the
 * first or the last is read at most once, whatever hangs on it.
 */
final class Judging {
  private final ComputedFeed feed;
  private final Readings readings;

  /** Whether the recipe leaves something open on which contents may hang. */
  private final boolean mayHang;

  private final Once<Optional<Readings>> overageLost;
  private final Once<Optional<Readings>> gapsKeptAll;

  Judging(ComputedFeed feed) {
    this.feed = feed;
    this.readings = new Readings(feed);
    this.mayHang = feed.recipe().species().isEmpty() || !feed.recipe().process().isTold();
    this.overageLost = new Once<>(this::withOverageLost);
    this.gapsKeptAll = new Once<>(this::asIfGapsKeptAll);
  }

  List<LimitStatus> limits() {
    List<Limit> limits = feed.recipe().limits();
    List<LimitStatus> told = new ArrayList<>(limits.size());
    for (Limit limit : limits) {
      if (readings.isTold(limit.subject())) {
        told.add(status(limit));
      }
    }
    return told;
  }

  /** How the feed stands with one limit, of which something is told. */
  LimitStatus status(Limit limit) {
    Verdict verdict = Judge.verdict(readings, limit);
    return limit.waiver().isEmpty()
        ? status(verdict, Optional.empty())
        : status(verdict, Optional.of(status(verdict.withoutWaiver(), Optional.empty())));
  }

  private LimitStatus status(Verdict verdict, Optional<LimitStatus> withoutWaiver) {
    if (mayHang && readings.hangsOnFeed(verdict.limit().subject())) {
      return new LimitStatus(
          verdict, readings, State.FEED_NOT_TOLD, OptionalDouble.empty(), withoutWaiver);
    }
    if (verdict.keeps()) {
      boolean alone = withoutWaiver.isPresent() && !withoutWaiver.get().verdict().keeps();
      return new LimitStatus(
          verdict, readings, kept(verdict, alone), OptionalDouble.empty(), withoutWaiver);
    }
    OptionalDouble lost = keptWithoutOverage(verdict);
    State state = lost.isPresent() ? State.BROKEN_BY_OVERAGE : notKept(verdict);
    return new LimitStatus(verdict, readings, state, lost, withoutWaiver);
  }

  private static State kept(Verdict verdict, boolean byWaiverAlone) {
    if (verdict.isOpen()) {
      return byWaiverAlone ? State.KEPT_AS_TOLD_BY_WAIVER : State.KEPT_AS_TOLD;
    }
    return byWaiverAlone ? State.KEPT_BY_WAIVER : State.KEPT;
  }

  private State notKept(Verdict verdict) {
    boolean loss = isKeptWithoutGaps(verdict);
    if (verdict.untoldBreaks()) {
      return loss ? State.CONTENT_AND_LOSS_NOT_TOLD : State.CONTENT_NOT_TOLD;
    }
    return loss ? State.LOSS_NOT_TOLD : State.BROKEN;
  }

  /** The figure with handling overage lost, of a maximum that is kept by it. */
  private OptionalDouble keptWithoutOverage(Verdict verdict) {
    if (verdict.limit().side() != Bound.Side.MAX) {
      return OptionalDouble.empty();
    }
    return overageLost
        .get()
        .map(lost -> Judge.verdict(lost, verdict.limit()))
        .filter(Verdict::keeps)
        .map(kept -> OptionalDouble.of(kept.judged()))
        .orElse(OptionalDouble.empty());
  }

  private boolean isKeptWithoutGaps(Verdict verdict) {
    return verdict.limit().side() == Bound.Side.MIN
        && gapsKeptAll
            .get()
            .filter(without -> Judge.verdict(without, verdict.limit()).keeps())
            .isPresent();
  }

  private Optional<Readings> withOverageLost() {
    return feed.recipe().lines().stream().anyMatch(Line::hasOnTop)
        ? feed.withOverageLost().map(Readings::new)
        : Optional.empty();
  }

  private Optional<Readings> asIfGapsKeptAll() {
    return feed.retentionGaps().isEmpty()
        ? Optional.empty()
        : Optional.of(new Readings(feed.asIfGapsKeptAll()));
  }
}
