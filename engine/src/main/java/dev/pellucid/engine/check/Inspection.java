package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Balances;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All that a rule may look at.
 *
 * @param computer that of the run, for asking what a change would do
 * @param feed absent when something stands in the way of its figures
 * @param verdicts one for each limit on which there is anything told, in their order; empty without
 *     feed
 * @param floor the batch as the plant weighs it; absent without feed, batch size or scales
 * @param day the day of the run
 */
public record Inspection(
    ResolvedRecipe recipe,
    Larder larder,
    FeedComputer computer,
    Balances balances,
    Optional<ComputedFeed> feed,
    List<Verdict> verdicts,
    Optional<OnTheFloor> floor,
    LocalDate day) {
  public Inspection {
    verdicts = List.copyOf(verdicts);
  }
}
