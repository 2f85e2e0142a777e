package dev.pellucid.engine.report;

import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Bought;
import dev.pellucid.engine.leastcost.Care;
import dev.pellucid.engine.leastcost.Reasons.LimitPrice;
import dev.pellucid.engine.leastcost.Reasons.SharePrice;
import dev.pellucid.engine.leastcost.Reasons.Sweep;
import dev.pellucid.engine.leastcost.Refusal;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Sentences of least cost: each is worded here once, for text, review and page. */
final class LeastCostWords {
  private static final double MOST = 0.99;

  private final LeastCostMoney money;

  LeastCostWords(String currency) {
    this.money = new LeastCostMoney(currency);
  }

  /** What there is to say, in one sentence. */
  String verdict(Advice advice) {
    String saved = advice.costs().map(money::saved).orElse("");
    return switch (advice.standing()) {
      case CHEAPER -> "can be made for " + saved;
      case KEEPS_AGAIN -> again(advice) + "; a recipe that keeps all costs " + saved;
      case NOT_WORTH -> "not worth a change: a cheaper one costs " + saved + also(advice);
      case CHEAPEST -> "is the cheapest already" + because(advice);
      case UNMET -> "cannot be met" + because(advice);
      case NOT_ASKED -> "not asked" + because(advice);
      case NOT_PROVEN -> "nothing is offered, for nothing could be proven" + because(advice);
    };
  }

  /** What makes a change needful: a line that does not come, else what is broken. */
  private static String again(Advice advice) {
    List<String> gone = new ArrayList<>();
    for (Advice.LineMove line : advice.lines()) {
      if (line.now() > 0 && line.high().orElse(1) == 0) {
        gone.add(line.name());
      }
    }
    return gone.isEmpty() ? "breaks a limit today" : "is without " + String.join(", ", gone);
  }

  private static String also(Advice advice) {
    return advice.why().isEmpty() ? "" : "; " + advice.why();
  }

  private static String because(Advice advice) {
    return advice.why().isEmpty() ? "" : ": " + advice.why();
  }

  /** What prices an answer rests on; told before all else. */
  static String prices(Care care) {
    List<String> told = new ArrayList<>();
    if (care.oldestPrice().isPresent()) {
      told.add("the oldest is " + Plural.of(care.oldestPrice().getAsInt(), "day") + " old");
    }
    if (care.inventedPrices() > 0) {
      told.add(
          Plural.of(
              care.inventedPrices(),
              "is invented, and the answer is no truer than it",
              "are invented, and the answer is no truer than they"));
    }
    if (care.laterPrices().isPresent()) {
      told.add("those from " + care.laterPrices().get() + " do not count yet");
    }
    return told.isEmpty() ? "" : "Prices: " + String.join("; ", told) + ".";
  }

  /** {@code one point more of crude-protein costs 8.40 EUR/t, from 33 to 35 %}. */
  String limit(LimitPrice one) {
    String step =
        one.bare()
            ? Figures.plain(one.step())
            : one.unit() == Unit.PERCENT
                ? points(one.step())
                : Figures.plain(one.step()) + " " + one.unit().symbol();
    return step
        + (isMost(one) ? " less of " : " more of ")
        + one.name()
        + " costs "
        + money.tonneWords(one.perTonne())
        + range(one.from(), one.to(), unit(one))
        + "; asked is "
        + bound(one)
        + (one.onAverageOnly() ? ", kept on average only" : "");
  }

  private static String points(double step) {
    return step == 1 ? "one point" : Figures.plain(step) + " points";
  }

  static boolean isMost(LimitPrice one) {
    return one.side() == Bound.Side.MAX;
  }

  private static String unit(LimitPrice one) {
    return one.bare() ? "" : " " + one.unit().symbol();
  }

  /** Nothing where only the price is known. */
  private static String range(double from, double to, String unit) {
    return from == to ? "" : ", from " + Figures.plain(from) + " to " + Figures.plain(to) + unit;
  }

  /** {@code maize stands at its least, 10 %: one point less would save 1.12 EUR/t}. */
  String share(SharePrice one) {
    return one.name()
        + (one.side() == Bound.Side.MIN ? " stands at its least, " : " stands at its most, ")
        + Figures.plain(one.bound())
        + " %: one point "
        + (one.side() == Bound.Side.MIN ? "less" : "more")
        + " would save "
        + money.tonneWords(one.perTonne())
        + range(one.from(), one.to(), " %");
  }

  /** {@code min 34 %}. */
  private static String bound(LimitPrice one) {
    return one.side().word() + " " + Figures.plain(one.bound()) + unit(one);
  }

  /** {@code 10 to 20 %}; empty for a line that is not free. */
  static String within(LineMove line) {
    return line.low().isPresent() && line.high().isPresent()
        ? Figures.plain(line.low().getAsDouble())
            + " to "
            + Figures.plain(line.high().getAsDouble())
            + " %"
        : "";
  }

  /** {@code lysine min binds}; what is a clause already is told as it is. */
  static String turn(Sweep.Turn one) {
    boolean clause = one.name().startsWith("no shares ");
    return one.name() + (one.begins() ? (clause ? "" : " binds") : " binds no longer");
  }

  /** Where a line stands, in words; empty where it may move to both sides by more than a digit. */
  static String standing(LineMove line, int decimals) {
    double digit = 1.5 * Math.pow(10, -decimals);
    String bound = "";
    if (line.low().isPresent() && line.then() <= line.low().getAsDouble() + digit) {
      bound = "at its least";
    } else if (line.high().isPresent() && line.then() >= line.high().getAsDouble() - digit) {
      bound = "at its most";
    }
    return line.comesIn() ? (bound.isEmpty() ? "comes in" : "comes in, " + bound) : bound;
  }

  /**
   * {@code feather-meal may not rise: it does not tell a cap ... (ingredients/feather-meal.yaml)}.
   */
  static String refusal(Refusal one) {
    return one.ingredient() + " may not rise: " + one.missing() + " (" + one.file() + ")";
  }

  /** How far to trust an answer, a sentence each. */
  static List<String> trust(Care care) {
    List<String> trust = new ArrayList<>();
    if (care.together().isPresent()) {
      trust.add(
          "all limits hold together in "
              + part(care.together().getAsDouble())
              + " of batches, as far as it is told how lots differ"
              + care.weakest().map(one -> "; the one that fails most often is " + one).orElse(""));
    }
    if (!care.onAverageOnly().isEmpty()) {
      trust.add(
          "kept on average only, with nothing to spare for lots that differ: "
              + String.join(", ", care.onAverageOnly())
              + "; \"-Dpellucid.margin=in 90 % of batches\" gives each a margin");
    }
    if (!care.standings().isEmpty()) {
      trust.add(standings(care.standings()));
    }
    return trust;
  }

  /** No figure claims more than drawing can tell. */
  private static String part(double together) {
    return together > MOST
        ? "more than 99 %"
        : Figures.fixed(Unit.PERCENT.fromBase(together), 0) + " %";
  }

  /** {@code of 312 figures 200 are from-memory, 112 published}; the most first. */
  private static String standings(Map<String, Integer> standings) {
    int all = 0;
    List<Map.Entry<String, Integer>> most = new ArrayList<>(standings.entrySet());
    most.sort(
        Map.Entry.<String, Integer>comparingByValue()
            .reversed()
            .thenComparing(Map.Entry.comparingByKey()));
    List<String> told = new ArrayList<>();
    for (Map.Entry<String, Integer> one : most) {
      all += one.getValue();
      if (one.getValue() > 0) {
        told.add(one.getValue() + " " + one.getKey());
      }
    }
    return "it rests on " + Plural.of(all, "figure") + ": " + String.join(", ", told);
  }

  /** {@code more of soybean-meal-48 (1,200 kg), less of fish-meal-65 (800 kg)}. */
  static List<String> purchases(List<Bought> bought, int most) {
    List<String> more = new ArrayList<>();
    List<String> less = new ArrayList<>();
    for (Bought one : bought) {
      if (one.isMoved()) {
        (one.moved() > 0 ? more : less).add(one.ingredient() + " " + kg(one.moved()));
      }
    }
    List<String> told = new ArrayList<>();
    if (!more.isEmpty()) {
      told.add("more of " + some(more, most));
    }
    if (!less.isEmpty()) {
      told.add("less of " + some(less, most));
    }
    return told;
  }

  private static String some(List<String> all, int most) {
    return all.size() <= most
        ? String.join(", ", all)
        : String.join(", ", all.subList(0, most)) + " and " + (all.size() - most) + " others";
  }

  /** {@code 12.3 kg}, without its sign. */
  static String kg(double kg) {
    double size = Math.abs(kg);
    return Figures.fixed(size, size >= 100 ? 0 : size >= 1 ? 1 : 2) + " kg";
  }
}
