package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.Composition;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.explain.Explanation.Part;
import dev.pellucid.engine.explain.Explanation.Sum;
import dev.pellucid.engine.judge.LimitStatus;
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
  private final List<LimitStatus> limits;
  private final FeedTables tables;
  private final RowContents contents;

  private Explainer(ComputedFeed feed, List<LimitStatus> limits, FeedTables tables) {
    this.feed = feed;
    this.limits = limits;
    this.tables = tables;
    this.contents = new RowContents(feed);
  }

  /** A figure of a feed, and how it stands with the limits on it. */
  public static Explanation of(
      ComputedFeed feed, List<LimitStatus> limits, Subject subject, FeedTables tables) {
    return new Explainer(feed, limits, tables).explained(subject);
  }

  /** What 100 kg of recipe come to in the bags. */
  public static Explanation ofYield(ComputedFeed feed) {
    return new Explanation(
        feed.recipe().code(),
        "Yield",
        feed.balances().expected().finished(),
        List.of(),
        Optional.empty(),
        List.of(Yield.mass(feed)));
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
    return new Explanation(
        feed.recipe().code(),
        subject.title(),
        feed.balances().expected().finished(),
        List.of(sums),
        ratio,
        HowJudged.of(feed, limits, subject));
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
              kg(one.kg()),
              one.holds(),
              one.kept(),
              varies(one.deviation() / finished, unit, decimals),
              brings.get(i).doubleValue(),
              shown(brings.get(i), one.amount()),
              one.source()));
    }
    return new Sum(
        sum.title(),
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
        brought.isEmpty() ? List.of() : List.of(brings(finished)),
        worked(sum, unit, Math.pow(10, -decimals)));
  }

  private static String brings(double finished) {
    return "Each brings its kg × what it holds × the part that is kept / "
        + Figures.fixed(finished, 3)
        + " kg of finished feed.";
  }

  /** Of what brings at least half of the last digit. */
  private List<Worked> worked(Subject.Nutrients sum, Unit unit, double lastDigit) {
    double finished = feed.balances().expected().finished();
    List<Row> seen =
        largestFirst(row -> amount(row, brings(row, sum))).stream()
            .filter(row -> !brings(row, sum).isEmpty())
            .filter(row -> unit.fromBase(amount(row, brings(row, sum)) / finished) >= lastDigit / 2)
            .toList();
    List<Worked> worked = new ArrayList<>(Derivations.of(feed, sum.nutrients(), seen));
    worked.addAll(LossTables.of(feed, sum.nutrients(), seen, tables.practice()));
    return worked;
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
                contents.holds(row, of),
                RowContents.kept(row, of),
                row.deviation(of.stream().mapToInt(Nutrient::index).toArray()),
                amount(row, of),
                contents.sources(row, of)));
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

  private String quotient(Subject.Ratio ratio) {
    double over = at(ratio, Scenario.EXPECTED);
    if (!Double.isFinite(over)) {
      return ratio.text() + " cannot be computed: the feed holds no " + ratio.under().text();
    }
    String unit = ratio.kind() == Subject.RatioKind.PER_ENERGY ? " g/MJ" : "";
    return ratio.text() + " = " + digits(over).toPlainString() + unit;
  }

  private Sum inclusion(Subject.Inclusion inclusion) {
    List<Row> rows =
        largestFirst(Row::kg).stream()
            .filter(row -> Readings.isOneOf(row, inclusion.names()))
            .toList();
    return plain(
        inclusion, "%", rows, Row::kg, Row::kg, row -> "", row -> "", kg -> kg, List.of(),
        List.of());
  }

  private Sum cost() {
    double bagged = feed.bagged();
    String currency = tables.settings().currency();
    return plain(
        new Subject.Cost(),
        currency + "/kg",
        largestFirst(Row::money),
        Row::kgRichest,
        Row::money,
        row -> row.price().map(Price::asWritten).orElse("no price"),
        row -> row.price().map(price -> RowContents.source(price.source())).orElse(""),
        sum -> sum / bagged,
        List.of(
            "The money for what is weighed, handling overage included, over the "
                + Figures.fixed(bagged, 3)
                + " kg that reach the bags."),
        List.of(Yield.cost(feed, digits(feed.costPerKg()), currency), Yield.mass(feed)));
  }

  private Sum plain(
      Subject subject,
      String unit,
      List<Row> rows,
      ToDoubleFunction<Row> kg,
      ToDoubleFunction<Row> amount,
      Function<Row, String> holds,
      Function<Row, String> source,
      DoubleUnaryOperator perKg,
      List<String> words,
      List<Worked> worked) {
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
                        kg(kg.applyAsDouble(rows.get(i))),
                        holds.apply(rows.get(i)),
                        "",
                        "",
                        brings.get(i).doubleValue(),
                        shown(brings.get(i), amount.applyAsDouble(rows.get(i))),
                        source.apply(rows.get(i))))
            .toList();
    return new Sum(
        subject.title(),
        subject.text(),
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
        words,
        worked);
  }

  /** Four digits that count, and grams at least. */
  private static String kg(double kg) {
    return Figures.fixed(kg, Math.max(3, Figures.decimals(kg)));
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
