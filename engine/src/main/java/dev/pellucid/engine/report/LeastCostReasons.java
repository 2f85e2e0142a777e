package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.LeastCostBlocks.column;
import static dev.pellucid.engine.report.LeastCostBlocks.figures;

import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Reasons;
import dev.pellucid.engine.leastcost.Reasons.FigureMove;
import dev.pellucid.engine.leastcost.Reasons.IngredientValue;
import dev.pellucid.engine.leastcost.Reasons.LimitPrice;
import dev.pellucid.engine.leastcost.Reasons.Next;
import dev.pellucid.engine.leastcost.Reasons.PriceRange;
import dev.pellucid.engine.leastcost.Reasons.SharePrice;
import dev.pellucid.engine.leastcost.Reasons.Sweep;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Picture;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Why the cheapest feed is what it is. */
final class LeastCostReasons {
  private static final int PRICE_DECIMALS = 3;
  private static final double TONNE = 1000;

  /** So much of its price it must be worth to be told. */
  private static final double NEAR = 0.4;

  /** So many times its price no market brings. */
  private static final double FAR = 50;

  /** So many points of a sweep are told in a table, beside those at turns. */
  private static final int MOST_POINTS = 12;

  private final LeastCostMoney money;
  private final LeastCostWords words;
  private final LeastCostPictures pictures;

  LeastCostReasons(String currency) {
    this.money = new LeastCostMoney(currency);
    this.words = new LeastCostWords(currency);
    this.pictures = new LeastCostPictures(currency);
  }

  void limits(Reasons reasons, List<Block> blocks) {
    if (reasons.limits().isEmpty() && reasons.shares().isEmpty()) {
      return;
    }
    blocks.add(new Heading("What keeping each limit costs", false));
    List<String> points = new ArrayList<>();
    for (LimitPrice one : reasons.limits()) {
      points.add(words.limit(one));
    }
    for (SharePrice one : reasons.shares()) {
      points.add(words.share(one));
    }
    blocks.add(new Points(points));
    if (!reasons.limits().isEmpty()) {
      blocks.add(new Picture(pictures.limits(reasons.limits())));
    }
  }

  void alsoMoved(Reasons reasons, List<Block> blocks) {
    if (reasons.alsoMoved().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (FigureMove one : reasons.alsoMoved()) {
      Figures.Pair pair = Figures.apart(one.now(), one.then(), Figures.decimals(one.now()));
      rows.add(
          List.of(
              one.title().isEmpty() ? one.name() : one.title(),
              pair.value(),
              pair.other(),
              LeastCostMoney.signed(one.then() - one.now(), pair.decimals()),
              one.unit().symbol()));
    }
    blocks.add(new Heading("What moves without a limit on it", false));
    blocks.add(
        new Table(
            List.of(
                column("Figure"),
                figures("Now"),
                figures("Then"),
                figures("Moved"),
                column("Unit")),
            rows,
            false));
  }

  void values(Reasons reasons, List<Block> blocks) {
    List<IngredientValue> shown = new ArrayList<>();
    for (IngredientValue one : reasons.values()) {
      if (isTold(one)) {
        shown.add(one);
      }
    }
    if (shown.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    List<String> held = new ArrayList<>();
    for (IngredientValue one : shown) {
      rows.add(row(one));
      if (!one.held().isEmpty() && one.gap().orElse(0) > 0) {
        held.add(LeastCostWords.refusal(one.held().get(0)));
      }
    }
    String currency = money.currency() + "/kg";
    int others = reasons.values().size() - shown.size();
    blocks.add(new Heading("What each ingredient is worth in this feed", false));
    blocks.add(
        new Words(
            "An ingredient whose price falls to its worth just comes in, with about so many points;"
                + " of what is in, worth is the price at which more would."
                + (others > 0
                    ? " "
                        + Plural.of(
                            others,
                            "other is worth little or nothing here and is left out.",
                            "others are worth little or nothing here and are left out.")
                    : "")));
    blocks.add(
        new Table(
            List.of(
                column("Ingredient"),
                figures("Worth, " + currency),
                figures("Price"),
                figures("Gap"),
                figures("Share, %"),
                figures("Would be, %"),
                column("")),
            rows,
            false));
    blocks.add(new Picture(pictures.values(shown)));
    if (!held.isEmpty()) {
      blocks.add(new Points(held));
    }
  }

  /** In use, or worth a part of its price that a market may bring. */
  private static boolean isTold(IngredientValue one) {
    double price = one.price().orElse(0);
    return one.share() > 0 || (one.worth() > 0 && one.worth() > NEAR * price);
  }

  private static List<String> row(IngredientValue one) {
    return List.of(
        one.name(),
        Figures.fixed(one.worth(), PRICE_DECIMALS),
        figure(one.price()),
        one.gap().isPresent()
            ? LeastCostMoney.signed(one.gap().getAsDouble(), PRICE_DECIMALS)
            : "-",
        one.share() > 0 ? Figures.fixed(one.share(), 2) : "-",
        one.comesIn() > 0 ? Figures.fixed(one.comesIn(), 2) : "-",
        one.held().isEmpty() ? "" : "held");
  }

  private static String figure(OptionalDouble price) {
    return price.isPresent() ? Figures.fixed(price.getAsDouble(), PRICE_DECIMALS) : "none";
  }

  void ranges(Reasons reasons, List<Block> blocks) {
    if (reasons.stays().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (PriceRange one : reasons.stays()) {
      rows.add(
          List.of(
              one.name(),
              Figures.fixed(one.price(), PRICE_DECIMALS),
              one.from() > 0 ? Figures.fixed(one.from(), PRICE_DECIMALS) : "any",
              one.to() > FAR * one.price() ? "any" : Figures.fixed(one.to(), PRICE_DECIMALS)));
    }
    blocks.add(new Heading("Prices between which the answer stays", false));
    blocks.add(
        new Table(
            List.of(
                column("Ingredient"),
                figures("Price, " + money.currency() + "/kg"),
                figures("From"),
                figures("To")),
            rows,
            false));
  }

  void sweep(Reasons reasons, List<Block> blocks) {
    if (reasons.sweep().isEmpty()) {
      return;
    }
    Sweep sweep = reasons.sweep().get();
    List<List<String>> rows = new ArrayList<>();
    int every = Math.max(1, (sweep.points().size() + MOST_POINTS - 1) / MOST_POINTS);
    for (int i = 0; i < sweep.points().size(); i++) {
      Sweep.Point one = sweep.points().get(i);
      boolean turns = sweep.turns().stream().anyMatch(turn -> turn.at() == one.at());
      if (i % every != 0 && i != sweep.points().size() - 1 && !turns) {
        continue;
      }
      rows.add(
          List.of(
              Figures.plain(one.at()),
              one.cost().isPresent()
                  ? LeastCostMoney.tonne(one.cost().getAsDouble())
                  : "cannot be met",
              one.cost().isPresent() ? Figures.fixed(one.share(), 2) : "-"));
    }
    blocks.add(new Heading(went(sweep), false));
    blocks.add(
        new Table(
            List.of(
                figures(sweep.of() + (sweep.unit().isEmpty() ? "" : ", " + sweep.unit())),
                figures(money.currency() + "/t"),
                figures("Share, %")),
            rows,
            false));
    blocks.add(new Picture(pictures.sweep(sweep)));
    if (!sweep.turns().isEmpty()) {
      blocks.add(new Points(sweep.turns().stream().map(one -> turn(sweep, one)).toList()));
    }
  }

  /** {@code While fish-meal-65 goes from 1.2 to 2.4 EUR/kg}. */
  private static String went(Sweep sweep) {
    if (sweep.points().isEmpty()) {
      return "While " + sweep.of() + " goes";
    }
    return "While "
        + sweep.of()
        + " goes from "
        + Figures.plain(sweep.points().get(0).at())
        + " to "
        + Figures.plain(sweep.points().get(sweep.points().size() - 1).at())
        + (sweep.unit().isEmpty() ? "" : " " + sweep.unit());
  }

  private static String turn(Sweep sweep, Sweep.Turn one) {
    String at = Figures.plain(one.at()) + (sweep.unit().isEmpty() ? "" : " " + sweep.unit());
    return "from " + at + " on " + LeastCostWords.turn(one);
  }

  void next(Advice advice, List<Block> blocks) {
    if (advice.reasons().next().isEmpty() || advice.costs().isEmpty()) {
      return;
    }
    Next next = advice.reasons().next().get();
    double more = (next.cost() - advice.costs().get().then()) * TONNE;
    List<String> told = new ArrayList<>();
    if (!next.comesIn().isEmpty()) {
      told.add("with " + String.join(", ", next.comesIn()));
    }
    if (!next.goesOut().isEmpty()) {
      told.add("without " + String.join(", ", next.goesOut()));
    }
    blocks.add(new Heading("The next cheapest", false));
    blocks.add(
        new Words(
            "It costs "
                + money.moreOrLess(more)
                + ", "
                + String.join(" and ", told)
                + ": "
                + String.join(", ", LeastCostMoney.moves(next.lines()))
                + "."));
  }
}
