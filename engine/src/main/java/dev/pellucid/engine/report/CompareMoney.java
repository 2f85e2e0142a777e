package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.Cause;
import dev.pellucid.engine.compare.RecipeChange.CostMoved;
import dev.pellucid.engine.compare.Slight;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.List;

/** What became of the cost of a feed, in words: the same difference has one figure everywhere. */
final class CompareMoney {
  private static final int MONEY_DECIMALS = 4;
  private static final int DRIVERS = 3;

  private CompareMoney() {}

  static void tell(RecipeChange change, String currency, List<String> lines) {
    if (change.costBefore().isPresent() && change.costAfter().isPresent()) {
      if (!costMoved(change).isEmpty()) {
        Figures.Pair money = costs(change);
        lines.add(
            "cost "
                + money.value()
                + " -> "
                + money.other()
                + " "
                + currency
                + "/kg ("
                + costMoved(change)
                + ")"
                + change.effect().map(effect -> drivers(effect.costs())).orElse(""));
      }
    } else {
      change.costAfter().ifPresent(now -> lines.add("cost " + money(now) + " " + currency + "/kg"));
    }
  }

  private static Figures.Pair costs(RecipeChange change) {
    return Figures.apart(
        change.costBefore().orElse(0), change.costAfter().orElse(0), MONEY_DECIMALS);
  }

  /** By how much a kg becomes dearer, the same in every table and sentence; empty for nothing. */
  static String costMoved(RecipeChange change) {
    boolean moved = Math.abs(change.costMoved()) > Closeness.PART && !Slight.cost(change);
    return moved ? signed(change.costMoved(), costs(change).decimals()) : "";
  }

  static String money(double perKg) {
    return Figures.fixed(perKg, MONEY_DECIMALS);
  }

  /** What shows in the decimals of the cost, three lines at most, and the rest together. */
  private static String drivers(List<CostMoved> costs) {
    List<CostMoved> named =
        costs.stream().limit(DRIVERS).filter(one -> shows(one.moved())).toList();
    double others = costs.stream().skip(named.size()).mapToDouble(CostMoved::moved).sum();
    List<String> told = new ArrayList<>(named.stream().map(CompareMoney::driver).toList());
    if (shows(others)) {
      told.add("others " + signed(others));
    }
    return told.isEmpty() ? "" : ": " + String.join(", ", told);
  }

  private static boolean shows(double money) {
    return !Figures.fixed(Math.abs(money), MONEY_DECIMALS).equals(Figures.fixed(0, MONEY_DECIMALS));
  }

  private static String driver(CostMoved one) {
    return one.line() + " " + signed(one.moved()) + price(one);
  }

  private static String price(CostMoved one) {
    boolean both = one.priceBefore() > 0 && one.priceAfter() > 0;
    if (!both || Closeness.same(one.priceBefore(), one.priceAfter())) {
      return "";
    }
    Figures.Pair prices = Figures.apart(one.priceBefore(), one.priceAfter(), 2);
    return " (price " + prices.value() + " -> " + prices.other() + ")";
  }

  static String signed(double money) {
    return signed(money, MONEY_DECIMALS);
  }

  /** A difference is taken before it is rounded, so that it is the same wherever it stands. */
  static String signed(double difference, int decimals) {
    String figure = Figures.visible(difference, decimals);
    boolean more = difference > 0 && !figure.equals(Figures.fixed(0, decimals));
    return (more ? "+" : "") + figure;
  }

  /** The files that moved it; one that did it alone added the whole difference. */
  static String because(RecipeChange change) {
    List<String> told = new ArrayList<>();
    boolean alone = change.because().size() == 1;
    int decimals = costs(change).decimals();
    for (Cause cause : change.because()) {
      double cost = cause.costMoved().orElse(0);
      String moved = alone && shows(cost) ? costMoved(change) : signed(cost, decimals);
      told.add(cause.path() + (shows(cost) && !moved.isEmpty() ? " (cost " + moved + ")" : ""));
    }
    return String.join(", ", told);
  }
}
