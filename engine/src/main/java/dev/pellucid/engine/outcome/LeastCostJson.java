package dev.pellucid.engine.outcome;

import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Bought;
import dev.pellucid.engine.leastcost.Care;
import dev.pellucid.engine.leastcost.Contradiction;
import dev.pellucid.engine.leastcost.Reasons;
import dev.pellucid.engine.leastcost.Refusal;
import dev.pellucid.engine.leastcost.Week;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Least cost as plain JSON, for scripts: every figure, to twelve digits. A key never changes its
 * meaning: what is new comes under new keys. Money is per kg in the bags, or per kg of an
 * ingredient; shares are percent of the recipe. Every feed has every key; what there is not is null
 * or an empty list. The shape is written down in {@code least-cost.schema.json}.
 */
public final class LeastCostJson {
  private final PrintedPaths paths;

  private LeastCostJson(PrintedPaths paths) {
    this.paths = paths;
  }

  /**
   * One object with all feeds.
   *
   * @param bought for a tonne in the bags, by the code of the feed
   * @param paths how files are called
   */
  public static String of(
      List<Advice> all,
      Map<String, List<Bought>> bought,
      Week week,
      String currency,
      PrintedPaths paths) {
    LeastCostJson told = new LeastCostJson(paths);
    return Json.text(
        json -> {
          json.put("format", 1);
          json.put("currency", currency);
          list(
              json,
              "feeds",
              all,
              one -> told.feed(json, one, bought.getOrDefault(one.code(), List.of())));
          json.put("savesPerMonth", exact(week.savesPerMonth()));
          bought(json, "boughtPerMonth", week.perMonth());
        });
  }

  private void feed(Json json, Advice advice, List<Bought> bought) {
    json.put("code", advice.code());
    json.put("file", paths.of(advice.path()));
    json.put("standing", word(advice.standing().name()));
    json.put("why", advice.why());
    figure(json, "costNow", advice.costs().map(Costs::now));
    figure(json, "costThen", advice.costs().map(Costs::then));
    figure(json, "costNotRounded", advice.costs().map(Costs::least));
    json.put("rounding", advice.costs().flatMap(Costs::rounding).orElse(null));
    figure(json, "savesPerTonne", advice.costs().map(Costs::savesPerTonne));
    figure(
        json,
        "tonnesPerMonth",
        advice.costs().map(Costs::tonnesPerMonth).orElse(OptionalDouble.empty()));
    lines(json, "lines", advice.lines());
    edits(json, advice);
    reasons(json, advice.reasons());
    list(
        json,
        "smaller",
        advice.ladder(),
        rung -> {
          json.put("cost", exact(rung.cost()));
          lines(json, "lines", rung.lines());
        });
    care(json, advice.care());
    bought(json, "boughtPerTonne", bought);
    conflict(json, advice.conflict());
  }

  private static void lines(Json json, String key, List<LineMove> lines) {
    list(
        json,
        key,
        lines,
        line -> {
          json.put("line", line.name());
          json.put("now", exact(line.now()));
          json.put("then", exact(line.then()));
          figure(json, "low", line.low());
          figure(json, "high", line.high());
          json.put("bound", word(line.bound().name()));
          json.put("comesIn", line.comesIn());
        });
  }

  private static void edits(Json json, Advice advice) {
    list(
        json,
        "edits",
        advice.change().edits(),
        edit -> {
          json.put("line", edit.span().from().line());
          json.put("column", edit.span().from().column());
          json.put("was", edit.span().text());
          json.put("text", edit.replacement());
        });
  }

  private void reasons(Json json, Reasons reasons) {
    list(
        json,
        "limits",
        reasons.limits(),
        one -> {
          json.put("name", one.name());
          json.put("side", one.side().word());
          json.put("bound", exact(one.bound()));
          json.put("unit", one.bare() ? "" : one.unit().symbol());
          json.put("step", exact(one.step()));
          json.put("perTonne", exact(one.perTonne()));
          json.put("from", exact(one.from()));
          json.put("to", exact(one.to()));
          json.put("onAverageOnly", one.onAverageOnly());
        });
    list(
        json,
        "bounds",
        reasons.shares(),
        one -> {
          json.put("line", one.name());
          json.put("side", one.side().word());
          json.put("bound", exact(one.bound()));
          json.put("perTonne", exact(one.perTonne()));
          json.put("from", exact(one.from()));
          json.put("to", exact(one.to()));
        });
    list(
        json,
        "alsoMoved",
        reasons.alsoMoved(),
        one -> {
          json.put("figure", one.name());
          json.put("unit", one.unit().symbol());
          json.put("now", exact(one.now()));
          json.put("then", exact(one.then()));
        });
    list(
        json,
        "values",
        reasons.values(),
        one -> {
          json.put("ingredient", one.name());
          json.put("worth", exact(one.worth()));
          figure(json, "price", one.price());
          figure(json, "gap", one.gap());
          json.put("share", exact(one.share()));
          json.put("comesIn", exact(one.comesIn()));
          refusals(json, one.held());
        });
    list(
        json,
        "stays",
        reasons.stays(),
        one -> {
          json.put("ingredient", one.name());
          json.put("price", exact(one.price()));
          json.put("from", exact(one.from()));
          json.put("to", exact(one.to()));
        });
    sweep(json, reasons.sweep());
    next(json, reasons.next());
  }

  private static void sweep(Json json, Optional<Reasons.Sweep> sweep) {
    if (sweep.isEmpty()) {
      json.put("sweep", (String) null);
      return;
    }
    json.object("sweep");
    json.put("of", sweep.get().of());
    json.put("unit", sweep.get().unit());
    list(
        json,
        "points",
        sweep.get().points(),
        one -> {
          json.put("at", exact(one.at()));
          figure(json, "cost", one.cost());
          json.put("share", exact(one.share()));
        });
    list(
        json,
        "turns",
        sweep.get().turns(),
        one -> {
          json.put("at", exact(one.at()));
          json.put("name", one.name());
          json.put("begins", one.begins());
        });
    json.end();
  }

  private static void next(Json json, Optional<Reasons.Next> next) {
    if (next.isEmpty()) {
      json.put("next", (String) null);
      return;
    }
    json.object("next");
    json.put("cost", exact(next.get().cost()));
    json.put("comesIn", next.get().comesIn());
    json.put("goesOut", next.get().goesOut());
    lines(json, "lines", next.get().lines());
    json.end();
  }

  private void care(Json json, Care care) {
    json.object("care");
    figure(json, "together", care.together());
    json.put("weakest", care.weakest().orElse(null));
    json.put("onAverageOnly", care.onAverageOnly());
    json.object("standings");
    care.standings().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(one -> json.put(one.getKey(), one.getValue()));
    json.end();
    json.put(
        "oldestPriceDays",
        care.oldestPrice().isPresent() ? BigDecimal.valueOf(care.oldestPrice().getAsInt()) : null);
    json.put("inventedPrices", care.inventedPrices());
    json.put("laterPricesFrom", care.laterPrices().map(Object::toString).orElse(null));
    json.put("labelAnew", care.labelAnew());
    refusals(json, care.held());
    json.end();
  }

  private void refusals(Json json, List<Refusal> held) {
    list(
        json,
        "held",
        held,
        one -> {
          json.put("ingredient", one.ingredient());
          json.put("file", paths.of(one.file()));
          json.put("missing", one.missing());
        });
  }

  private void conflict(Json json, Optional<Contradiction> conflict) {
    if (conflict.isEmpty()) {
      json.put("conflict", (String) null);
      return;
    }
    json.object("conflict");
    list(
        json,
        "members",
        conflict.get().members(),
        one -> {
          json.put("words", one.words());
          place(json, one.place());
        });
    Optional<Contradiction.Reach> reach = conflict.get().reach();
    if (reach.isEmpty()) {
      json.put("reach", (String) null);
    } else {
      json.object("reach");
      json.put("name", reach.get().name());
      json.put("unit", reach.get().unit().symbol());
      json.put("least", exact(reach.get().least()));
      json.put("most", exact(reach.get().most()));
      json.put("asked", exact(reach.get().asked()));
      json.end();
    }
    list(
        json,
        "loosenings",
        conflict.get().loosenings(),
        one -> {
          json.put("words", one.words());
          place(json, one.place());
        });
    json.end();
  }

  private void place(Json json, Optional<Span> place) {
    json.put("file", place.map(span -> paths.of(span.file())).orElse(null));
    json.put("line", place.map(span -> BigDecimal.valueOf(span.from().line())).orElse(null));
  }

  private static void bought(Json json, String key, List<Bought> bought) {
    list(
        json,
        key,
        bought.stream().filter(Bought::isMoved).toList(),
        one -> {
          json.put("ingredient", one.ingredient());
          json.put("kgNow", exact(one.now()));
          json.put("kgThen", exact(one.then()));
        });
  }

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

  private static void figure(Json json, String key, Optional<Double> figure) {
    json.put(key, figure.isPresent() ? exact(figure.get()) : null);
  }

  private static @Nullable BigDecimal exact(double value) {
    if (!Double.isFinite(value)) {
      return null;
    }
    BigDecimal exact = new BigDecimal(value, new MathContext(12)).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0) : exact;
  }
}
