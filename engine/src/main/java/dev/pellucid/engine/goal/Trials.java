package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.rebalance.BatchTrials;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.workspace.LaidBatch;
import dev.pellucid.engine.workspace.Shared;
import java.util.List;
import java.util.Optional;

/** One planned batch of the folder, each way of looking at it worked out once. */
final class Trials implements BatchTrials {
  private final Shared shared;
  private final ResolvedRecipe recipe;
  private final BatchRecord record;
  private final RuleContext written;
  private final RuleContext laid;
  private final RuleContext now;

  /**
   * @param record with all lots that it will take
   */
  Trials(Shared shared, ComputedFeed feed, BatchRecord record) {
    this.shared = shared;
    this.recipe = feed.recipe();
    this.record = record;
    this.written = of(recipe, record.with(List.of(), Optional.empty()));
    this.laid = of(recipe, record);
    this.now =
        record.rebalanced().isPresent()
            ? of(shared.recordCheck().ordered(feed, record), record)
            : laid;
  }

  private RuleContext of(ResolvedRecipe other, BatchRecord batch) {
    return new LaidBatch(shared, other, batch).inspected();
  }

  @Override
  public String number() {
    return record.number();
  }

  @Override
  public RuleContext written() {
    return written;
  }

  @Override
  public RuleContext laid() {
    return laid;
  }

  @Override
  public RuleContext now() {
    return now;
  }

  @Override
  public RuleContext without(String line) {
    List<Entry> others =
        record.entries().stream().filter(entry -> !entry.line().equals(line)).toList();
    return of(recipe, record.with(others, Optional.empty()));
  }
}
