package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.LeastCostBlocks.column;
import static dev.pellucid.engine.report.LeastCostBlocks.figures;

import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.leastcost.Advice.Standing;
import dev.pellucid.engine.leastcost.Bought;
import dev.pellucid.engine.leastcost.Care;
import dev.pellucid.engine.leastcost.Refusal;
import dev.pellucid.engine.leastcost.Week;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Picture;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** All feeds of a week together: what to change, what it saves, what it needs, what to buy. */
final class LeastCostWeek {
  private static final int MOST = 6;

  private final LeastCostMoney money;
  private final LeastCostWords words;
  private final LeastCostPictures pictures;

  LeastCostWeek(String currency) {
    this.money = new LeastCostMoney(currency);
    this.words = new LeastCostWords(currency);
    this.pictures = new LeastCostPictures(currency);
  }

  /** What all come to, in one line. */
  String tally(List<LeastCostTold> all, Week week) {
    List<String> parts = new ArrayList<>();
    count(all, Standing.CHEAPER, "can be cheaper", "can be cheaper", parts);
    count(
        all,
        Standing.KEEPS_AGAIN,
        "can keep its limits again",
        "can keep their limits again",
        parts);
    count(all, Standing.CHEAPEST, "is the cheapest already", "are the cheapest already", parts);
    count(all, Standing.NOT_WORTH, "is not worth a change", "are not worth a change", parts);
    count(all, Standing.UNMET, "cannot be met", "cannot be met", parts);
    count(all, Standing.NOT_ASKED, "was not asked", "were not asked", parts);
    count(all, Standing.NOT_PROVEN, "could not be proven", "could not be proven", parts);
    return "of "
        + Plural.of(all.size(), "feed")
        + " "
        + String.join(", ", parts)
        + (Math.abs(week.savesPerMonth()) >= 0.5 ? "; " + saves(week) : "");
  }

  private String saves(Week week) {
    return LeastCostMoney.month(Math.abs(week.savesPerMonth()))
        + " "
        + money.currency()
        + (week.savesPerMonth() < 0 ? " more a month" : " less a month");
  }

  private static void count(
      List<LeastCostTold> all, Standing standing, String one, String more, List<String> parts) {
    long number = all.stream().filter(told -> told.advice().standing() == standing).count();
    if (number > 0) {
      parts.add(Plural.of(number, one, more));
    }
  }

  /** What prices all answers rest on: the oldest of them, and the most that are invented. */
  static String prices(List<LeastCostTold> all) {
    OptionalInt oldest =
        all.stream().flatMapToInt(one -> one.advice().care().oldestPrice().stream()).max();
    int invented =
        all.stream().mapToInt(one -> one.advice().care().inventedPrices()).max().orElse(0);
    if (oldest.isEmpty() && invented == 0) {
      return "";
    }
    List<String> told = new ArrayList<>();
    oldest.ifPresent(days -> told.add("the oldest is " + Plural.of(days, "day") + " old"));
    if (invented > 0) {
      told.add("up to " + invented + " of a feed are invented, and no answer is truer than they");
    }
    return "Prices: " + String.join("; ", told) + ".";
  }

  /** A few lines for each feed, the largest saving first, as a console shows them. */
  List<String> brief(LeastCostTold told) {
    Advice advice = told.advice();
    List<String> lines = new ArrayList<>();
    lines.add(advice.code() + "  " + words.verdict(advice));
    if (told.isOffered()) {
      lines.add("  " + String.join(", ", LeastCostMoney.moves(advice)));
      List<String> needs = needs(told);
      if (!needs.isEmpty()) {
        lines.add("  " + String.join("; ", needs));
      }
    }
    return lines;
  }

  /** What a change asks of people: papers to print, what it rests on, what was held back. */
  private static List<String> needs(LeastCostTold told) {
    List<String> needs = new ArrayList<>();
    Care care = told.advice().care();
    boolean label =
        told.effect().isPresent() && !CompareWords.labelCell(told.effect().get()).isEmpty();
    if (label || !care.labelAnew().isEmpty()) {
      needs.add("label to print anew");
    }
    if (!care.onAverageOnly().isEmpty()) {
      needs.add("kept on average only: " + String.join(", ", care.onAverageOnly()));
    }
    Set<String> held = new LinkedHashSet<>();
    for (Refusal one : care.held()) {
      held.add(one.ingredient());
    }
    if (!held.isEmpty()) {
      needs.add("held back: " + String.join(", ", held));
    }
    return needs;
  }

  /** The page of all feeds. */
  List<Block> of(List<LeastCostTold> all, Week week) {
    List<Block> blocks = new ArrayList<>();
    String prices = prices(all);
    if (!prices.isEmpty()) {
      blocks.add(new Words(prices));
    }
    String tally = tally(all, week);
    blocks.add(new Words(Character.toUpperCase(tally.charAt(0)) + tally.substring(1) + "."));
    offered(all, blocks);
    others(all, blocks);
    bought(week, blocks);
    return blocks;
  }

  private void offered(List<LeastCostTold> all, List<Block> blocks) {
    List<List<String>> rows = new ArrayList<>();
    List<String> codes = new ArrayList<>();
    List<Costs> saved = new ArrayList<>();
    for (LeastCostTold told : all) {
      if (told.isOffered() && told.advice().costs().isPresent()) {
        Costs costs = told.advice().costs().get();
        codes.add(told.advice().code());
        saved.add(costs);
        rows.add(
            List.of(
                told.advice().code(),
                String.join(", ", LeastCostMoney.moves(told.advice())),
                LeastCostMoney.tonne(costs.now()),
                LeastCostMoney.perTonne(costs.savesPerTonne()),
                costs.tonnesPerMonth().isPresent()
                    ? LeastCostMoney.month(
                        costs.savesPerTonne() * costs.tonnesPerMonth().getAsDouble())
                    : "-",
                String.join("; ", needs(told))));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading("What to change", false));
      blocks.add(
          new Table(
              List.of(
                  new Block.Column("Feed", Block.Holds.NAME),
                  column("Change"),
                  figures(money.currency() + "/t now"),
                  figures("Less"),
                  figures("A month"),
                  column("Needs")),
              rows,
              false));
      blocks.add(new Picture(pictures.saves(codes, saved)));
    }
  }

  private void others(List<LeastCostTold> all, List<Block> blocks) {
    List<String> points = new ArrayList<>();
    for (LeastCostTold told : all) {
      if (!told.isOffered()) {
        points.add(told.advice().code() + " " + words.verdict(told.advice()));
      }
    }
    if (!points.isEmpty()) {
      blocks.add(new Heading("What stays as it is", false));
      blocks.add(new Points(points));
    }
  }

  private static void bought(Week week, List<Block> blocks) {
    if (!week.perMonth().isEmpty()) {
      blocks.add(new Heading("What would be bought in a month", false));
      blocks.add(table(week.perMonth()));
    }
    if (!week.perTonne().isEmpty()) {
      blocks.add(new Heading("What would be bought for a tonne of each other feed", false));
      blocks.add(
          new Words(
              "Nothing says how much is made of "
                  + String.join(", ", week.untold())
                  + "; made-per-month in pellucid.yaml may."));
      blocks.add(table(week.perTonne()));
    }
  }

  private static Table table(List<Bought> bought) {
    List<List<String>> rows = new ArrayList<>();
    for (Bought one : bought) {
      int decimals = Math.max(one.now(), one.then()) >= 100 ? 0 : 2;
      rows.add(
          List.of(
              one.ingredient(),
              Figures.fixed(one.now(), decimals),
              Figures.fixed(one.then(), decimals),
              LeastCostMoney.signed(one.moved(), decimals)));
    }
    return new Table(
        List.of(column("Ingredient"), figures("kg now"), figures("kg then"), figures("More")),
        rows,
        false);
  }

  /** What would be bought, in two lines at most. */
  static List<String> bought(Week week) {
    List<String> lines = new ArrayList<>();
    for (String one : LeastCostWords.purchases(week.perMonth(), MOST)) {
      lines.add("to buy in a month, " + one);
    }
    return lines;
  }
}
