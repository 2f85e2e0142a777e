package dev.pellucid.engine.report;

import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Advice.Rung;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.leastcost.Contradiction;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Picture;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Verbatim;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.text.Plural;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All that is told of one feed, in the order in which a nutritionist reads it. */
final class LeastCostBlocks {
  private static final int MOST = 5;

  private final LeastCostMoney money;
  private final LeastCostWords words;
  private final CompareWords effects;
  private final LeastCostReasons reasons;
  private final LeastCostPictures pictures;

  LeastCostBlocks(String currency) {
    this.money = new LeastCostMoney(currency);
    this.words = new LeastCostWords(currency);
    this.effects = new CompareWords(currency, MOST);
    this.reasons = new LeastCostReasons(currency);
    this.pictures = new LeastCostPictures(currency);
  }

  /** Without its title. */
  List<Block> of(LeastCostTold told) {
    Advice advice = told.advice();
    List<Block> blocks = new ArrayList<>();
    String prices = LeastCostWords.prices(advice.care());
    if (!prices.isEmpty()) {
      blocks.add(new Words(prices));
    }
    blocks.add(new Words(advice.code() + " " + words.verdict(advice) + "."));
    advice.conflict().ifPresent(conflict -> conflict(conflict, blocks));
    if (advice.standing() != Standing.NOT_ASKED) {
      advice.costs().ifPresent(costs -> costs(costs, told.isOffered(), blocks));
      lines(advice, blocks);
      reasons.limits(advice.reasons(), blocks);
      reasons.alsoMoved(advice.reasons(), blocks);
      effect(told, blocks);
      reasons.values(advice.reasons(), blocks);
      reasons.ranges(advice.reasons(), blocks);
      reasons.sweep(advice.reasons(), blocks);
      reasons.next(advice, blocks);
      ladder(advice, blocks);
      care(advice, blocks);
    }
    change(told, blocks);
    return blocks;
  }

  private void costs(Costs costs, boolean offered, List<Block> blocks) {
    boolean moved = offered || costs.then() != costs.now();
    List<Fact> facts = new ArrayList<>();
    String now = LeastCostMoney.perKg(costs.now());
    String then = LeastCostMoney.perKg(costs.then());
    facts.add(new Fact(money.currency() + "/kg in the bags", moved ? both(now, then) : now));
    now = LeastCostMoney.tonne(costs.now());
    then = LeastCostMoney.tonne(costs.then());
    facts.add(new Fact(money.currency() + "/t", moved ? both(now, then) : now));
    if (costs.tonnesPerMonth().isPresent()) {
      double tonnes = costs.tonnesPerMonth().getAsDouble();
      now = LeastCostMoney.month(costs.now() * 1000 * tonnes);
      then = LeastCostMoney.month(costs.then() * 1000 * tonnes);
      facts.add(
          new Fact(
              money.currency() + " a month",
              (moved ? both(now, then) : now) + ", of " + Figures.plain(tonnes) + " t"));
    }
    double rounding = (costs.then() - costs.least()) * 1000;
    if (moved && rounding > 0.005) {
      facts.add(new Fact("of it, for rounding", money.tonneWords(rounding)));
    }
    blocks.add(new Heading("What it costs", false));
    blocks.add(new Facts(facts));
    if (moved) {
      blocks.add(new Picture(pictures.costs(costs)));
      costs.rounding().ifPresent(why -> blocks.add(new Words(sentence(why))));
    }
  }

  private static String sentence(String clause) {
    return Character.toUpperCase(clause.charAt(0))
        + clause.substring(1)
        + (clause.endsWith(".") ? "" : ".");
  }

  private static String both(String now, String then) {
    return now + " now, " + then + " then";
  }

  private void lines(Advice advice, List<Block> blocks) {
    List<LineMove> free = new ArrayList<>();
    List<String> fixed = new ArrayList<>();
    int decimals = LeastCostMoney.decimals(advice.lines());
    for (LineMove line : advice.lines()) {
      if (line.low().isPresent() || LeastCostMoney.isMoved(line)) {
        free.add(line);
      } else {
        fixed.add(line.name() + " " + Figures.fixed(line.now(), decimals) + " %");
      }
    }
    if (free.isEmpty()) {
      return;
    }
    blocks.add(new Heading("Lines that are free", false));
    blocks.add(table(free, decimals));
    blocks.add(new Picture(pictures.shares(free)));
    if (!fixed.isEmpty()) {
      blocks.add(new Words("Not free: " + String.join(", ", fixed) + "."));
    }
  }

  /** Shares of lines, now and then. */
  static Table table(List<LineMove> lines, int decimals) {
    List<List<String>> rows = new ArrayList<>();
    for (LineMove line : lines) {
      rows.add(
          List.of(
              line.name(),
              Figures.fixed(line.now(), decimals),
              Figures.fixed(line.then(), decimals),
              LeastCostMoney.isMoved(line) ? LeastCostMoney.signed(line.moved(), decimals) : "-",
              LeastCostWords.within(line),
              LeastCostWords.standing(line, decimals)));
    }
    return new Table(
        List.of(
            column("Line"),
            figures("Now, %"),
            figures("Then, %"),
            figures("Moved"),
            figures("May be"),
            column("Stands")),
        rows,
        false);
  }

  static Column column(String head) {
    return new Column(head, Holds.WORDS);
  }

  static Column figures(String head) {
    return new Column(head, Holds.FIGURES);
  }

  /** Label, purchases and floor: what the change does, in the words of a comparison. */
  private void effect(LeastCostTold told, List<Block> blocks) {
    List<String> points = new ArrayList<>();
    for (String why : told.advice().care().labelAnew()) {
      points.add("label to print anew: " + why);
    }
    if (told.effect().isPresent()) {
      for (String line : effects.of(told.effect().get())) {
        if (!isTold(line, points)) {
          points.add(line);
        }
      }
      points.addAll(effects.effects(told.effect().get()));
    }
    for (String more : LeastCostWords.purchases(told.bought(), MOST)) {
      points.add("to buy for each tonne, " + more);
    }
    if (!points.isEmpty()) {
      blocks.add(new Heading("What the change does", false));
      blocks.add(new Points(points));
    }
  }

  /** What a finding says of the label is not told of the label once more. */
  private static boolean isTold(String line, List<String> points) {
    int from = line.indexOf(": ");
    return line.startsWith("label ")
        && from > 0
        && points.stream().anyMatch(one -> one.contains(line.substring(from + 2)));
  }

  private void ladder(Advice advice, List<Block> blocks) {
    if (advice.ladder().isEmpty() || advice.costs().isEmpty()) {
      return;
    }
    Costs costs = advice.costs().get();
    List<List<String>> rows = new ArrayList<>();
    for (Rung rung : advice.ladder()) {
      double saves = (costs.now() - rung.cost()) * 1000;
      List<String> moves = LeastCostMoney.moves(rung.lines());
      rows.add(
          List.of(
              String.valueOf(moves.size()),
              String.join(", ", moves),
              LeastCostMoney.perTonne(saves),
              costs.tonnesPerMonth().isPresent()
                  ? LeastCostMoney.month(saves * costs.tonnesPerMonth().getAsDouble())
                  : "-"));
    }
    blocks.add(new Heading("The best change of a few lines, and of all", false));
    blocks.add(
        new Table(
            List.of(
                figures("Lines"),
                column("Change"),
                figures(money.currency() + "/t less"),
                figures("A month")),
            rows,
            false));
  }

  private static void care(Advice advice, List<Block> blocks) {
    List<String> trust = LeastCostWords.trust(advice.care());
    if (!trust.isEmpty()) {
      blocks.add(new Heading("How far to trust it", false));
      blocks.add(new Points(trust));
    }
    if (!advice.care().held().isEmpty()) {
      blocks.add(new Heading("What is held back", false));
      blocks.add(new Points(advice.care().held().stream().map(LeastCostWords::refusal).toList()));
    }
  }

  private static void conflict(Contradiction conflict, List<Block> blocks) {
    blocks.add(new Heading("What cannot be met together", false));
    blocks.add(
        new Words(
            conflict.members().size() == 1
                ? "This alone is in the way:"
                : "Without any one of these "
                    + Plural.of(conflict.members().size(), "thing")
                    + " the rest can be met:"));
    blocks.add(
        new Points(conflict.members().stream().map(one -> one.words() + at(one.place())).toList()));
    conflict
        .reach()
        .ifPresent(
            reach ->
                blocks.add(
                    new Words(
                        "Of "
                            + reach.name()
                            + " these ingredients reach "
                            + Figures.plain(reach.least())
                            + " to "
                            + Figures.plain(reach.most())
                            + " "
                            + reach.unit().symbol()
                            + "; asked is "
                            + Figures.plainBeside(
                                reach.asked(),
                                reach.asked() > reach.most() ? reach.most() : reach.least())
                            + " "
                            + reach.unit().symbol()
                            + ".")));
    if (conflict.loosenings().isEmpty()) {
      blocks.add(
          new Words(
              "None of it may be loosened. What is left is another ingredient"
                  + " (-Dpellucid.try=NAME), another lot, or not to make this feed."));
    } else {
      blocks.add(new Words("What you may loosen, in this order:"));
      blocks.add(
          new Points(
              conflict.loosenings().stream().map(one -> one.words() + at(one.place())).toList()));
    }
  }

  private static String at(Optional<Span> place) {
    return place.map(span -> ", " + span.place()).orElse("");
  }

  private static void change(LeastCostTold told, List<Block> blocks) {
    if (told.isOffered()) {
      blocks.add(new Heading("The change", false));
      blocks.add(new Verbatim(LeastCostDiff.of(told.advice().change())));
    }
  }
}
