package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the bounds of an answer cost, read off the prices of its program.
 *
 * <p>The program is the least of {@code C - p F}: the money of 100 kg of recipe less so many times
 * what comes of it into bags, where p is the least cost of a kg. It is zero there. When a bound
 * moves by a little, the room to it moves by as much as its mass (the finished feed, its dry
 * matter, or the lower sum of a ratio) times that, the least of the program by the price of the
 * room times as much, and so p by this over F.
 */
public final class ProgramPrices {
  private static final double NONE = 1e-12;

  private final Answer.Found found;
  private final Slopes slopes;
  private final double bagged;

  /** What each room of what is kept costs, by its place among its rooms. */
  private final Map<Requirement, double[]> rooms = new IdentityHashMap<>();

  private final List<Requirement> binding = new ArrayList<>();

  public ProgramPrices(Answer.Found found) {
    this.found = found;
    this.slopes = new Slopes(found.feed());
    this.bagged = slopes.bagged().now();
    Map<Requirement, Integer> met = new IdentityHashMap<>();
    for (int i = 0; i < found.rows().size(); i++) {
      Requirement one = found.rows().get(i);
      double price = found.optimum().price(i);
      int place = met.merge(one, 1, Integer::sum) - 1;
      if (Math.abs(price) > NONE) {
        double[] of = rooms.get(one);
        if (of == null) {
          of = new double[one.rooms(slopes).size()];
          rooms.put(one, of);
          binding.add(one);
        }
        // A plane of an earlier round stands for the same room as the one at the same place.
        of[place % of.length] += price;
      }
    }
  }

  /** Of the feed that was found. */
  public Slopes slopes() {
    return slopes;
  }

  /** Kg in the bags of 100 kg of recipe. */
  public double bagged() {
    return bagged;
  }

  /** Money per kg in the bags. */
  public double costPerKg() {
    return slopes.money().now() / bagged;
  }

  /** What is kept at a price, in its order. */
  public List<Requirement> binding() {
    return List.copyOf(binding);
  }

  /** Whether it is kept at a price. */
  boolean binding(Requirement one) {
    return rooms.containsKey(one);
  }

  private double[] prices(Requirement one) {
    double[] prices = rooms.get(one);
    return prices == null ? new double[0] : prices;
  }

  /**
   * By how much a kg in the bags costs more when one more is asked, in the base of the bound: more
   * of a minimum, less of a maximum.
   */
  public double perUnit(Movable one) {
    double[] prices = prices(one.of());
    if (prices.length == 0) {
      return 0;
    }
    // A room is a sum with the bound in it once, so that any difference is exact.
    double by = one.bound() == 0 ? 1 : one.bound();
    List<Slope> here = one.of().rooms(slopes);
    List<Slope> there = one.at().apply(one.bound() + by).rooms(slopes);
    double sum = 0;
    for (int i = 0; i < prices.length; i++) {
      sum += prices[i] * Math.abs(there.get(i).now() - here.get(i).now()) / by;
    }
    return sum / bagged;
  }

  /**
   * By how much a kg in the bags costs more with one point more of a bound of a free line: above
   * zero where its low binds, below where its high does.
   */
  public double perPoint(int free) {
    return found.optimum().boundPrice(free) / bagged;
  }

  /**
   * What a point of each line is worth, by its index: what could be paid for it so that the feed
   * costs as much with it as without, by what it brings to all that has a price and to the mass of
   * the feed.
   *
   * @param feed the one that was found, with lines that may come in
   */
  public double[] worths(Slopes feed) {
    double[] bagging = feed.bagged().perPoint();
    double[] worths = new double[bagging.length];
    double cost = costPerKg();
    double total = ofTotal();
    for (int line = 0; line < worths.length; line++) {
      worths[line] = cost * bagging[line] + total;
    }
    for (Requirement one : binding) {
      double[] prices = prices(one);
      List<Slope> of = one.rooms(feed);
      for (int room = 0; room < prices.length; room++) {
        double[] each = of.get(room).perPoint();
        for (int line = 0; line < worths.length; line++) {
          worths[line] += prices[room] * each[line];
        }
      }
    }
    double[] money = feed.money().perPoint();
    for (int i = 0; i < found.shares().length; i++) {
      int line = found.task().free().get(i).line().index();
      worths[line] = money[line] - found.optimum().boundPrice(i);
    }
    return worths;
  }

  /** What one point less of all other lines together costs, with all that moves counted. */
  private double ofTotal() {
    int total = found.rows().size();
    int last = found.program().constraints().size() - 1;
    double moved = last > total ? found.optimum().price(last) : 0;
    return found.optimum().price(total) + moved;
  }

  /**
   * How the costs of the program go when an ingredient gets dearer by one, wherever it stands: the
   * cost of a kg rises too, by what is bought of it over what comes into bags.
   */
  public double[] dearer(String ingredient) {
    Slope bought = slopes.bought(ingredient);
    Slope cost = bought.minus(bought.now() / bagged, slopes.bagged());
    double[] direction = new double[found.program().variables().size()];
    for (int i = 0; i < found.shares().length; i++) {
      direction[i] = cost.perPoint()[found.task().free().get(i).line().index()];
    }
    return direction;
  }
}
