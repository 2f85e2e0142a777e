package dev.pellucid.engine.report;

import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.quantity.Figures;
import java.util.ArrayList;
import java.util.List;

/** Money and shares of least cost in words: the same figure looks the same everywhere. */
final class LeastCostMoney {
  private static final int KG_DECIMALS = 4;
  private static final int TONNE_DECIMALS = 2;
  private static final int MOST_DECIMALS = 4;
  private static final double EXACT = 1e-7;
  private static final double TONNE = 1000;

  private final String currency;

  LeastCostMoney(String currency) {
    this.currency = currency;
  }

  String currency() {
    return currency;
  }

  /** {@code 0.5596}. */
  static String perKg(double money) {
    return Figures.fixed(money, KG_DECIMALS);
  }

  /** {@code 559.56}, of money per kg. */
  static String tonne(double perKg) {
    return Figures.fixed(perKg * TONNE, TONNE_DECIMALS);
  }

  static String perTonne(double money) {
    return Figures.fixed(money, TONNE_DECIMALS);
  }

  /** To the nearest whole, as nobody plans a month to the cent. */
  static String month(double money) {
    return Figures.fixed(money, 0);
  }

  /** {@code 63.18 EUR/t less, 253 EUR a month}; or more. */
  String saved(Costs costs) {
    double saves = costs.savesPerTonne();
    String tonne = moreOrLess(-saves);
    return costs.tonnesPerMonth().isPresent()
        ? tonne
            + ", "
            + month(Math.abs(saves) * costs.tonnesPerMonth().getAsDouble())
            + " "
            + currency
            + " a month"
        : tonne;
  }

  /** {@code 1.71 EUR/t less}; or more. */
  String moreOrLess(double more) {
    String tonne = perTonne(Math.abs(more));
    return tonne + " " + currency + "/t" + (more < 0 ? " less" : " more");
  }

  /** {@code 8.40 EUR/t}. */
  String tonneWords(double money) {
    return perTonne(money) + " " + currency + "/t";
  }

  /** As many decimals as shares of these lines need, at least two. */
  static int decimals(List<LineMove> lines) {
    int decimals = TONNE_DECIMALS;
    for (LineMove line : lines) {
      while (decimals < MOST_DECIMALS
          && (isFiner(line.now(), decimals) || isFiner(line.then(), decimals))) {
        decimals++;
      }
    }
    return decimals;
  }

  private static boolean isFiner(double share, int decimals) {
    double scaled = share * Math.pow(10, decimals);
    return Math.abs(scaled - Math.rint(scaled)) > EXACT * TONNE;
  }

  /** With its sign. */
  static String signed(double figure, int decimals) {
    String words = Figures.fixed(figure, decimals);
    return figure > 0 && !words.equals(Figures.fixed(0, decimals)) ? "+" + words : words;
  }

  /** {@code fish-meal-65 15.00 -> 10.07 %}, of each line that moves. */
  static List<String> moves(Advice advice) {
    return moves(advice.lines());
  }

  static List<String> moves(List<LineMove> lines) {
    int decimals = decimals(lines);
    List<String> moves = new ArrayList<>();
    for (LineMove line : lines) {
      if (isMoved(line)) {
        moves.add(
            line.name()
                + " "
                + Figures.fixed(line.now(), decimals)
                + " -> "
                + Figures.fixed(line.then(), decimals)
                + " %");
      }
    }
    return moves;
  }

  static boolean isMoved(LineMove line) {
    return Math.abs(line.moved()) > EXACT;
  }
}
