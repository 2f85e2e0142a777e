package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Remark;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.check.WeighedBatch;
import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.WeighingPlanner;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Parsed;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The whole route of one recipe: text to tree, names to things, figures, judgement, and what the
 * rules say. It reads no file, keeps nothing, and the same comes of the same.
 */
public final class Checks {
  private Checks() {}

  /** A recipe with its figures and its standing, before any rule has looked at it. */
  public static Checked judge(Shared shared, SourceBytes.Decoded text) {
    return guarded(text, () -> judged(shared, text, false));
  }

  /** The same with what every rule says of it and of its batch records. */
  public static Checked check(Shared shared, SourceBytes.Decoded text) {
    return guarded(text, () -> ruled(shared, judged(shared, text, true)));
  }

  /** A fault of this program costs the one file at which it shows, and is told. */
  private static Checked guarded(SourceBytes.Decoded text, Supplier<Checked> route) {
    try {
      return route.get();
    } catch (RuntimeException | StackOverflowError fault) {
      return Checked.broken(text.source(), fault);
    }
  }

  /**
   * @param weighed whether the batch is weighed out too: rules alone ask for that
   */
  private static Checked judged(Shared shared, SourceBytes.Decoded text, boolean weighed) {
    String path = text.source().path();
    Parsed parsed = FeedParser.parse(text);
    Resolution<ResolvedRecipe> resolved = shared.resolver().recipe((RecipeFile) parsed.file());
    List<Finding> findings = new ArrayList<>(parsed.findings());
    findings.addAll(resolved.findings());
    Optional<RuleContext> recipe = resolved.thing().map(one -> inspection(shared, one, weighed));
    List<String> mendFirst =
        recipe.isPresent() ? List.of() : shared.mendFirst(path, resolved.reads());
    return new Checked(
        path,
        recipe,
        findings,
        List.of(),
        BatchRecordCheck.Looked.NOTHING,
        resolved.reads(),
        mendFirst,
        Optional.empty());
  }

  private static Checked ruled(Shared shared, Checked judged) {
    List<Finding> findings = new ArrayList<>(judged.findings());
    List<Remark> remarks = judged.recipe().map(Rules::remarks).orElse(List.of());
    remarks.forEach(remark -> findings.add(remark.finding()));
    return new Checked(
        judged.path(),
        judged.recipe(),
        findings,
        remarks,
        judged.feed().map(shared.recordCheck()::look).orElse(BatchRecordCheck.Looked.NOTHING),
        shared.resolver().withRecords(judged.reads(), judged.code()),
        judged.mendFirst(),
        Optional.empty());
  }

  private static RuleContext inspection(Shared shared, ResolvedRecipe recipe, boolean weighed) {
    Computation computed = shared.computer().compute(recipe);
    return new RuleContext(
        recipe,
        shared.tables(),
        computed.balances(),
        computed.feed(),
        computed.feed().map(feed -> Judgement.of(feed, shared.tables())).orElse(Judgement.NONE),
        weighed ? computed.feed().flatMap(feed -> onTheFloor(shared, feed)) : Optional.empty(),
        shared.day());
  }

  /** The batch on the scales of the plant, and its feed computed again with what they show. */
  private static Optional<WeighedBatch> onTheFloor(Shared shared, ComputedFeed feed) {
    ResolvedRecipe recipe = feed.recipe();
    FeedTables tables = shared.tables();
    Optional<WeighingPlan> plan =
        recipe.batch().flatMap(batch -> WeighingPlanner.plan(feed, feed.weighed(batch), tables));
    if (plan.isEmpty() || tables.plant().isEmpty()) {
      return Optional.empty();
    }
    return feed.weighed(plan.get().asRounded(recipe))
        .feed()
        .map(again -> new WeighedBatch(tables.plant().get(), plan.get(), Judge.verdicts(again)));
  }
}
