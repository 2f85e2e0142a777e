package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.Normal;
import dev.pellucid.engine.judge.PracticeFigure;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.function.Function;

/** Something that a feed must keep and that hangs on the shares of its lines. */
public sealed interface Requirement {
  /** So many kg of recipe, or in the bags, points are of. */
  double WHOLE = 100;

  /**
   * What is left to it, multiplied out so that it is a sum over lines; below zero it is broken.
   * Where handling overage may be lost or not, there are two.
   */
  List<Slope> rooms(Slopes feed);

  /** Whether it bends: then what it says of lines holds only near the feed it was asked of. */
  default boolean bends() {
    return false;
  }

  /** Whether it is a limit of the recipe, which a batch must keep as it is weighed too. */
  default boolean isLimit() {
    return byKind(
        limit -> true,
        practice -> false,
        cap -> false,
        label -> false,
        order -> false,
        stock -> false);
  }

  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<OfLimit, R> limit,
      Function<OfPractice, R> practice,
      Function<OfCap, R> cap,
      Function<OfLabel, R> label,
      Function<OfOrder, R> order,
      Function<OfStock, R> stock);

  /**
   * A limit in force, as it is judged.
   *
   * @param deviations how many deviations between lots must fit in beside the figure
   * @param asTold whether what is not told counts as nothing and not as the most that it can be
   */
  record OfLimit(Limit limit, double deviations, boolean asTold) implements Requirement {
    /** As judged. */
    public static OfLimit judged(Limit limit) {
      double deviations =
          limit.inBatches().isPresent() ? Normal.quantile(limit.inBatches().getAsDouble()) : 0;
      return new OfLimit(limit, deviations, false);
    }

    /** In so many of all batches. */
    public static OfLimit in(Limit limit, double part) {
      return new OfLimit(limit, Normal.quantile(part), false);
    }

    /** A limit of law in so many of all batches, by what is told. */
    public static OfLimit margin(LawMargin margin, double part) {
      return new OfLimit(margin.limit(), Normal.quantile(part), true);
    }

    @Override
    public List<Slope> rooms(Slopes feed) {
      Basis basis = limit.basis();
      Bound.Side side = limit.side();
      double bound = limit.inForce();
      return asTold
          ? limit
              .subject()
              .byKind(
                  sum -> feed.roomAsTold(sum, basis, side, bound, deviations),
                  ratio -> List.of(),
                  inclusion -> List.of(),
                  cost -> List.of())
          : feed.room(limit.subject(), basis, side, bound, deviations);
    }

    @Override
    public boolean bends() {
      return deviations != 0;
    }

    @Override
    public <R> R byKind(
        Function<OfLimit, R> limit,
        Function<OfPractice, R> practice,
        Function<OfCap, R> cap,
        Function<OfLabel, R> label,
        Function<OfOrder, R> order,
        Function<OfStock, R> stock) {
      return limit.apply(this);
    }
  }

  /** A bound of practice. */
  record OfPractice(PracticeFigure figure, PracticeBound bound, Bound.Side side)
      implements Requirement {
    @Override
    public List<Slope> rooms(Slopes feed) {
      boolean min = side == Bound.Side.MIN;
      Slope above = figure.above(feed, min ? bound.low() : bound.high());
      return List.of(min ? above : above.negated());
    }

    @Override
    public <R> R byKind(
        Function<OfLimit, R> limit,
        Function<OfPractice, R> practice,
        Function<OfCap, R> cap,
        Function<OfLabel, R> label,
        Function<OfOrder, R> order,
        Function<OfStock, R> stock) {
      return practice.apply(this);
    }
  }

  /**
   * The most of an ingredient that the species takes.
   *
   * @param most in points
   */
  record OfCap(Ingredient ingredient, Ingredient.Cap cap, double most) implements Requirement {
    @Override
    public List<Slope> rooms(Slopes feed) {
      Slope kg =
          feed.kg(row -> row.ingredient().name().equals(ingredient.name()) ? 1 : 0).negated();
      return List.of(new Slope(kg.now() + most, kg.perPoint()));
    }

    @Override
    public <R> R byKind(
        Function<OfLimit, R> limit,
        Function<OfPractice, R> practice,
        Function<OfCap, R> cap,
        Function<OfLabel, R> label,
        Function<OfOrder, R> order,
        Function<OfStock, R> stock) {
      return cap.apply(this);
    }
  }

  /**
   * What a label says of a nutrient, as it would have to stand there.
   *
   * @param bound the least or the most, as fed, that the label still bears
   */
  record OfLabel(LabelVerdict verdict, Bound.Side side, double bound) implements Requirement {
    @Override
    public List<Slope> rooms(Slopes feed) {
      Subject.Nutrients alone =
          new Subject.Nutrients(
              List.of(verdict.claim().nutrient()), verdict.claim().nutrient().name());
      return List.of(feed.labelRoom(alone, side, bound));
    }

    @Override
    public <R> R byKind(
        Function<OfLimit, R> limit,
        Function<OfPractice, R> practice,
        Function<OfCap, R> cap,
        Function<OfLabel, R> label,
        Function<OfOrder, R> order,
        Function<OfStock, R> stock) {
      return label.apply(this);
    }
  }

  /** That there is no less of one ingredient than of another, as a label names them. */
  record OfOrder(String more, String less) implements Requirement {
    @Override
    public List<Slope> rooms(Slopes feed) {
      return List.of(
          feed.kg(
              row ->
                  row.ingredient().name().equals(more)
                      ? 1
                      : row.ingredient().name().equals(less) ? -1 : 0));
    }

    @Override
    public <R> R byKind(
        Function<OfLimit, R> limit,
        Function<OfPractice, R> practice,
        Function<OfCap, R> cap,
        Function<OfLabel, R> label,
        Function<OfOrder, R> order,
        Function<OfStock, R> stock) {
      return order.apply(this);
    }
  }

  /**
   * That no more of an ingredient is taken than there is.
   *
   * @param ingredient that is short
   * @param line of the recipe that it is in
   * @param points that is, per 100 kg of what it is counted for
   */
  record OfStock(String ingredient, Line line, double points, Counted counted)
      implements Requirement {
    /** What is taken, and for what it is counted. */
    public enum Counted {
      /** What the line holds in the feed, for 100 kg of recipe. */
      LINE,
      /** All that is weighed of it, in premixes too, for 100 kg of recipe. */
      WEIGHED,
      /** All that is weighed of it, in premixes too, for 100 kg in the bags. */
      BAGGED
    }

    @Override
    public boolean isLimit() {
      return counted != Counted.LINE;
    }

    @Override
    public List<Slope> rooms(Slopes feed) {
      return List.of(
          switch (counted) {
            case LINE -> left(feed.kg(row -> row.line().index() == line.index() ? 1 : 0));
            case WEIGHED -> left(feed.taken(ingredient));
            case BAGGED -> feed.taken(ingredient).minus(points / WHOLE, feed.bagged()).negated();
          });
    }

    private Slope left(Slope taken) {
      Slope less = taken.negated();
      return new Slope(less.now() + points, less.perPoint());
    }

    @Override
    public <R> R byKind(
        Function<OfLimit, R> limit,
        Function<OfPractice, R> practice,
        Function<OfCap, R> cap,
        Function<OfLabel, R> label,
        Function<OfOrder, R> order,
        Function<OfStock, R> stock) {
      return stock.apply(this);
    }
  }
}
