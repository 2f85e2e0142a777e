package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Why the cheapest feed is what it is.
 *
 * @param limits what keeping each limit costs that binds, the dearest first
 * @param alsoMoved figures that move and have no limit on that side
 * @param values what each ingredient of the folder is worth here, the largest gap first
 * @param stays for each ingredient in use the prices between which the shares stay as they are
 * @param shares what keeping each line within its bounds costs that stands at one, the dearest
 *     first
 */
public record Reasons(
    List<LimitPrice> limits,
    List<FigureMove> alsoMoved,
    List<IngredientValue> values,
    List<PriceRange> stays,
    Optional<Sweep> sweep,
    Optional<Next> next,
    List<SharePrice> shares) {
  /** None. */
  public static final Reasons NONE =
      new Reasons(
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          List.of());

  public Reasons {
    limits = List.copyOf(limits);
    alsoMoved = List.copyOf(alsoMoved);
    values = List.copyOf(values);
    stays = List.copyOf(stays);
    shares = List.copyOf(shares);
  }

  /**
   * What keeping something costs: that of shares which are not rounded, so the answer as it is
   * written lies up to one digit of each share beside it.
   *
   * @param of what is kept
   * @param name as it stands in its file: {@code crude-protein}
   * @param bound in its unit
   * @param step a step of the trade in that unit: one point of protein
   * @param perTonne by how much a tonne in the bags costs more with one step more, or, of a
   *     maximum, one less; always above zero
   * @param from the bound from which this price holds, to 1 %, in the unit; the bound itself where
   *     only the price was asked for
   * @param to the bound to which it holds
   * @param onAverageOnly whether it is kept on average, and by no more than half of all batches
   * @param side whether it is a minimum or a maximum
   * @param bare whether it is a quotient that is told without a unit; then {@code unit} says
   *     nothing
   */
  public record LimitPrice(
      Requirement of,
      String name,
      Unit unit,
      double bound,
      double step,
      double perTonne,
      double from,
      double to,
      boolean onAverageOnly,
      Bound.Side side,
      boolean bare) {}

  /**
   * What keeping a line within its bounds costs.
   *
   * @param name of the ingredient
   * @param side the bound at which it stands
   * @param bound in percent
   * @param perTonne by how much a tonne in the bags costs less with one point more room; always
   *     above zero
   * @param from the bound from which this price holds, to 1 %; the bound itself where only the
   *     price was asked for
   * @param to the bound to which it holds
   */
  public record SharePrice(
      String name, Bound.Side side, double bound, double perTonne, double from, double to) {}

  /** A figure of the feed, in its unit. */
  public record FigureMove(String name, String title, Unit unit, double now, double then) {}

  /**
   * What a kg of an ingredient is worth in this feed.
   *
   * @param worth the price at which it would just come in, or of what is in it, more would
   * @param price empty where it has none
   * @param share in the answer
   * @param comesIn the share that it would have at its price, or, where that is more than it is
   *     worth, at one just below its worth; the share in the answer where it was not asked for
   * @param held what keeps it from rising, whatever it costs
   */
  public record IngredientValue(
      String name,
      double worth,
      OptionalDouble price,
      double share,
      double comesIn,
      List<Refusal> held) {
    public IngredientValue {
      held = List.copyOf(held);
    }

    /** How much cheaper it is than it is worth; below zero where it is dearer. */
    public OptionalDouble gap() {
      return price.isPresent()
          ? OptionalDouble.of(worth - price.getAsDouble())
          : OptionalDouble.empty();
    }
  }

  /**
   * Prices of an ingredient between which all shares stay as they are.
   *
   * @param to infinite where no price changes them up to twenty times that of today
   */
  public record PriceRange(String name, double price, double from, double to) {}

  /**
   * The cheapest feed while one price or one limit goes from here to there.
   *
   * @param of an ingredient, or a limit as its file names it
   * @param unit of what goes
   * @param turns where a limit begins or ceases to bind
   */
  public record Sweep(String of, String unit, List<Point> points, List<Turn> turns) {
    public Sweep {
      points = List.copyOf(points);
      turns = List.copyOf(turns);
    }

    /**
     * The cheapest feed at one place of the way.
     *
     * @param cost of a kg in the bags; empty where nothing keeps all
     * @param share of the ingredient, or of what changes most, in percent
     */
    public record Point(double at, OptionalDouble cost, double share) {}

    /** What begins or ceases to bind at a point. */
    public record Turn(double at, String name, boolean begins) {}
  }

  /**
   * The cheapest feed that differs in at least one ingredient.
   *
   * @param comesIn ingredients that it has and the answer has not
   * @param goesOut the other way round
   */
  public record Next(
      double cost, List<String> comesIn, List<String> goesOut, List<Advice.LineMove> lines) {
    public Next {
      comesIn = List.copyOf(comesIn);
      goesOut = List.copyOf(goesOut);
      lines = List.copyOf(lines);
    }
  }
}
