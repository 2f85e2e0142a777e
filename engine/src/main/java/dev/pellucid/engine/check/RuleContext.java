package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Balances;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All that a rule may look at.
 *
 * @param feed absent when something stands in the way of its figures
 * @param judgement how the feed stands; of nothing without feed
 * @param floor the batch as the plant weighs it
 * @param day the day of the run
 * @param fixing what searches for a fix share
 */
public record RuleContext(
    ResolvedRecipe recipe,
    FeedTables tables,
    Balances balances,
    Optional<ComputedFeed> feed,
    Judgement judgement,
    Floor floor,
    LocalDate day,
    Fixing fixing) {

  /** How the feed stands with each limit on which there is anything told, in their order. */
  public List<LimitStatus> limits() {
    return judgement.limits();
  }

  /** The same recipe as if none of its limits were waived. */
  RuleContext withoutWaivers() {
    return new RuleContext(
        recipe.withoutWaivers(),
        tables,
        balances,
        feed,
        judgement.withoutWaivers(),
        floor,
        day,
        Fixing.none());
  }
}
