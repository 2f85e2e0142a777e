package dev.pellucid.engine.outcome;

import dev.pellucid.engine.account.Account.Tally;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.text.PrintedPaths;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A comparison as plain JSON, for scripts: every figure, to twelve digits. A key never changes its
 * meaning: what is new comes under new keys. Money is per kg in the bags; a nutrient is in the unit
 * that stands beside it, as fed; room is the part of the bound that is left, below zero where it is
 * broken. Every change has every key; what there is not is null or an empty list.
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
    json.list("changes");
    for (RecipeChange change : comparison.changes()) {
      json.object();
      change(json, change);
      json.end();
    }
    json.end();
  }

  private void change(Json json, RecipeChange change) {
    json.put("code", change.code());
    json.put("formerly", change.formerly().orElse(null));
    json.put("how", word(change.how().name()));
    json.put("obstacle", change.obstacle());
    json.put("text", change.text());
    list(json, "because", change.because(), cause -> cause(json, cause));
    figure(json, "costBefore", change.costBefore());
    figure(json, "costAfter", change.costAfter());
    limits(json, change);
    effect(json, change.effectOrNone(), change.isNew());
  }

  private void cause(Json json, RecipeChange.Cause cause) {
    json.put("file", paths.of(cause.path()));
    figure(json, "cost", cause.costMoved());
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
    return number.map(it -> BigDecimal.valueOf(it.longValue())).orElse(null);
  }

  /** A list of objects. */
  private static <T> void list(Json json, String key, List<T> all, Consumer<T> keysOf) {
    json.list(key);
    for (T one : all) {
      json.object();
      keysOf.accept(one);
      json.end();
    }
    json.end();
  }

  private static String word(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static void figure(Json json, String key, OptionalDouble figure) {
    json.put(key, figure.isPresent() ? exact(figure.getAsDouble()) : null);
  }

  /** Without what binary rounding leaves behind the twelfth digit; null over nothing. */
  private static @Nullable BigDecimal exact(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value, new MathContext(12)).stripTrailingZeros()
        : null;
  }

  private static void effect(Json json, Effect effect, boolean isNew) {
    limits(json, "broken", effect.broken(), isNew);
    limits(json, "met", effect.met(), isNew);
    limits(json, "tight", effect.tight(), isNew);
    limits(json, "notJudged", effect.untold(), isNew);
    limits(json, "judged", effect.judged(), isNew);
    json.put("prices", effect.prices());
    json.put("bounds", effect.bounds());
    json.put("waivers", effect.waivers());
    list(
        json,
        "label",
        effect.label(),
        claim -> {
          json.put("sentence", claim.sentence());
          json.put("outcome", word(claim.outcome().name()));
        });
    json.put("reprint", effect.reprint());
    list(
        json,
        "shares",
        effect.shares(),
        one -> {
          json.put("line", one.line());
          json.put("before", one.before());
          json.put("after", one.after());
        });
    list(json, "nutrients", effect.moved(), one -> nutrient(json, one));
    list(
        json,
        "costs",
        effect.costs(),
        one -> {
          json.put("line", one.line());
          json.put("moved", exact(one.moved()));
          json.put("priceBefore", exact(one.priceBefore()));
          json.put("priceAfter", exact(one.priceAfter()));
        });
    list(
        json,
        "weights",
        effect.weights(),
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
    one.nearest()
        .ifPresent(
            limit -> {
              json.put("nearest", limit.demand().askedNow());
              json.put("room", exact(limit.room()));
            });
  }

  /** A feed that is new has no figure before. */
  private static void limits(Json json, String key, List<LimitMoved> limits, boolean isNew) {
    list(
        json,
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
