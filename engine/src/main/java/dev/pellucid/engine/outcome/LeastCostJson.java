package dev.pellucid.engine.outcome;

import static dev.pellucid.engine.outcome.Json.exact;
import static dev.pellucid.engine.outcome.Json.word;

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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

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
          json.list(
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
    json.figure("costNow", advice.costs().map(Costs::now));
    json.figure("costThen", advice.costs().map(Costs::then));
    json.figure("costNotRounded", advice.costs().map(Costs::least));
    json.put("rounding", advice.costs().flatMap(Costs::rounding).orElse(null));
    json.figure("savesPerTonne", advice.costs().map(Costs::savesPerTonne));
    json.figure(
        "tonnesPerMonth", advice.costs().map(Costs::tonnesPerMonth).orElse(OptionalDouble.empty()));
    lines(json, "lines", advice.lines());
    edits(json, advice);
    reasons(json, advice.reasons());
    json.list(
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
    json.list(
        key,
        lines,
        line -> {
          json.put("line", line.name());
          json.put("now", exact(line.now()));
          json.put("then", exact(line.then()));
          json.figure("low", line.low());
          json.figure("high", line.high());
          json.put("bound", word(line.bound().name()));
          json.put("comesIn", line.comesIn());
        });
  }

  private static void edits(Json json, Advice advice) {
    json.list(
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
    json.list(
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
    json.list(
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
    json.list(
        "alsoMoved",
        reasons.alsoMoved(),
        one -> {
          json.put("figure", one.name());
          json.put("unit", one.unit().symbol());
          json.put("now", exact(one.now()));
          json.put("then", exact(one.then()));
        });
    json.list(
        "values",
        reasons.values(),
        one -> {
          json.put("ingredient", one.name());
          json.put("worth", exact(one.worth()));
          json.figure("price", one.price());
          json.figure("gap", one.gap());
          json.put("share", exact(one.share()));
          json.put("comesIn", exact(one.comesIn()));
          refusals(json, one.held());
        });
    json.list(
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
    json.list(
        "points",
        sweep.get().points(),
        one -> {
          json.put("at", exact(one.at()));
          json.figure("cost", one.cost());
          json.put("share", exact(one.share()));
        });
    json.list(
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
    json.figure("together", care.together());
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
    json.list(
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
    json.list(
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
    json.list(
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
    json.list(
        key,
        bought.stream().filter(Bought::isMoved).toList(),
        one -> {
          json.put("ingredient", one.ingredient());
          json.put("kgNow", exact(one.now()));
          json.put("kgThen", exact(one.then()));
        });
  }
}
