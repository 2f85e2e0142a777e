package dev.pellucid.engine.outcome;

import static dev.pellucid.engine.outcome.Json.exact;
import static dev.pellucid.engine.outcome.Json.word;

import dev.pellucid.engine.account.Account.Tally;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.FileChange;
import dev.pellucid.engine.compare.FindingsMoved;
import dev.pellucid.engine.compare.Found;
import dev.pellucid.engine.compare.PremixChange;
import dev.pellucid.engine.compare.PremixState.Supply;
import dev.pellucid.engine.compare.Printed;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.engine.compare.RecipeChange.WeightMoved;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;

/**
 * A comparison as plain JSON, for scripts: every figure, to twelve digits. A key never changes its
 * meaning: what is new comes under new keys. Money is per kg in the bags; a nutrient is in the unit
 * that stands beside it, as fed; room is the part of the bound that is left, below zero where it is
 * broken. Every change has every key; what there is not is null or an empty list. The shape is
 * written down in {@code compare.schema.json}.
 */
public final class CompareJson {
  private final PrintedPaths paths;

  private CompareJson(PrintedPaths paths) {
    this.paths = paths;
  }

  /**
   * One object with all changes, the gravest first.
   *
   * @param paths how files are called
   */
  public static String of(Comparison comparison, String currency, PrintedPaths paths) {
    CompareJson all = new CompareJson(paths);
    return Json.text(json -> all.write(json, comparison, currency));
  }

  private void write(Json json, Comparison comparison, String currency) {
    json.put("format", 2);
    json.put("currency", currency);
    json.put("notices", comparison.notices());
    json.object("findings");
    counts(json, "new", comparison::fresh);
    counts(json, "gone", comparison::gone);
    counts(json, "notLookedFor", comparison::unsought);
    json.put("errors", comparison.errors());
    json.end();
    json.list("changes");
    for (RecipeChange change : comparison.changes()) {
      json.object();
      change(json, change);
      json.end();
    }
    json.end();
    json.list("premixes", comparison.premixes(), one -> premix(json, one));
    json.list("files", comparison.files(), one -> file(json, one));
  }

  private static void counts(Json json, String key, ToIntFunction<Severity> counts) {
    json.object(key);
    for (Severity severity : Severity.values()) {
      json.put(severity.word() + "s", counts.applyAsInt(severity));
    }
    json.end();
  }

  private void file(Json json, FileChange change) {
    json.put("file", paths.of(change.path()));
    findings(json, change.findings());
  }

  private void findings(Json json, FindingsMoved findings) {
    json.object("findings");
    json.list("new", findings.fresh(), one -> found(json, one));
    json.list("gone", findings.gone(), one -> found(json, one));
    json.end();
  }

  private void found(Json json, Found one) {
    json.put("severity", one.severity().word());
    json.put("code", one.code());
    json.put("file", paths.of(one.path()));
    json.put("line", one.line());
    json.put("message", one.headline());
    json.put("subject", one.subject());
    json.put("side", one.side());
  }

  private static void printed(Json json, Printed.Moved printed) {
    json.put("printed", printed.facts());
    json.put("papers", printed.parts());
  }

  private void premix(Json json, PremixChange change) {
    json.put("code", change.code());
    json.put("how", word(change.how().name()));
    json.put("text", change.text());
    json.put("because", change.because().stream().map(paths::of).toList());
    json.figure("costBefore", change.costBefore());
    json.figure("costAfter", change.costAfter());
    json.list(
        "supplies",
        change.supplies(),
        one -> {
          json.put("nutrient", one.nutrient());
          supply(json, "before", one.before());
          supply(json, "after", one.after());
        });
    json.put("kgBefore", number(change.batches().map(WeightMoved::before)));
    json.put("kgAfter", number(change.batches().map(WeightMoved::after)));
    weights(json, change.weights());
    printed(json, change.printed());
    findings(json, change.findings());
  }

  /** Null where it was not, or is not, there. */
  private static void supply(Json json, String key, Optional<Supply> supply) {
    if (supply.isEmpty()) {
      json.put(key, (String) null);
      return;
    }
    json.object(key);
    json.put("unit", supply.get().unit());
    json.put("asked", exact(supply.get().asked()));
    json.put("holds", exact(supply.get().fresh()));
    json.end();
  }

  private void change(Json json, RecipeChange change) {
    json.put("code", change.code());
    json.put("formerly", change.formerly().orElse(null));
    json.put("how", word(change.how().name()));
    json.put("obstacle", change.obstacle());
    json.put("text", change.text());
    json.list("because", change.because(), cause -> cause(json, cause));
    json.figure("costBefore", change.costBefore());
    json.figure("costAfter", change.costAfter());
    limits(json, change);
    effect(json, change.effectOrNone(), change.isNew());
    printed(json, change.printed());
    findings(json, change.findings());
  }

  private void cause(Json json, RecipeChange.Cause cause) {
    json.put("file", paths.of(cause.path()));
    json.figure("cost", cause.costMoved());
  }

  /** Null throughout where there is no feed to judge. */
  private static void limits(Json json, RecipeChange change) {
    Optional<Tally> now = change.limits();
    json.object("limits");
    json.put("kept", number(now.map(Tally::kept)));
    json.put("broken", number(now.map(Tally::broken)));
    json.put("notJudged", number(now.map(Tally::untold)));
    json.end();
  }

  private static <N extends Number> @Nullable BigDecimal number(Optional<N> number) {
    return number.map(it -> exact(it.doubleValue())).orElse(null);
  }

  private static void effect(Json json, Effect effect, boolean isNew) {
    limits(json, "broken", effect.broken(), isNew);
    limits(json, "met", effect.met(), isNew);
    limits(json, "byWaiver", effect.byWaiver(), isNew);
    limits(json, "tight", effect.tight(), isNew);
    limits(json, "notJudged", effect.untold(), isNew);
    limits(json, "judged", effect.judged(), isNew);
    json.put("prices", effect.prices());
    json.put("bounds", effect.bounds());
    json.put("waivers", effect.waivers());
    json.list(
        "label",
        effect.label(),
        claim -> {
          json.put("sentence", claim.sentence());
          json.put("outcome", word(claim.outcome().name()));
        });
    json.put("reprint", effect.reprint());
    json.list(
        "shares",
        effect.shares(),
        one -> {
          json.put("line", one.line());
          json.put("before", one.before());
          json.put("after", one.after());
        });
    json.list("nutrients", effect.moved(), one -> nutrient(json, one));
    json.list(
        "costs",
        effect.costs(),
        one -> {
          json.put("line", one.line());
          json.put("moved", exact(one.moved()));
          json.put("priceBefore", exact(one.priceBefore()));
          json.put("priceAfter", exact(one.priceAfter()));
        });
    weights(json, effect.weights());
  }

  private static void weights(Json json, List<WeightMoved> weights) {
    json.list(
        "weights",
        weights,
        one -> {
          json.put("line", one.line());
          json.put("kgBefore", exact(one.before()));
          json.put("kgAfter", exact(one.after()));
        });
  }

  private static void nutrient(Json json, Moved one) {
    json.put("nutrient", one.nutrient());
    json.put("before", exact(one.unit().fromBase(one.before())));
    json.put("after", exact(one.unit().fromBase(one.after())));
    json.put("moved", exact(one.unit().fromBase(one.after() - one.before())));
    json.put("unit", one.unit().symbol());
    json.put("nearest", one.nearest().map(limit -> limit.demand().askedNow()).orElse(null));
    json.put("room", one.nearest().map(limit -> exact(limit.room())).orElse(null));
  }

  /** A feed that is new has no figure before. */
  private static void limits(Json json, String key, List<LimitMoved> limits, boolean isNew) {
    json.list(
        key,
        limits,
        one -> {
          json.put("profile", one.after().demand().profile());
          json.put("subject", one.after().subject());
          json.put("bound", one.after().demand().askedNow());
          json.put("unit", one.after().unit().symbol());
          json.put("unitBefore", one.before().unit().symbol());
          json.put("before", isNew ? null : exact(one.before().shown()));
          json.put("after", exact(one.after().shown()));
          json.put("room", exact(one.after().room()));
        });
  }
}
