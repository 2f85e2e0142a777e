package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
  private final OfRooms prices;

  public ProgramPrices(Answer.Found found) {
    this.found = found;
    this.slopes = new Slopes(found.feed());
    this.bagged = slopes.bagged().now();
    this.prices = new OfRooms(found, slopes, found.optimum().prices());
  }

  /** Prices of constraints, put together by what they stand for. */
  private static final class OfRooms {
    /** By the place of a room among those of what is kept. */
    private final IdentityHashMap<Requirement, double[]> rooms = new IdentityHashMap<>();

    private final List<Requirement> binding = new ArrayList<>();

    /** Of one point less of all other lines together, with all that moves counted. */
    private final double total;

    OfRooms(Answer.Found found, Slopes slopes, double[] prices) {
      IdentityHashMap<Requirement, Integer> met = new IdentityHashMap<>();
      for (int i = 0; i < found.rows().size(); i++) {
        Requirement one = found.rows().get(i);
        int place = met.merge(one, 1, Integer::sum) - 1;
        if (Math.abs(prices[i]) > NONE) {
          double[] of = rooms.get(one);
          if (of == null) {
            of = new double[one.rooms(slopes).size()];
            rooms.put(one, of);
            binding.add(one);
          }
          // A plane of an earlier round stands for the same room as the one at the same place.
          of[place % of.length] += prices[i];
        }
      }
      int sum = found.rows().size();
      int last = prices.length - 1;
      this.total = prices[sum] + (last > sum ? prices[last] : 0);
    }

    /** What a point of each line brings to all of them, by its index. */
    double[] brings(Slopes feed) {
      double[] brings = new double[feed.feed().recipe().lines().size()];
      Arrays.fill(brings, total);
      for (Requirement one : binding) {
        double[] of = Objects.requireNonNull(rooms.get(one));
        List<Slope> slopes = one.rooms(feed);
        for (int room = 0; room < of.length; room++) {
          double[] each = slopes.get(room).perPoint();
          for (int line = 0; line < brings.length; line++) {
            brings[line] += of[room] * each[line];
          }
        }
      }
      return brings;
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
    return List.copyOf(prices.binding);
  }

  /** Whether it is kept at a price. */
  boolean binding(Requirement one) {
    return prices.rooms.containsKey(one);
  }

  /**
   * By how much a kg in the bags costs more when one more is asked, in the base of the bound: more
   * of a minimum, less of a maximum.
   */
  public double perUnit(Movable one) {
    double[] of = prices.rooms.get(one.of());
    if (of == null) {
      return 0;
    }
    // A room is a sum with the bound in it once, so that any difference is exact.
    double by = one.bound() == 0 ? 1 : one.bound();
    List<Slope> here = one.of().rooms(slopes);
    List<Slope> there = one.at().apply(one.bound() + by).rooms(slopes);
    double sum = 0;
    for (int i = 0; i < of.length; i++) {
      sum += of[i] * Math.abs(there.get(i).now() - here.get(i).now()) / by;
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
   * By how much a point of each line costs more than it brings, by its index; it is zero of what
   * stands between its bounds.
   *
   * @param feed the one that was found, with lines that may come in
   */
  public double[] dearer(Slopes feed) {
    double[] brings = prices.brings(feed);
    double[] money = feed.money().minus(costPerKg(), feed.bagged()).perPoint();
    double[] dearer = new double[money.length];
    for (int line = 0; line < dearer.length; line++) {
      dearer[line] = money[line] - brings[line];
    }
    for (int i = 0; i < found.shares().length; i++) {
      dearer[found.task().free().get(i).line().index()] = found.optimum().boundPrice(i);
    }
    return dearer;
  }

  /**
   * How the costs of the program go when an ingredient gets dearer by one, wherever it stands: the
   * cost of a kg rises too, by what is bought of it over what comes into bags.
   */
  public double[] direction(String ingredient) {
    double[] perPoint = direction(slopes, ingredient);
    double[] direction = new double[found.program().variables().size()];
    for (int i = 0; i < found.shares().length; i++) {
      direction[i] = perPoint[found.task().free().get(i).line().index()];
    }
    return direction;
  }

  private double[] direction(Slopes feed, String ingredient) {
    Slope bought = feed.bought(ingredient);
    return bought.minus(bought.now() / bagged, feed.bagged()).perPoint();
  }

  /**
   * The price at which the next kg of a line costs as much as it brings, the price of the
   * ingredient moving wherever it stands; empty where its price does not count on this line.
   *
   * @param feed the one that was found, with this line in it
   * @param dearer what {@link #dearer} says of this line
   * @param price of the ingredient
   */
  public Optional<Double> worth(
      Slopes feed, int line, String ingredient, double dearer, double price) {
    Slope bought = feed.bought(ingredient);
    double rises = bought.perPoint()[line];
    if (bought.now() > 0) {
      Optional<double[]> moved = Basis.moved(found, direction(ingredient));
      if (moved.isPresent()) {
        double brings = new OfRooms(found, slopes, moved.get()).brings(feed)[line];
        double all = direction(feed, ingredient)[line] - brings;
        rises = all > 0 ? all : rises;
      }
    }
    return rises > 0 ? Optional.of(price - dearer / rises) : Optional.empty();
  }
}
