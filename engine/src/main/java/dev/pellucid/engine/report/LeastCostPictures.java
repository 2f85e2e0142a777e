package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.Drawing.LEFT;
import static dev.pellucid.engine.report.Drawing.RIGHT;
import static dev.pellucid.engine.report.Drawing.ROW;

import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Reasons.IngredientValue;
import dev.pellucid.engine.leastcost.Reasons.LimitPrice;
import dev.pellucid.engine.leastcost.Reasons.Sweep;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Drawing.Anchor;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;

/** The pictures of least cost. What each shows stands beside it in words too. */
final class LeastCostPictures {
  /** So many ingredients stand in a picture; the table has all. */
  private static final int MOST = 16;

  private static final int HALF = 7;
  private static final int HIGH = 190;
  private static final double ROOM = 1.08;

  private final LeastCostMoney money;

  LeastCostPictures(String currency) {
    this.money = new LeastCostMoney(currency);
  }

  /** What a tonne costs now and then. */
  DomContent costs(Costs costs) {
    Drawing drawing = new Drawing("What a tonne costs now and then", 2 * ROW + 4);
    double most = Math.max(costs.now(), costs.then());
    bar(drawing, 0, "now", costs.now() / most, true, money.tonneWords(costs.now() * 1000));
    bar(drawing, 1, "then", costs.then() / most, false, money.tonneWords(costs.then() * 1000));
    return drawing.svg();
  }

  private static void bar(
      Drawing drawing, int row, String name, double part, boolean hollow, String words) {
    double y = row * ROW + 2;
    drawing.words(LEFT - 6, y + 12, Anchor.END, name);
    drawing.bar(LEFT, LEFT + part * (RIGHT - LEFT), y + 1, ROW - 5, hollow);
    drawing.words(RIGHT + 6, y + 12, Anchor.START, words);
  }

  /**
   * The share of each free line now, hollow, and then, with the bounds between which it is free.
   */
  DomContent shares(List<LineMove> lines) {
    Drawing drawing =
        new Drawing("Shares now, hollow, and then, between their bounds", lines.size() * ROW + 20);
    double most = 0;
    for (LineMove line : lines) {
      double high =
          line.high().isPresent() && line.high().getAsDouble() < 100
              ? line.high().getAsDouble()
              : 0;
      most = Math.max(most, Math.max(high, Math.max(line.now(), line.then())));
    }
    double scale = (RIGHT - LEFT) / (most * ROOM);
    int decimals = LeastCostMoney.decimals(lines);
    for (int i = 0; i < lines.size(); i++) {
      LineMove line = lines.get(i);
      double y = i * ROW + 2;
      drawing.words(LEFT - 6, y + 12, Anchor.END, line.name());
      drawing.bar(LEFT, LEFT + line.now() * scale, y, HALF, true);
      drawing.bar(LEFT, LEFT + line.then() * scale, y + HALF, HALF, false);
      bound(drawing, line.low().orElse(0), scale, y, most);
      bound(drawing, line.high().orElse(100), scale, y, most);
      drawing.words(RIGHT + 6, y + 12, Anchor.START, Figures.fixed(line.then(), decimals) + " %");
    }
    drawing.words(
        LEFT,
        lines.size() * ROW + 15,
        Anchor.START,
        "upper bar now, lower bar then; thick lines are the bounds of within");
    return drawing.svg();
  }

  private static void bound(Drawing drawing, double bound, double scale, double y, double most) {
    if (bound > 0 && bound <= most) {
      double x = LEFT + bound * scale;
      drawing.line(x, y - 1, x, y + 2 * HALF + 1, true);
    }
  }

  /** What a step of each limit costs, the dearest first. */
  DomContent limits(List<LimitPrice> limits) {
    List<LimitPrice> shown = limits.subList(0, Math.min(MOST, limits.size()));
    Drawing drawing =
        new Drawing("What one step of each limit costs for a tonne", shown.size() * ROW + 4);
    double most = 0;
    for (LimitPrice one : shown) {
      most = Math.max(most, Math.abs(one.perTonne()));
    }
    for (int i = 0; i < shown.size(); i++) {
      LimitPrice one = shown.get(i);
      double part = most > 0 ? Math.abs(one.perTonne()) / most : 0;
      bar(drawing, i, one.name(), part, false, money.tonneWords(one.perTonne()));
    }
    return drawing.svg();
  }

  /** What each change saves in a month, or for a tonne where nothing says how much is made. */
  DomContent saves(List<String> codes, List<Costs> costs) {
    Drawing drawing = new Drawing("What each change saves", codes.size() * ROW + 4);
    double most = 0;
    for (Costs one : costs) {
      most = Math.max(most, Math.abs(saved(one)));
    }
    for (int i = 0; i < codes.size(); i++) {
      double saved = saved(costs.get(i));
      String of = costs.get(i).tonnesPerMonth().isPresent() ? " a month" : " a tonne";
      bar(
          drawing,
          i,
          codes.get(i),
          most > 0 ? Math.abs(saved) / most : 0,
          saved < 0,
          LeastCostMoney.month(saved) + " " + money.currency() + of);
    }
    return drawing.svg();
  }

  private static double saved(Costs costs) {
    return costs.savesPerTonne() * costs.tonnesPerMonth().orElse(1);
  }

  /** The price of each ingredient and what it is worth, with the gap between as a line. */
  DomContent values(List<IngredientValue> values) {
    List<IngredientValue> shown = new ArrayList<>();
    double most = 0;
    for (IngredientValue one : values) {
      if (one.price().isPresent() && shown.size() < MOST) {
        shown.add(one);
        most = Math.max(most, Math.max(one.worth(), one.price().getAsDouble()));
      }
    }
    Drawing drawing =
        new Drawing("Price, a full dot, and worth, a hollow one", shown.size() * ROW + 20);
    double scale = most > 0 ? (RIGHT - LEFT) / (most * ROOM) : 0;
    for (int i = 0; i < shown.size(); i++) {
      IngredientValue one = shown.get(i);
      double y = i * ROW + 10;
      double worth = LEFT + Math.max(0, one.worth()) * scale;
      double price = LEFT + one.price().getAsDouble() * scale;
      drawing.words(LEFT - 6, y + 4, Anchor.END, one.name());
      drawing.dashed(LEFT, y, RIGHT, y);
      drawing.line(worth, y, price, y, true);
      drawing.dot(price, y, false);
      drawing.dot(worth, y, true);
      drawing.words(
          RIGHT + 6,
          y + 4,
          Anchor.START,
          LeastCostMoney.signed(one.gap().orElse(0), 2) + (one.share() > 0 ? ", in use" : ""));
    }
    drawing.words(
        LEFT,
        shown.size() * ROW + 15,
        Anchor.START,
        "full dot: price; hollow dot: worth; " + money.currency() + "/kg");
    return drawing.svg();
  }

  /** The cost of a tonne while something goes, with the places where a limit turns. */
  DomContent sweep(Sweep sweep) {
    Drawing drawing = new Drawing("What a tonne costs while " + sweep.of() + " goes", HIGH);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Sweep.Point one : sweep.points()) {
      least = Math.min(least, one.cost().orElse(least));
      most = Math.max(most, one.cost().orElse(most));
    }
    if (sweep.points().size() < 2 || !(most >= least)) {
      return drawing.svg();
    }
    double from = sweep.points().get(0).at();
    double to = sweep.points().get(sweep.points().size() - 1).at();
    Plot plot = new Plot(from, to, least, most > least ? most : least + 1);
    drawing.line(plot.x(from), HIGH - 34, plot.x(to), HIGH - 34, false);
    drawing.line(plot.x(from), 12, plot.x(from), HIGH - 34, false);
    drawing.words(LEFT - 70, plot.y(most) + 4, Anchor.END, money.tonneWords(most * 1000));
    drawing.words(LEFT - 70, plot.y(least) + 4, Anchor.END, money.tonneWords(least * 1000));
    ends(drawing, sweep, plot);
    for (int i = 0; i < sweep.turns().size(); i++) {
      double x = plot.x(sweep.turns().get(i).at());
      drawing.dashed(x, 12, x, HIGH - 34);
      drawing.words(x, 9, Anchor.MIDDLE, String.valueOf((char) ('a' + i % 26)));
    }
    Sweep.Point last = null;
    for (Sweep.Point one : sweep.points()) {
      if (one.cost().isPresent()) {
        double y = plot.y(one.cost().getAsDouble());
        if (last != null && last.cost().isPresent()) {
          double before = plot.y(last.cost().getAsDouble());
          drawing.line(plot.x(last.at()), before, plot.x(one.at()), y, true);
        }
        drawing.dot(plot.x(one.at()), y, false);
      }
      last = one;
    }
    return drawing.svg();
  }

  private static void ends(Drawing drawing, Sweep sweep, Plot plot) {
    double bottom = HIGH - 20;
    String unit = sweep.unit().isEmpty() ? "" : " " + sweep.unit();
    drawing.words(plot.x(plot.from()), bottom, Anchor.MIDDLE, Figures.plain(plot.from()) + unit);
    drawing.words(plot.x(plot.to()), bottom, Anchor.MIDDLE, Figures.plain(plot.to()) + unit);
    StringBuilder turns = new StringBuilder();
    for (int i = 0; i < sweep.turns().size(); i++) {
      Sweep.Turn one = sweep.turns().get(i);
      turns
          .append(i == 0 ? "" : "; ")
          .append((char) ('a' + i % 26))
          .append(": ")
          .append(LeastCostWords.turn(one));
    }
    drawing.words(4, HIGH - 4, Anchor.START, turns.toString());
  }

  /** From figures to places. */
  private record Plot(double from, double to, double least, double most) {
    double x(double at) {
      return LEFT - 60 + (at - from) / (to - from) * (RIGHT - LEFT + 60);
    }

    double y(double cost) {
      return HIGH - 46 - (cost - least) / (most - least) * (HIGH - 66);
    }
  }
}
