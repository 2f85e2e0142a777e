package dev.pellucid.engine.compare;

import dev.pellucid.engine.account.Account;
import dev.pellucid.engine.check.LabelWords;
import dev.pellucid.engine.compare.FeedFigures.Claimed;
import dev.pellucid.engine.compare.FeedFigures.Weighings;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.label.BagLabel.Group;
import dev.pellucid.engine.label.BagLabel.Statement;
import dev.pellucid.engine.weighing.WeighingLine;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.WeighingPlanner;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Takes down the figures of a computed feed. */
public final class FigureTaking {
  private final ComputedFeed feed;
  private final Judgement judgement;
  private final FeedTables tables;

  private FigureTaking(ComputedFeed feed, Judgement judgement, FeedTables tables) {
    this.feed = feed;
    this.judgement = judgement;
    this.tables = tables;
  }

  /** The account of a feed, its label and its weighings. */
  public static FeedFigures of(ComputedFeed feed, Judgement judgement, FeedTables tables) {
    Optional<WeighingPlan> plan =
        feed.recipe()
            .batch()
            .flatMap(batch -> WeighingPlanner.plan(feed, feed.weighed(batch), tables));
    return of(feed, judgement, tables, plan);
  }

  /** The same of a feed whose batch is planned. */
  public static FeedFigures of(
      ComputedFeed feed, Judgement judgement, FeedTables tables, Optional<WeighingPlan> plan) {
    Account account = Account.of(feed, judgement.limits());
    FigureTaking taking = new FigureTaking(feed, judgement, tables);
    return new FeedFigures(
        account,
        taking.claims(account),
        taking.printed(),
        plan.map(FigureTaking::weighings).orElse(Weighings.NONE));
  }

  private Map<String, Claimed> claims(Account account) {
    Map<String, Claimed> claims = new LinkedHashMap<>();
    for (LabelVerdict verdict : judgement.claims()) {
      String nutrient = verdict.claim().nutrient().name();
      if (account.told(nutrient).isPresent()) {
        claims.put(nutrient, new Claimed(new LabelWords(verdict).headline(), verdict.outcome()));
      }
    }
    return claims;
  }

  private Map<String, String> printed() {
    Map<String, String> printed = new LinkedHashMap<>();
    BagLabel.statements(feed, tables)
        .forEach(statement -> printed.put(statement.heading(), words(statement)));
    return printed;
  }

  private static String words(Statement statement) {
    return statement.accept(
        new Statement.Visitor<String>() {
          @Override
          public String figures(Statement.Figures figures) {
            return figures.figures().stream()
                .map(fact -> fact.name() + " " + fact.value())
                .collect(Collectors.joining("; "));
          }

          @Override
          public String names(Statement.Names names) {
            return String.join("; ", names.names());
          }

          @Override
          public String groups(Statement.Groups groups) {
            return groups.groups().stream().map(Group::words).collect(Collectors.joining(" "));
          }

          @Override
          public String sentences(Statement.Sentences sentences) {
            return String.join(" ", sentences.sentences());
          }
        });
  }

  private static Weighings weighings(WeighingPlan plan) {
    Map<String, Double> each = new LinkedHashMap<>();
    plan.mix().forEach(line -> add(each, line, ""));
    plan.coat().forEach(line -> add(each, line, " (coat)"));
    return new Weighings(plan.kg(), plan.loadCount(), plan.coatRounds(), each);
  }

  private static void add(Map<String, Double> each, WeighingLine line, String place) {
    each.merge(line.line().material().name() + place, line.actual(), Double::sum);
  }
}
