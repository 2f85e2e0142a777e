package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.PartWords;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.leastcost.Contradiction.Loosening;
import dev.pellucid.engine.leastcost.Contradiction.Member;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Contradicting;
import dev.pellucid.engine.optimise.Ease;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Part;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Why nothing keeps all that is asked of a recipe, and what may be loosened: each that does alone,
 * else as few as it takes together. Each is proven by solving again with it.
 */
final class Contradictions {
  /** So many are loosened together at most. */
  private static final int TOGETHER = 5;

  /** What is offered before what. */
  private static final List<Ease> ORDER =
      List.of(Ease.MOVE, Ease.LINE, Ease.RECIPE, Ease.PRACTICE, Ease.LABEL);

  /** Where more lines than are read would have to be widened together. */
  private static final List<Ease> LIMITS_FIRST =
      List.of(Ease.MOVE, Ease.RECIPE, Ease.LINE, Ease.PRACTICE, Ease.LABEL);

  private static final double SMALL = 1e-9;

  private final Solver solver;
  private final Posed posed;
  private final Task task;

  /**
   * @param task with its lines as far apart as they tell, whatever may move this time
   */
  private Contradictions(Solver solver, Posed posed, Task task) {
    this.solver = solver;
    this.posed = posed;
    this.task = task;
  }

  /**
   * A contradiction.
   *
   * @param isOfNever whether it is of nothing but what is never loosened
   */
  record Shown(Contradiction contradiction, boolean isOfNever) {}

  /** Empty where it cannot be shown. */
  static Optional<Shown> of(Posed posed, Solver solver, FeedComputer computer) {
    return unmoved(posed, computer)
        .flatMap(task -> new Contradictions(solver, posed, task).found());
  }

  /**
   * The bound of all moves holds each of them too, so the lines may stand as far apart as they
   * tell.
   */
  private static Optional<Task> unmoved(Posed posed, FeedComputer computer) {
    Wishes wishes = posed.wishes();
    if (wishes.move().isEmpty()) {
      return Optional.of(posed.task());
    }
    double most = wishes.move().getAsDouble();
    return Posed.of(
            posed.recipe(), wishes.moving(OptionalDouble.empty()), computer, posed.holding())
        .map(Posed::task)
        .map(it -> new Task(it.feed(), it.free(), it.kept(), most, it.aim()));
  }

  private Optional<Shown> found() {
    return Contradicting.of(task, solver, this::ease).map(this::told);
  }

  private Shown told(List<Part> parts) {
    List<Member> members = new ArrayList<>();
    if (Contradicting.needsTotal(task, parts, solver)) {
      members.add(total());
    }
    for (Ease ease : Ease.values()) {
      for (Part part : parts) {
        if (ease(part) == ease) {
          members.add(member(part));
        }
      }
    }
    return new Shown(
        new Contradiction(members, new Reached(task, solver).of(parts), loosenings(parts)),
        readily(parts, ORDER).isEmpty());
  }

  /** What may not rise for what the folder does not tell, or is left out, is not loosened. */
  private Ease ease(Part part) {
    return part.byKind(
        kept -> part.ease(),
        least -> part.ease(),
        most -> isHeld(most) ? Ease.NEVER : part.ease(),
        moves -> part.ease());
  }

  private static boolean isHeld(Part.Most most) {
    Optional<Line.Within> within = most.line().within();
    return within.isEmpty() || most.points() < within.get().high() * Free.ALL;
  }

  private Member member(Part part) {
    return new Member(
        part.byKind(
            kept -> Optional.of(kept.of().of()),
            least -> Optional.empty(),
            most -> Optional.empty(),
            moves -> Optional.empty()),
        part.byKind(
            kept -> Optional.empty(),
            least -> Optional.of(task.free().get(least.index())),
            most -> Optional.of(task.free().get(most.index())),
            moves -> Optional.empty()),
        part.byKind(
            kept -> Bound.Side.MIN,
            least -> Bound.Side.MIN,
            most -> Bound.Side.MAX,
            moves -> Bound.Side.MAX),
        words(part),
        PartWords.place(part));
  }

  private String words(Part part) {
    return part.byKind(
        kept -> PartWords.of(part),
        least -> PartWords.of(part),
        most -> isHeld(most) ? held(most) : PartWords.of(part),
        moves -> PartWords.of(part));
  }

  private String held(Part.Most most) {
    String name = most.line().material().name();
    if (posed.wishes().without().contains(name)) {
      return name + " does not come (-Dpellucid.without)";
    }
    for (Refusal one : posed.held()) {
      if (one.ingredient().equals(name)) {
        return name
            + " not above its "
            + Figures.plain(most.points())
            + " % of today ("
            + one.file()
            + ": "
            + one.missing()
            + ")";
      }
    }
    return PartWords.of(most);
  }

  private Member total() {
    double freeLines = 0;
    for (Free one : task.free()) {
      freeLines += one.written();
    }
    double all = 0;
    for (Line line : task.feed().recipe().lines()) {
      all += line.designed().kgPer100();
    }
    String words =
        all - freeLines < SMALL
            ? "all shares together are 100 %"
            : "the lines that stay as they are make "
                + Figures.plain(all - freeLines)
                + " %, so that the others must make "
                + Figures.plain(freeLines)
                + " %";
    return new Member(
        Optional.empty(),
        Optional.empty(),
        Bound.Side.MIN,
        words,
        Optional.of(posed.recipe().recipe().declared()));
  }

  private List<Loosening> loosenings(List<Part> parts) {
    List<Loosening> found = new ArrayList<>();
    for (Part part : readily(parts, ORDER)) {
      Loosened.of(task, part, solver)
          .ifPresent(it -> found.add(new Loosening(it.words(), it.place())));
    }
    if (found.isEmpty()) {
      together(parts, ORDER).or(() -> together(parts, LIMITS_FIRST)).ifPresent(found::add);
    }
    return found;
  }

  /** In this order; without what is never loosened. */
  private List<Part> readily(List<Part> parts, List<Ease> eases) {
    List<Part> order = new ArrayList<>();
    for (Ease ease : eases) {
      for (Part part : parts) {
        if (ease(part) == ease) {
          order.add(part);
        }
      }
    }
    return order;
  }

  /** One part after the other is taken out, of each set the one that is loosened most readily. */
  private Optional<Loosening> together(List<Part> first, List<Ease> order) {
    List<Part> out = new ArrayList<>();
    Optional<List<Part>> set = Optional.of(first);
    while (set.isPresent() && out.size() < TOGETHER) {
      List<Part> readily = readily(set.get(), order);
      if (readily.isEmpty()) {
        return Optional.empty();
      }
      out.add(readily.get(0));
      Task without = Part.without(task, out);
      if (Loosened.isMet(without, solver)) {
        return eachInTurn(out);
      }
      set = Contradicting.of(without, solver, this::ease);
    }
    return Optional.empty();
  }

  /** Each is put back as near as the others leave it, with those before as they were put back. */
  private Optional<Loosening> eachInTurn(List<Part> out) {
    List<String> words = new ArrayList<>();
    Optional<Span> place = PartWords.place(out.get(0));
    Task so = task;
    for (int i = 0; i < out.size(); i++) {
      Task without = Part.without(so, out.subList(i + 1, out.size()));
      Optional<Loosened> one = Loosened.of(without, out.get(i), solver);
      if (one.isEmpty()) {
        return Optional.empty();
      }
      words.add(one.get().words());
      so = one.get().change().apply(so);
    }
    return Loosened.isMet(so, solver)
        ? Optional.of(new Loosening(String.join(", and ", words), place))
        : Optional.empty();
  }
}
