package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.Composition;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.data.Source;
import dev.pellucid.engine.explain.Explanation.Part;
import dev.pellucid.engine.explain.Explanation.Sum;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Remainders;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.measure.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Takes a figure of a feed apart: a sum of nutrients, a ratio, an inclusion or the cost. */
public final class Explainer {
  private final ComputedFeed feed;
  private final String currency;

  private Explainer(ComputedFeed feed, String currency) {
    this.feed = feed;
    this.currency = currency;
  }

  /** A figure of a feed; prices in a currency. */
  public static Explanation of(ComputedFeed feed, Subject subject, String currency) {
    return new Explainer(feed, currency).explained(subject);
  }

  private Explanation explained(Subject subject) {
    return subject.byKind(
        sum -> explained(subject, Optional.empty(), sum(sum)),
        ratio ->
            explained(subject, Optional.of(quotient(ratio)), sum(ratio.over()), sum(ratio.under())),
        inclusion -> explained(subject, Optional.empty(), inclusion(inclusion)),
        cost -> explained(subject, Optional.empty(), cost()));
  }

  private Explanation explained(Subject subject, Optional<String> ratio, Sum... sums) {
    double finished = feed.balances().expected().finished();
    return new Explanation(feed.recipe().code(), subject.text(), finished, List.of(sums), ratio);
  }

  private Sum sum(Subject.Nutrients sum) {
    Unit unit = sum.nutrients().get(0).unit();
    double finished = feed.balances().expected().finished();
    boolean moist = sum.nutrients().stream().anyMatch(Explainer::isMoisture);
    List<Brought> brought = brought(sum, moist);
    BigDecimal total = digits(unit.fromBase(at(sum, Scenario.EXPECTED)));
    int decimals = total.scale();
    List<BigDecimal> brings =
        Remainders.out(
            brought.stream().map(one -> unit.fromBase(one.amount() / finished)).toList(), total);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < brought.size(); i++) {
      Brought one = brought.get(i);
      parts.add(
          new Part(
              one.line(),
              Figures.visible(one.kg(), 3),
              one.holds(),
              one.kept(),
              varies(one.deviation() / finished, unit, decimals),
              brings.get(i).doubleValue(),
              shown(brings.get(i), one.amount()),
              one.source()));
    }
    return new Sum(
        sum.text(),
        unit.symbol(),
        total.toPlainString(),
        Figures.fixed(unit.fromBase(at(sum, Scenario.POOREST)), decimals),
        Figures.fixed(unit.fromBase(at(sum, Scenario.RICHEST)), decimals),
        varies(
            new Readings(feed).varying(sum, new Basis.AsFed(), Scenario.EXPECTED).deviation(),
            unit,
            decimals),
        moist ? new Water(feed).taken() : Optional.empty(),
        parts,
        silent(sum, false),
        silent(sum, true),
        varying(sum, Composition::isSpreadAssumed),
        varying(sum, Composition::isSpreadUnknown),
        sum.nutrients().stream().flatMap(one -> formula(one).stream()).toList());
  }

  private List<Brought> brought(Subject.Nutrients sum, boolean moist) {
    List<Brought> brought = new ArrayList<>();
    for (Row row : feed.rows()) {
      List<Nutrient> of = brings(row, sum);
      if (row.kg(Scenario.RICHEST) > 0 && amount(row, of) > 0) {
        brought.add(
            new Brought(
                String.join(" > ", row.path()),
                row.kg(),
                holds(row, of),
                kept(row, of),
                row.deviation(of.stream().mapToInt(Nutrient::index).toArray()),
                amount(row, of),
                sources(row, of)));
      }
    }
    if (moist) {
      brought.addAll(new Water(feed).brought());
    }
    brought.sort(Brought.LARGEST_FIRST);
    return brought;
  }

  /** The nutrients of a sum that a row brings; its water only where that reaches the feed. */
  private List<Nutrient> brings(Row row, Subject.Nutrients sum) {
    return sum.nutrients().stream()
        .filter(one -> !isMoisture(one) || feed.keepsItsWater(row))
        .toList();
  }

  static boolean isMoisture(Nutrient one) {
    return one.name().equals(Nutrients.MOISTURE);
  }

  private double at(Subject subject, Scenario end) {
    return new Readings(feed).at(subject, new Basis.AsFed(), end).value();
  }

  /** In the order of what they bring; what weighs nothing is left out. */
  private List<Row> largestFirst(ToDoubleFunction<Row> by) {
    return feed.rows().stream()
        .filter(row -> row.kg(Scenario.RICHEST) > 0)
        .sorted(Comparator.comparingDouble(by).reversed())
        .toList();
  }

  /** Who brings nothing, since nothing is told, or since it is told that there is nothing. */
  private List<String> silent(Subject.Nutrients sum, boolean untold) {
    return largestFirst(Row::kg).stream()
        .filter(row -> !brings(row, sum).isEmpty() && amount(row, brings(row, sum)) == 0)
        .filter(row -> untold == isUntold(row, sum))
        .map(row -> row.ingredient().name())
        .distinct()
        .toList();
  }

  private static boolean isUntold(Row row, Subject.Nutrients sum) {
    return sum.nutrients().stream()
        .anyMatch(
            one ->
                row.composition().isUnknown(one.index())
                    || row.composition().mayBeMore(one.index()));
  }

  private static double amount(Row row, List<Nutrient> nutrients) {
    return nutrients.stream().mapToDouble(one -> row.amount(Scenario.EXPECTED, one.index())).sum();
  }

  private static String varies(double deviation, Unit unit, int decimals) {
    return deviation > 0 ? Figures.visible(unit.fromBase(deviation), decimals) : "";
  }

  /** Something that holds of the content of an ingredient. */
  private interface Which {
    boolean is(Composition composition, int nutrient);
  }

  /** Ingredients that bring something and of whose deviation something is to be said. */
  private List<String> varying(Subject.Nutrients sum, Which which) {
    return largestFirst(row -> amount(row, brings(row, sum))).stream()
        .filter(row -> amount(row, brings(row, sum)) > 0)
        .filter(
            row ->
                brings(row, sum).stream().anyMatch(one -> which.is(row.composition(), one.index())))
        .map(row -> row.ingredient().name())
        .distinct()
        .toList();
  }

  private static String holds(Row row, List<Nutrient> nutrients) {
    List<String> words = new ArrayList<>();
    for (Nutrient one : nutrients) {
      words.add(
          told(row, one)
              .map(Explainer::written)
              .orElseGet(
                  () ->
                      row.composition().isUnknown(one.index())
                          ? "not told"
                          : Figures.plain(row.composition().expected().at(one.index()), one.unit())
                              + " by its formula"));
    }
    return String.join(" + ", words);
  }

  private static String written(Content content) {
    return content.asWritten();
  }

  private static Optional<Content> told(Row row, Nutrient one) {
    return row.ingredient().contents().stream()
        .flatMap(block -> Optional.ofNullable(block.byNutrient().get(one.name())).stream())
        .filter(
            content ->
                Math.abs(content.low() - row.composition().expected().at(one.index()))
                    <= 1e-12 * Math.max(1, content.low()))
        .findFirst();
  }

  private static String kept(Row row, List<Nutrient> nutrients) {
    double full = 0;
    for (Nutrient one : nutrients) {
      full += row.composition().expected().at(one.index()) * row.kg();
    }
    return full > 0 ? Figures.visible(amount(row, nutrients) / full * 100, 1) : "";
  }

  private static String sources(Row row, List<Nutrient> nutrients) {
    return String.join(
        ", ",
        nutrients.stream()
            .flatMap(one -> told(row, one).stream())
            .map(content -> source(content.source()))
            .distinct()
            .toList());
  }

  private static String source(Source source) {
    return source.id() + " (" + source.reliability().inWords() + ")";
  }

  private static Optional<String> formula(Nutrient one) {
    if (one.digestibleOf().isPresent()) {
      return Optional.of(
          one.name()
              + " is the digestible part of "
              + one.digestibleOf().get()
              + ", by the coefficient of each ingredient");
    }
    return one.formula()
        .map(
            formula ->
                one.name()
                    + " = "
                    + formula.asWritten()
                    + formula.source().map(from -> ", source " + source(from)).orElse(""));
  }

  private String quotient(Subject.Ratio ratio) {
    double over = at(ratio, Scenario.EXPECTED);
    if (!Double.isFinite(over)) {
      return ratio.text() + " cannot be told: the feed holds no " + ratio.under().text();
    }
    String unit = ratio.kind() == Subject.RatioKind.PER_ENERGY ? " g/MJ" : "";
    return ratio.text() + " = " + digits(over).toPlainString() + unit;
  }

  private Sum inclusion(Subject.Inclusion inclusion) {
    List<Row> rows =
        largestFirst(Row::kg).stream()
            .filter(row -> Readings.isOneOf(row, inclusion.names()))
            .toList();
    return plain(inclusion.text(), "%", rows, Row::kg, Row::kg, row -> "", kg -> kg, List.of());
  }

  private Sum cost() {
    double bagged = feed.bagged();
    return plain(
        "cost",
        currency + "/kg",
        largestFirst(Row::money),
        Row::kgRichest,
        Row::money,
        row -> row.price().map(Price::asWritten).orElse("no price"),
        sum -> sum / bagged,
        List.of(
            "The money for what is weighed, handling overage included, over the "
                + Figures.fixed(bagged, 3)
                + " kg that reach the bags."));
  }

  private Sum plain(
      String title,
      String unit,
      List<Row> rows,
      ToDoubleFunction<Row> kg,
      ToDoubleFunction<Row> amount,
      Function<Row, String> holds,
      DoubleUnaryOperator perKg,
      List<String> words) {
    BigDecimal total = digits(perKg.applyAsDouble(rows.stream().mapToDouble(amount).sum()));
    List<BigDecimal> brings =
        Remainders.out(
            rows.stream().map(row -> perKg.applyAsDouble(amount.applyAsDouble(row))).toList(),
            total);
    List<Part> parts =
        IntStream.range(0, rows.size())
            .mapToObj(
                i ->
                    new Part(
                        String.join(" > ", rows.get(i).path()),
                        Figures.visible(kg.applyAsDouble(rows.get(i)), 3),
                        holds.apply(rows.get(i)),
                        "",
                        "",
                        brings.get(i).doubleValue(),
                        shown(brings.get(i), amount.applyAsDouble(rows.get(i))),
                        rows.get(i).price().map(price -> source(price.source())).orElse("")))
            .toList();
    return new Sum(
        title,
        unit,
        total.toPlainString(),
        "",
        "",
        "",
        Optional.empty(),
        parts,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        words);
  }

  /** What is too little for the digits of the figure is told as less than the last of them. */
  private static String shown(BigDecimal brings, double amount) {
    return brings.signum() == 0 && amount > 0
        ? "<" + BigDecimal.ONE.movePointLeft(brings.scale()).toPlainString()
        : brings.toPlainString();
  }

  /** Four digits that count. */
  static BigDecimal digits(double value) {
    return BigDecimal.valueOf(value).setScale(Figures.decimals(value), RoundingMode.HALF_EVEN);
  }
}
