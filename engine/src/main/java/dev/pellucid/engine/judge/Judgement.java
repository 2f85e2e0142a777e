package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.resolve.Limit;
import java.util.List;
import java.util.Optional;

/**
 * How a feed stands with all that it is held against.
 *
 * @param limits one status for each limit on which there is anything told, in their order
 * @param claims one verdict for each claim of its label; none where the folder has no rules for
 *     labels
 * @param aboveLaw claims that say more than the law allows, whatever the feed holds
 */
public record Judgement(
    List<LimitStatus> limits, List<LabelVerdict> claims, List<ClaimAboveLaw> aboveLaw) {
  /** Of what has no figures. */
  public static final Judgement NONE = new Judgement(List.of(), List.of(), List.of());

  public Judgement {
    limits = List.copyOf(limits);
    claims = List.copyOf(claims);
    aboveLaw = List.copyOf(aboveLaw);
  }

  /** Of a feed, its limits and its label. */
  public static Judgement of(ComputedFeed feed, FeedTables tables) {
    return new Judgement(
        Judge.limits(feed), LabelJudge.verdicts(feed, tables), ClaimAboveLaw.in(feed));
  }

  /** Of a feed that is held against its limits alone. */
  public static Judgement ofLimits(ComputedFeed feed) {
    return new Judgement(Judge.limits(feed), List.of(), List.of());
  }

  /** How one limit stands; empty where there is nothing told of it. */
  public Optional<LimitStatus> status(Limit limit) {
    return limits.stream().filter(one -> one.limit().equals(limit)).findFirst();
  }

  /** The same as if no limit were waived. */
  public Judgement withoutWaivers() {
    return new Judgement(limits.stream().map(LimitStatus::asWritten).toList(), claims, aboveLaw);
  }
}
