package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.PartWords;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Aim;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.OtherBound;
import dev.pellucid.engine.optimise.Part;
import dev.pellucid.engine.optimise.Reaching;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/**
 * One part of a task loosened by as little as makes it possible, to a figure that a person writes,
 * and proven by solving again.
 *
 * @param change of the task
 * @param words what, and how far
 */
record Loosened(UnaryOperator<Task> change, String words, Optional<Span> place) {
  /** Roundings outwards that are tried. */
  private static final int STEPS = 6;

  /** What is left at least for the rounding of shares, as a part of a step. */
  private static final double SPARE = 0.2;

  private static final int FEW_DIGITS = 100;
  private static final int MOST_DECIMALS = 9;

  /** Empty where it alone does not do, or is not loosened. */
  static Optional<Loosened> of(Task task, Part part, Solver solver) {
    Task without = Part.without(task, List.of(part));
    Reaching reaching = new Reaching(without, solver);
    return part.byKind(
        kept -> kept(task, kept, reaching, solver),
        least -> line(task, least.index(), reaching.most(least.index()), false, part, solver),
        most -> line(task, most.index(), reaching.least(most.index()), true, part, solver),
        moves -> move(task, moves, without, solver));
  }

  /** The edge of what can be met, as a figure with so many decimals that lies beyond it. */
  private static double beyond(double edge, int decimals, boolean up, int more) {
    double step = Math.pow(10, -decimals);
    double steps = edge / step;
    double whole = up ? Math.ceil(steps + SPARE) + more : Math.floor(steps - SPARE) - more;
    return whole / Math.pow(10, decimals);
  }

  private static int decimals(double figure, int atLeast) {
    int decimals = atLeast;
    while (figure != 0
        && decimals < MOST_DECIMALS
        && Math.abs(figure) * Math.pow(10, decimals) < FEW_DIGITS) {
      decimals++;
    }
    return decimals;
  }

  /** The first figure beyond the edge with which some shares keep all. */
  private static Optional<Loosened> first(
      Task task,
      double edge,
      int decimals,
      boolean up,
      Solver solver,
      DoubleFunction<UnaryOperator<Task>> with,
      DoubleFunction<String> words,
      Optional<Span> place) {
    for (int more = 0; more < STEPS; more++) {
      double figure = beyond(edge, decimals, up, more);
      UnaryOperator<Task> change = with.apply(figure);
      if (isMet(change.apply(task), solver)) {
        return Optional.of(new Loosened(change, words.apply(figure), place));
      }
    }
    return Optional.empty();
  }

  static boolean isMet(Task task, Solver solver) {
    return new Optimiser(solver)
        .solve(task.aiming(Aim.CHANGE))
        .byKind(found -> true, none -> false, undecided -> false);
  }

  private static Optional<Loosened> line(
      Task task, int index, OptionalDouble edge, boolean up, Part part, Solver solver) {
    if (edge.isEmpty()) {
      return Optional.empty();
    }
    Free free = task.free().get(index);
    String name = free.line().material().name();
    double was = up ? free.high() : free.low();
    return first(
        task,
        edge.getAsDouble(),
        decimals(edge.getAsDouble(), 1),
        up,
        solver,
        share -> it -> ended(it, index, up, share),
        share ->
            "widen the within of "
                + name
                + (up ? " up to " : " down to ")
                + Figures.plain(share)
                + " % in place of "
                + Figures.plain(was)
                + " %",
        PartWords.place(part));
  }

  private static Task ended(Task task, int index, boolean up, double share) {
    Free was = task.free().get(index);
    List<Free> free = new ArrayList<>(task.free());
    double low = up ? was.low() : Math.max(0, share);
    double high = up ? Math.min(Free.ALL, share) : was.high();
    free.set(index, was.between(low, high));
    return task.with(free);
  }

  private static Optional<Loosened> move(Task task, Part.Moves moves, Task without, Solver solver) {
    Answer answer = new Optimiser(solver).solve(without.aiming(Aim.CHANGE));
    OptionalDouble least =
        answer.byKind(
            found -> OptionalDouble.of(rises(found)),
            none -> OptionalDouble.empty(),
            undecided -> OptionalDouble.empty());
    return least.isEmpty()
        ? Optional.empty()
        : first(
            task,
            least.getAsDouble(),
            1,
            true,
            solver,
            points -> it -> new Task(it.feed(), it.free(), it.kept(), points, it.aim()),
            points ->
                "move up to "
                    + PartWords.points(points)
                    + " in place of "
                    + Figures.plain(moves.points())
                    + " (-Dpellucid.move)",
            Optional.empty());
  }

  private static double rises(Answer.Found found) {
    double rises = 0;
    for (int i = 0; i < found.shares().length; i++) {
      rises += Math.max(0, found.shares()[i] - found.task().free().get(i).written());
    }
    return rises;
  }

  private static Optional<Loosened> kept(
      Task task, Part.Kept kept, Reaching reaching, Solver solver) {
    Requirement one = kept.of().of();
    if (OtherBound.of(one, 0).isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble edge = reaching.nearest(one);
    if (edge.isEmpty()) {
      return Optional.empty();
    }
    Scale scale = Scale.of(one);
    double figure = scale.fromBase(edge.getAsDouble());
    int decimals = decimals(figure, scale.decimals());
    return first(
        task,
        figure,
        decimals,
        !scale.isMin(),
        solver,
        bound -> it -> bounded(it, kept, scale.toBase(bound)),
        bound -> scale.words(bound, decimals),
        PartWords.place(kept));
  }

  private static Task bounded(Task task, Part.Kept kept, double bound) {
    Requirement other = OtherBound.of(kept.of().of(), bound).orElseThrow();
    List<Tightened> all = new ArrayList<>(task.kept());
    all.replaceAll(it -> it.equals(kept.of()) ? new Tightened(other, it.spare()) : it);
    return task.keeping(all);
  }

  /**
   * How a bound is told.
   *
   * @param unit empty for a bare quotient
   * @param before the bound, in words
   * @param was the bound, as it is written
   */
  private record Scale(
      boolean isMin, Optional<Unit> unit, int decimals, String before, String was, String symbol) {
    private static final Scale NONE = new Scale(false, Optional.empty(), 1, "", "", "");

    static Scale of(Requirement one) {
      return one.byKind(
          limit -> {
            boolean isMin = limit.limit().side() == Bound.Side.MIN;
            boolean own = limit.limit().origin().kind() == Limit.Kind.RECIPE;
            Bound.Limit written = limit.limit().writtenInForce();
            return new Scale(
                isMin,
                written.measured().map(it -> it.unit()),
                Math.max(0, written.figure().scale()),
                (own ? "ask for " : "let " + limit.limit().origin().name() + " ask for ")
                    + limit.limit().subject().text()
                    + (isMin ? " at least " : " at most "),
                written.asWritten(),
                written.unitAsWritten());
          },
          practice -> {
            boolean isMin = practice.side() == Bound.Side.MIN;
            return new Scale(
                isMin,
                Optional.of(Unit.PERCENT),
                1,
                "let practice/bounds.yaml take "
                    + practice.figure().bound().word()
                    + (isMin ? " from " : " up to "),
                Figures.plain(
                    isMin ? practice.bound().low() : practice.bound().high(), Unit.PERCENT),
                " %");
          },
          cap -> NONE,
          label -> {
            boolean isMin = label.side() == Bound.Side.MIN;
            Unit unit = label.verdict().claim().written().unit();
            return new Scale(
                isMin,
                Optional.of(unit),
                1,
                "print a label that bears "
                    + label.verdict().claim().nutrient().name()
                    + (isMin ? " down to " : " up to "),
                Figures.plain(label.bound(), unit),
                " " + unit.symbol());
          },
          order -> NONE,
          stock -> NONE);
    }

    double fromBase(double base) {
      return unit.isPresent() ? unit.get().fromBase(base) : base;
    }

    double toBase(double figure) {
      return unit.isPresent() ? unit.get().toBase(figure) : figure;
    }

    String words(double figure, int digits) {
      return before + Figures.fixed(figure, digits) + symbol + " in place of " + was;
    }
  }
}
