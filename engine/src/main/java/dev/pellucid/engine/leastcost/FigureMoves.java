package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.leastcost.Reasons.FigureMove;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What moves without a limit on the side to which it moves: where nothing is asked, the cheapest
 * feed goes anywhere. First what a nutritionist looks at, in a fixed order, then the few others
 * that move most.
 */
final class FigureMoves {
  private static final List<String> FIRST =
      List.of(
          "crude-fat",
          "starch",
          "crude-fibre",
          "crude-ash",
          "digestible-protein : digestible-energy",
          "available-phosphorus",
          "n-3-lc-pufa");
  private static final String BETWEEN = " : ";

  /** The groups of what comes from the sea, as far as a folder has them. */
  private static final List<String> MARINE = List.of("fish-meals", "marine-meals", "fish-oils");

  private static final String MARINE_TITLE = "Fish meal, fish oil and other marine ingredients";

  /** By how much one of the others moves at least, as a part of what it was. */
  private static final double MUCH = 0.05;

  private static final int OTHERS = 6;

  private final RuleContext recipe;
  private final Readings now;
  private final Readings then;
  private final Set<String> done = new HashSet<>();

  private FigureMoves(RuleContext recipe, ComputedFeed now, ComputedFeed then) {
    this.recipe = recipe;
    this.now = new Readings(now);
    this.then = new Readings(then);
  }

  /**
   * @param then the feed with the shares as they would be written
   */
  static List<FigureMove> of(RuleContext recipe, ComputedFeed then) {
    return recipe.feed().isPresent()
        ? new FigureMoves(recipe, recipe.feed().get(), then).all()
        : List.of();
  }

  private List<FigureMove> all() {
    List<FigureMove> moves = new ArrayList<>();
    for (String name : FIRST) {
      subject(name).ifPresent(subject -> first(subject, moves));
    }
    marine(moves);
    moves.addAll(others());
    return moves;
  }

  private void first(Subject subject, List<FigureMove> moves) {
    done.add(subject.text());
    FigureMove move = move(subject);
    if (Math.abs(move.then() - move.now()) > digit(move.now()) && !isLimited(move)) {
      moves.add(move);
    }
  }

  private void marine(List<FigureMove> moves) {
    Unit unit = Unit.PERCENT;
    String name = "inclusion " + String.join(" + ", MARINE);
    FigureMove move =
        new FigureMove(
            name,
            MARINE_TITLE,
            unit,
            unit.fromBase(now.inclusion(MARINE)),
            unit.fromBase(then.inclusion(MARINE)));
    if (Math.abs(move.then() - move.now()) > digit(move.now()) && !isLimited(move)) {
      moves.add(move);
    }
  }

  private List<FigureMove> others() {
    List<FigureMove> others = new ArrayList<>();
    for (Nutrient one : recipe.tables().nutrients().inOrder()) {
      Subject alone = new Subject.Nutrients(List.of(one), one.name());
      if (!one.whereTold() && one.partOf().isEmpty() && !done.contains(one.name())) {
        FigureMove move = move(alone);
        if (part(move) > MUCH && !isLimited(move)) {
          others.add(move);
        }
      }
    }
    others.sort(Comparator.comparingDouble(FigureMoves::part).reversed());
    return others.subList(0, Math.min(OTHERS, others.size()));
  }

  private static double part(FigureMove move) {
    return move.now() > 0 ? Math.abs(move.then() / move.now() - 1) : 0;
  }

  private Optional<Subject> subject(String name) {
    int between = name.indexOf(BETWEEN);
    if (between < 0) {
      return nutrient(name).map(one -> one);
    }
    Optional<Subject.Nutrients> over = nutrient(name.substring(0, between));
    Optional<Subject.Nutrients> under = nutrient(name.substring(between + BETWEEN.length()));
    return over.isPresent() && under.isPresent()
        ? Optional.of(
            new Subject.Ratio(over.get(), under.get(), Subject.RatioKind.PER_ENERGY, name))
        : Optional.empty();
  }

  private Optional<Subject.Nutrients> nutrient(String name) {
    return recipe
        .tables()
        .nutrients()
        .named(name)
        .map(one -> new Subject.Nutrients(List.of(one), name));
  }

  private FigureMove move(Subject subject) {
    Unit unit = subject.isRatio() ? Unit.G_PER_MJ : subject.nutrients().get(0).unit();
    return new FigureMove(
        subject.text(),
        subject.title(),
        unit,
        unit.fromBase(figure(now, subject)),
        unit.fromBase(figure(then, subject)));
  }

  private static double figure(Readings feed, Subject subject) {
    return feed.at(subject, new Basis.AsFed(), Scenario.EXPECTED).value();
  }

  /** The last digit that is looked at: a tenth, of what is small a hundredth or less. */
  private static double digit(double value) {
    return value >= 1 ? 0.1 : value >= 0.1 ? 0.01 : Math.max(1e-9, value / 10);
  }

  private boolean isLimited(FigureMove move) {
    Bound.Side side = move.then() > move.now() ? Bound.Side.MAX : Bound.Side.MIN;
    for (LimitStatus status : recipe.limits()) {
      Limit limit = status.limit();
      if (limit.side() == side && limit.subject().text().equals(move.name())) {
        return true;
      }
    }
    return false;
  }
}
