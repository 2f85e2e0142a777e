package dev.pellucid.engine.compare;

import dev.pellucid.engine.check.LabelWords;
import dev.pellucid.engine.compare.FeedFigures.Amount;
import dev.pellucid.engine.compare.FeedFigures.Claimed;
import dev.pellucid.engine.compare.FeedFigures.Held;
import dev.pellucid.engine.compare.FeedFigures.LineCost;
import dev.pellucid.engine.compare.FeedFigures.Weighings;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.End;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.RetentionGap;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.floor.FloorLine;
import dev.pellucid.engine.floor.FloorPlan;
import dev.pellucid.engine.floor.FloorPlanner;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.label.BagLabel.Statement;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.larder.Nutrient;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Takes down the figures of a computed feed. */
public final class FigureTaking {
  private final ComputedFeed feed;
  private final Judgement judgement;
  private final Larder larder;

  private FigureTaking(ComputedFeed feed, Judgement judgement, Larder larder) {
    this.feed = feed;
    this.judgement = judgement;
    this.larder = larder;
  }

  /** The figures of a feed, how it stands with its limits, its label and its weighings. */
  public static FeedFigures of(ComputedFeed feed, Judgement judgement, Larder larder) {
    FigureTaking taking = new FigureTaking(feed, judgement, larder);
    return new FeedFigures(
        taking.shares(),
        taking.nutrients(),
        feed.costPerKg(),
        taking.costs(),
        feed.unpriced(),
        feed.bagged(),
        taking.limits(),
        taking.waivers(),
        taking.waived(),
        taking.claims(),
        taking.printed(),
        taking.weighings());
  }

  private Map<String, String> shares() {
    Map<String, String> shares = new LinkedHashMap<>();
    for (Line line : feed.recipe().lines()) {
      shares.merge(
          line.material().name(), line.share().toString(), (one, two) -> one + " and " + two);
    }
    return shares;
  }

  private Map<String, Amount> nutrients() {
    Map<String, Amount> nutrients = new LinkedHashMap<>();
    Readings readings = new Readings(feed);
    for (Nutrient nutrient : feed.nutrients().inOrder()) {
      if (isUntold(nutrient)) {
        continue;
      }
      Subject subject = new Subject.Nutrients(List.of(nutrient), nutrient.name());
      double value = readings.at(subject, new Basis.AsFed(), End.EXPECTED).value();
      nutrients.put(nutrient.name(), new Amount(value, nutrient.unit()));
    }
    return nutrients;
  }

  /** Of what the folder does not say how much heat and time leave there is no figure. */
  private boolean isUntold(Nutrient nutrient) {
    return feed.retentionGaps().stream()
        .map(RetentionGap::stability)
        .anyMatch(
            gap ->
                gap.equals(nutrient.stability())
                    || feed.rows().stream()
                        .anyMatch(
                            row -> gap.equals(row.ingredient().stability().get(nutrient.name()))));
  }

  private Map<String, LineCost> costs() {
    Map<String, List<Row>> byLine =
        feed.rows().stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.line().material().name(), LinkedHashMap::new, Collectors.toList()));
    Map<String, LineCost> costs = new LinkedHashMap<>();
    byLine.forEach((name, rows) -> costs.put(name, cost(rows)));
    return costs;
  }

  private LineCost cost(List<Row> rows) {
    double money = rows.stream().mapToDouble(Row::money).sum();
    double kg = rows.stream().mapToDouble(Row::kgRichest).sum();
    return new LineCost(money / feed.bagged(), kg > 0 ? money / kg : 0);
  }

  private Map<String, Held> limits() {
    Map<String, Held> limits = new LinkedHashMap<>();
    judgement.limits().forEach(one -> limits.put(key(one.limit()), held(one)));
    return limits;
  }

  private static String profile(Limit limit) {
    return limit.origin().kind() == Limit.Kind.RECIPE ? "" : limit.origin().name();
  }

  private static String key(Limit limit) {
    return profile(limit)
        + " "
        + limit.subject().text()
        + " "
        + limit.side().word()
        + limit.basis().words()
        + limit.inBatches();
  }

  private static Held held(LimitStatus status) {
    Verdict verdict = status.verdict();
    Limit limit = verdict.limit();
    Bound.Limit inForce = limit.writtenInForce();
    Verdict.Shown known = verdict.shown();
    double judged = inForce.fromBase(known.figure());
    double bound = inForce.fromBase(limit.inForce());
    double room = limit.side() == Bound.Side.MIN ? judged - bound : bound - judged;
    return new Held(
        profile(limit),
        limit.subject().text(),
        words(limit, limit.written()),
        words(limit, inForce),
        judged,
        known.certainty(),
        inForce.unit(),
        bound == 0 ? room : room / Math.abs(bound),
        verdict.keeps(),
        status.state().isJudged());
  }

  private static String words(Limit limit, Bound.Limit bound) {
    String batches =
        limit.inBatches().isPresent()
            ? " in " + Figures.plain(limit.inBatches().getAsDouble(), Unit.PERCENT) + " of batches"
            : "";
    return limit.side().word() + " " + bound.asWritten() + limit.basis().words() + batches;
  }

  private Set<String> waivers() {
    Set<String> waivers = new TreeSet<>();
    for (LimitStatus status : judgement.limits()) {
      Limit limit = status.limit();
      String about = limit.subject().text() + " " + limit.side().word() + " ";
      limit
          .waiver()
          .ifPresent(
              waiver ->
                  waivers.add(about + waiver.written().asWritten() + " until " + waiver.until()));
    }
    return waivers;
  }

  private Set<String> waived() {
    return judgement.limits().stream()
        .map(LimitStatus::limit)
        .filter(limit -> limit.waiver().isPresent())
        .map(limit -> limit.subject().text())
        .collect(Collectors.toSet());
  }

  private Map<String, Claimed> claims() {
    Map<String, Claimed> claims = new LinkedHashMap<>();
    for (LabelVerdict verdict : judgement.claims()) {
      if (isUntold(verdict.claim().nutrient())) {
        continue;
      }
      claims.put(
          verdict.claim().nutrient().name(),
          new Claimed(new LabelWords(verdict).headline(), verdict.outcome()));
    }
    return claims;
  }

  private Map<String, String> printed() {
    Map<String, String> printed = new LinkedHashMap<>();
    BagLabel.statements(feed, larder)
        .forEach(statement -> printed.put(statement.heading(), words(statement)));
    return printed;
  }

  private static String words(Statement statement) {
    if (statement instanceof Statement.Figures figures) {
      return figures.figures().stream()
          .map(fact -> fact.name() + " " + fact.value())
          .collect(Collectors.joining("; "));
    }
    if (statement instanceof Statement.Names names) {
      return String.join("; ", names.names());
    }
    return statement instanceof Statement.Sentences sentences
        ? String.join(" ", sentences.sentences())
        : "";
  }

  private Weighings weighings() {
    return feed.recipe()
        .batch()
        .flatMap(batch -> FloorPlanner.plan(feed, feed.weighed(batch), larder))
        .map(FigureTaking::weighings)
        .orElse(Weighings.NONE);
  }

  private static Weighings weighings(FloorPlan plan) {
    Map<String, Double> each = new LinkedHashMap<>();
    plan.mix().forEach(line -> add(each, line, ""));
    plan.coat().forEach(line -> add(each, line, " (coat)"));
    return new Weighings(plan.kg(), plan.loadCount(), plan.coatRounds(), each);
  }

  private static void add(Map<String, Double> each, FloorLine line, String place) {
    each.merge(line.line().material().name() + place, line.actual(), Double::sum);
  }
}
