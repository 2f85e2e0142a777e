package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Fixing;
import dev.pellucid.engine.check.Floor;
import dev.pellucid.engine.check.Remark;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedRecipe;
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
    return guarded(text, () -> ruled(shared, judged(shared, text, false)));
  }

  /** The same, and changes of many lines are looked for where none of one line or two does. */
  static Checked solve(Shared shared, SourceBytes.Decoded text) {
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

  private static Checked judged(Shared shared, SourceBytes.Decoded text, boolean solves) {
    String path = text.source().path();
    Parsed parsed = FeedParser.parse(text);
    Resolution<ResolvedRecipe> resolved = shared.resolver().recipe((RecipeFile) parsed.file());
    List<Finding> findings = new ArrayList<>(parsed.findings());
    findings.addAll(resolved.findings());
    Optional<RuleContext> recipe =
        inspected(
            shared,
            resolved.thing(),
            new Fixing(new Retry(shared, text, Retry.errors(findings)), solves));
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
    List<Remark> remarks =
        judged.recipe().isPresent() ? Rules.remarks(judged.recipe().get()) : List.of();
    for (Remark remark : remarks) {
      findings.add(remark.finding());
    }
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

  private static Optional<RuleContext> inspected(
      Shared shared, Optional<ResolvedRecipe> recipe, Fixing fixing) {
    return recipe.isPresent()
        ? Optional.of(inspection(shared, recipe.get(), fixing))
        : Optional.empty();
  }

  /** A recipe computed and judged. */
  static RuleContext inspection(Shared shared, ResolvedRecipe recipe, Fixing fixing) {
    Computation computed = shared.computer().compute(recipe);
    Optional<ComputedFeed> feed = computed.feed();
    return new RuleContext(
        recipe,
        shared.tables(),
        computed.balances(),
        feed,
        feed.isPresent() ? Judgement.of(feed.get(), shared.tables()) : Judgement.NONE,
        new Floor(feed, shared.planner(recipe.plant())),
        shared.day(),
        fixing);
  }
}
