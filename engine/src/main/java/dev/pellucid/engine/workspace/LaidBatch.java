package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Again;
import dev.pellucid.engine.check.Fixing;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.text.TextEdit;
import java.util.List;
import java.util.Optional;

/**
 * One planned batch of a recipe with its lots in place of its ingredients, in its own size: what
 * rules look at as at any recipe, and what can be tried with other shares. Nothing of a trial is
 * kept.
 *
 * @param recipe as it is written
 */
public record LaidBatch(Shared shared, ResolvedRecipe recipe, BatchRecord record) implements Again {

  /** It, computed and judged. */
  public RuleContext inspected() {
    return inspected(recipe, new Fixing(this));
  }

  private RuleContext inspected(ResolvedRecipe other, Fixing fixing) {
    ResolvedRecipe laid = shared.recordCheck().laid(other.inBatchOf(record.kg()), record);
    return Checks.inspection(shared, laid, fixing);
  }

  @Override
  public Optional<RuleContext> with(List<TextEdit> edits) {
    return shared.reshared().with(recipe, edits).map(changed -> inspected(changed, Fixing.none()));
  }

  /** A batch is re-balanced by its shares alone. */
  @Override
  public Optional<RuleContext> withOverage(String name, String extra, String purpose) {
    return Optional.empty();
  }
}
