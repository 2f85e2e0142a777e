package dev.pellucid.engine.explain;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.Balances;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.explain.Arithmetic.Told;
import dev.pellucid.engine.explain.Worked.Head;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Demand;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * From the figure on target to the one that is judged, and to the room that is left of a limit: a
 * line for each step.
 */
final class HowJudged {
  private static final int KG_DECIMALS = 3;
  private static final int DRY_DECIMALS = 4;

  private final ComputedFeed feed;
  private final Readings readings;
  private final LimitStatus status;
  private final Limit limit;
  private final Margin margin;
  private final List<List<String>> rows = new ArrayList<>();

  private HowJudged(ComputedFeed feed, LimitStatus status) {
    this.feed = feed;
    this.readings = status.readings();
    this.status = status;
    this.limit = status.limit();
    this.margin = Margin.of(status);
  }

  /** A table for each limit on a figure. */
  static List<Worked> of(ComputedFeed feed, List<LimitStatus> limits, Subject subject) {
    List<Worked> tables = new ArrayList<>();
    for (LimitStatus one : limits) {
      if (one.limit().subject().text().equals(subject.text())) {
        tables.add(
            Double.isFinite(one.verdict().reading().value())
                ? new HowJudged(feed, one).table()
                : endless(one));
      }
    }
    return tables;
  }

  /** A ratio over nothing has no steps. */
  private static Worked endless(LimitStatus status) {
    return new Worked(
        title(status),
        List.of(Head.ofWords("Step")),
        List.of(List.of("At " + end(status) + " the feed holds nothing to divide by")),
        false,
        List.of());
  }

  private Worked table() {
    limit
        .subject()
        .<List<List<String>>>byKind(
            this::ofSum, this::ofRatio, any -> plain("in 100 kg of recipe"), any -> plain(""));
    List<String> words = new ArrayList<>();
    boolean min = limit.side() == Bound.Side.MIN;
    if (limit.inBatches().isPresent()) {
      ofBatches(min);
    } else if (status.withoutWaiver().isPresent()) {
      words.add(waived());
    }
    String unit = limit.writtenInForce().unit();
    String bound = limit.writtenInForce().figure().toPlainString();
    row("Limit, " + limit.side().word(), bound, limit.origin().span().place());
    String judged = margin.judged().toPlainString();
    row(
        margin.room().signum() >= 0 ? "Room" : min ? "Too little by" : "Too much by",
        margin.room().abs().toPlainString(),
        min == margin.room().signum() >= 0 ? judged + " - " + bound : bound + " - " + judged);
    notTold(words);
    if (!ofLaw(words)) {
      onAverage(words);
    }
    List<Head> heads =
        List.of(
            Head.ofWords("Step"),
            Head.ofFigures(unit.isEmpty() ? "Ratio" : unit),
            Head.ofWords("How"));
    return new Worked(title(status), heads, rows, false, words);
  }

  private static String title(LimitStatus status) {
    Demand demand = status.limit().demand();
    return demand.lineNow() + ", asked by " + demand.by() + ": " + stands(status.state());
  }

  private static String stands(LimitStatus.State state) {
    if (state.isKept()) {
      String kept = state.isByWaiver() ? "kept by its waiver alone" : "kept";
      return state.isAsTold() ? kept + ", as far as contents are given" : kept;
    }
    if (state == LimitStatus.State.BROKEN_BY_OVERAGE) {
      return "broken by what is weighed on top for handling";
    }
    if (state.isBroken()) {
      return "broken";
    }
    return "cannot be judged: "
        + (state.hangsOnFeed()
            ? "the recipe does not give its species or its process"
            : state.hangsOnContent() ? "a content is not given" : "what a step keeps is not given");
  }

  private String waived() {
    return "A waiver stands in place of " + limit.demand().bound() + ".";
  }

  private List<List<String>> ofSum(Subject.Nutrients sum) {
    Basis fed = new Basis.AsFed();
    boolean asFed = limit.basis().equals(fed);
    double expected = readings.at(sum, fed, Scenario.EXPECTED).value();
    Balance target = feed.balances().expected();
    Balance mass =
        sum.nutrients().stream().allMatch(Explainer::isMoisture)
            ? wetOrDry()
            : readings.massOf(sum, limit.basis(), status.verdict().end());
    double atEnd = reading().value();
    double dry = 1 - mass.moisture();
    double value = asFed ? atEnd : limit.basis().toAsFed(atEnd, dry);
    brought("On target and fresh", expected, target, List.of());
    brought("At " + end(status), value, mass, new Ends(feed, status).reasons(sum, mass));
    if (!asFed) {
      row(
          "The same" + limit.basis().words(),
          margin.at().toPlainString(),
          onBasis(told(value), told(atEnd), dry));
    }
    return rows;
  }

  /** Moisture is judged at the wet end or the dry one, whichever is worse. */
  private Balance wetOrDry() {
    Balances ends = feed.balances();
    Nutrient water = feed.nutrients().moisture().orElseThrow();
    double moisture = feed.content(status.verdict().end(), water.index());
    return List.of(ends.poorest(), ends.richest()).stream()
        .filter(one -> one.moisture() == moisture)
        .findFirst()
        .orElse(ends.expected());
  }

  private String onBasis(double asFed, double onBasis, double dry) {
    double factor = limit.basis().fromAsFed(dry) * dry;
    String times = Closeness.same(factor, 1) ? "" : " × " + Figures.plain(factor);
    return Arithmetic.quotient(
            new Told(asFed, ""), new Told(dry, DRY_DECIMALS, times), factor, at(onBasis))
        + ": "
        + Figures.fixed(dry * 100, 2)
        + " % of it is dry matter";
  }

  /** What is in the feed of 100 kg of recipe, over its mass. */
  private void brought(String step, double base, Balance mass, List<String> because) {
    BigDecimal figure = at(told(base));
    String unit = limit.writtenInForce().unit();
    boolean percent = unit.equals(Unit.PERCENT.symbol());
    String of = percent ? " kg" : " " + (unit.endsWith("/kg") ? unit.replace("/kg", "") : unit);
    double amount = told(base) * mass.finished() / (percent ? 100 : 1);
    String how =
        Arithmetic.quotient(
            new Told(amount, of),
            new Told(mass.finished(), KG_DECIMALS, " kg of feed"),
            percent ? 100 : 1,
            figure);
    row(
        step,
        figure.toPlainString(),
        because.isEmpty() ? how : how + "; " + String.join("; ", because));
  }

  private List<List<String>> ofRatio(Subject.Ratio ratio) {
    Scenario end = status.verdict().end();
    boolean poorest = end == Scenario.POOREST;
    row(
        "On target and fresh",
        at(told(status.expected().value())).toPlainString(),
        sides(ratio, Scenario.EXPECTED, "", ""));
    row(
        "At " + end(status),
        margin.at().toPlainString(),
        sides(
            ratio,
            end,
            poorest ? " at the poorest" : " at the richest",
            poorest
                ? " at the richest, of the same kg of feed"
                : " at the poorest, of the same kg of feed"));
    return rows;
  }

  private String sides(Subject.Ratio ratio, Scenario end, String above, String below) {
    Readings.Sides sides = readings.sides(ratio, end);
    boolean perEnergy = ratio.kind() == Subject.RatioKind.PER_ENERGY;
    Unit over = perEnergy ? Unit.G_PER_KG : ratio.over().nutrients().get(0).unit();
    Unit under = perEnergy ? Unit.MJ_PER_KG : over;
    double value = readings.at(ratio, new Basis.AsFed(), end).value();
    Told upper =
        new Told(
            over.fromBase(sides.above()), " " + over.symbol() + " " + ratio.over().text() + above);
    Told lower =
        new Told(
            under.fromBase(sides.below()),
            " " + under.symbol() + " " + ratio.under().text() + below);
    double factor = told(value) / (over.fromBase(sides.above()) / under.fromBase(sides.below()));
    return Double.isFinite(factor)
        ? Arithmetic.quotient(upper, lower, factor, at(told(value)))
        : "";
  }

  private List<List<String>> plain(String how) {
    row("In the feed", margin.at().toPlainString(), how);
    return rows;
  }

  private void ofBatches(boolean min) {
    String part = Figures.plain(limit.inBatches().orElse(0), Unit.PERCENT);
    Reading reading = reading();
    String sign = min ? "-" : "+";
    String deviation = margin.deviation().toPlainString();
    row(
        "In " + part + " of batches",
        sign + margin.margin().toPlainString(),
        reading.deviation() == 0
            ? "nothing says how lots vary"
            : Margin.quantile(status).toPlainString()
                + " × "
                + deviation
                + ", the standard deviation between lots"
                + (reading.spreadUnknown() ? ", which is too small: some lots' is not given" : ""));
    row(
        "Judged",
        margin.judged().toPlainString(),
        margin.at().toPlainString() + " " + sign + " " + margin.margin().toPlainString());
  }

  /** Law is judged on average, and lots differ; whether there is a word to say of it. */
  private boolean ofLaw(List<String> words) {
    Held held = Held.all(List.of(status)).get(0);
    boolean differs = !held.batches().isEmpty();
    if (differs) {
      words.add(
          "This is law. By the standard deviation between lots it is kept "
              + held.batches()
              + "; law-kept-in of pellucid.yaml says in how many it is to be.");
    }
    return differs;
  }

  private void notTold(List<String> words) {
    Reading reading = reading();
    if (reading.sure() != reading.value() && Double.isFinite(reading.sure())) {
      words.add(
          "Of the figure at "
              + end(status)
              + ", "
              + Figures.plain(told(reading.sure()))
              + limit.writtenInForce().unitAsWritten()
              + " is given; the rest is what may be there unseen, counted as the most that it can"
              + " be.");
    }
  }

  private void onAverage(List<String> words) {
    if (limit.inBatches().isEmpty() && !limit.subject().nutrients().isEmpty()) {
      double deviation =
          readings.varying(limit.subject(), limit.basis(), status.verdict().end()).deviation();
      words.add(
          "This limit says nothing about batches, so it is judged on average"
              + (deviation > 0
                  ? "; the standard deviation between lots, "
                      + Figures.plain(told(deviation))
                      + limit.writtenInForce().unitAsWritten()
                      + ", is not counted."
                  : "."));
    }
  }

  private Reading reading() {
    return status.verdict().reading();
  }

  private static String end(LimitStatus status) {
    return status.verdict().end() == Scenario.POOREST ? "the poorest" : "the richest";
  }

  private double told(double base) {
    return limit.writtenInForce().fromBase(base);
  }

  /** With as many decimals as the figure that is judged. */
  private BigDecimal at(double figure) {
    return new BigDecimal(Figures.fixed(figure, margin.at().scale()));
  }

  private void row(String step, String figure, String how) {
    rows.add(List.of(step, figure, how));
  }
}
