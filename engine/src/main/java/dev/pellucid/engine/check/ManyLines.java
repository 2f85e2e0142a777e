package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Normal;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Aim;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Contradicting;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.optimise.OtherBound;
import dev.pellucid.engine.optimise.Part;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Rounding;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.weighing.Reweighed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The smallest change of all free lines that meets some limits, keeps what is kept and makes
 * nothing worse that is broken: the points by which lines rise, all together, are as few as can be.
 * It is rounded to figures that a person writes and proven as every other help is. This and what it
 * asks are the only classes of the room that bring in the solver.
 */
final class ManyLines {
  /** So often it is asked to leave more to spare. */
  private static final int TRIES = 4;

  private static final double LARGE = 0.5;
  private static final double SMALL = 0.05;

  private final RuleContext recipe;
  private final List<Limit> targets;
  private final Freedom freedom;
  private final Moves moves;
  private final Task task;

  /** What the last change that was not proven would bring with it. */
  private String against = "";

  /**
   * @param targets broken limits, which are to be met
   */
  ManyLines(RuleContext recipe, List<Limit> targets) {
    this(recipe, targets, Freedom.ANY);
  }

  /** The same with more to heed. */
  ManyLines(RuleContext recipe, List<Limit> targets, Freedom freedom) {
    this.recipe = recipe;
    this.targets = targets;
    this.freedom = freedom;
    this.moves = recipe.fixing().moves(recipe);
    this.task = task();
  }

  private List<Free> free(boolean toldAlone) {
    List<Free> free = new ArrayList<>();
    for (Line line : recipe.recipe().lines()) {
      boolean told = line.rest() || line.within().isPresent() || !toldAlone;
      told &= !freedom.fixed().contains(line.index());
      if (told && (line.rest() || moves.free().contains(line))) {
        double now = Moves.points(line);
        boolean orNone = line.within().filter(Line.Within::orNone).isPresent();
        double step = line.step().isPresent() ? line.step().get().part() * Free.ALL : 0;
        free.add(new Free(line, now - moves.down(line), now + up(line), orNone, step));
      }
    }
    return free;
  }

  private double up(Line line) {
    return freedom.held().contains(line.index()) ? 0 : moves.up(line);
  }

  private Task task() {
    ComputedFeed feed = recipe.feed().orElseThrow();
    Slopes slopes = new Slopes(feed);
    List<Tightened> kept = new ArrayList<>();
    for (Requirement one : Required.of(recipe, OptionalDouble.empty(), List.of())) {
      boolean asked = isTarget(one) || isKept(one, slopes);
      kept.add(asked ? new Tightened(one, 0) : OtherBound.noWorse(one, slopes));
    }
    for (Limit target : targets) {
      if (LawMargin.isOf(target)) {
        double keptIn = Normal.quantile(recipe.tables().settings().lawKeptIn());
        kept.add(new Tightened(new Requirement.OfLimit(target, keptIn, true), 0));
      }
    }
    return new Task(feed, free(false), kept, Double.POSITIVE_INFINITY, Aim.CHANGE);
  }

  private boolean isTarget(Requirement one) {
    return one.byKind(
        limit -> !limit.asTold() && targets.contains(limit.limit()),
        practice -> false,
        cap -> false,
        label -> false,
        order -> false,
        stock -> false);
  }

  private static boolean isKept(Requirement one, Slopes feed) {
    for (Slope room : one.rooms(feed)) {
      if (room.now() < 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether it is shown that no shares within their bounds do. */
  boolean isImpossible() {
    return solved(task).byKind(found -> false, none -> true, undecided -> false);
  }

  /** Empty where none was found and proven; one of lines alone that tell a within goes before. */
  Optional<Change> change() {
    List<Free> told = free(true);
    return change(task.with(told)).or(() -> change(task));
  }

  private Optional<Change> change(Task some) {
    if (some.free().size() < 2) {
      return Optional.empty();
    }
    Answer answer = solved(some);
    for (int i = 0; i < TRIES; i++) {
      Optional<Answer.Found> found = found(answer);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      Optional<Change> change = proven(found.get());
      if (change.isPresent()) {
        return change;
      }
      Optional<List<Tightened>> tighter = tighter(found.get());
      if (tighter.isEmpty()) {
        return Optional.empty();
      }
      answer = solved(found.get().task().keeping(tighter.get()));
    }
    return Optional.empty();
  }

  private static Answer solved(Task task) {
    return new Optimiser(Solver.standard()).solve(task);
  }

  private static Optional<Answer.Found> found(Answer answer) {
    return answer.byKind(Optional::of, none -> Optional.empty(), undecided -> Optional.empty());
  }

  private Optional<Change> proven(Answer.Found found) {
    int more = freedom.decimals().isPresent() ? 0 : 1;
    for (int decimals = decimals(found), most = decimals + more; decimals <= most; decimals++) {
      Optional<Change> change = rounded(found, decimals);
      if (change.isPresent()) {
        Proof proof = new Proof(recipe, targets);
        Optional<RuleContext> tried = recipe.fixing().again().with(change.get().edits());
        if (proof.holds(tried) && isLawKept(tried.orElseThrow())) {
          return Optional.of(change.get().relabelled(proof.relabels(tried.orElseThrow())));
        }
        against = tried.flatMap(proof::against).orElse(against);
      }
    }
    return Optional.empty();
  }

  /** Whether the law that was to be met is kept in as many batches as the folder asks. */
  private boolean isLawKept(RuleContext tried) {
    for (LimitStatus status : tried.limits()) {
      if (targets.contains(status.limit()) && SmallestChange.isTooNear(tried, status)) {
        return false;
      }
    }
    return true;
  }

  private int decimals(Answer.Found found) {
    if (freedom.decimals().isPresent()) {
      return freedom.decimals().getAsInt();
    }
    double rises = 0;
    for (int i = 0; i < found.shares().length; i++) {
      rises += Math.max(0, found.shares()[i] - found.task().free().get(i).written());
    }
    return rises >= LARGE ? 1 : rises >= SMALL ? 2 : 3;
  }

  /** In whole steps from the shares as they are written. */
  private Optional<Change> rounded(Answer.Found found, int decimals) {
    Optional<double[]> shares = onScales(found, decimals);
    if (shares.isEmpty()) {
      return Optional.empty();
    }
    List<Change.Moved> moved = new ArrayList<>();
    for (int i = 0; i < shares.get().length; i++) {
      Free one = found.task().free().get(i);
      BigDecimal points =
          BigDecimal.valueOf(shares.get()[i] - one.written())
              .setScale(decimals, RoundingMode.HALF_EVEN);
      if (points.signum() != 0) {
        moved.add(new Change.Moved(one.line(), points));
      }
    }
    return moved.isEmpty()
        ? Optional.empty()
        : Optional.of(new Change(moved, targets.size(), List.of()));
  }

  /**
   * Where no shares near keep all as the plant weighs them, those that do as written: the proof
   * sees to the rest.
   */
  private Optional<double[]> onScales(Answer.Found found, int decimals) {
    Optional<Reweighed> scales = recipe.floor().reweighed(found.task().feed());
    Optional<double[]> shares = new Rounding(Solver.standard(), decimals, scales).of(found);
    return shares.isPresent() || freedom.decimals().isEmpty()
        ? shares
        : new Rounding(Solver.standard(), decimals, Optional.empty()).of(found);
  }

  /** With what the rounded feed lacks to spare, and its batch as the plant weighs it. */
  private Optional<List<Tightened>> tighter(Answer.Found found) {
    Optional<RuleContext> tried =
        rounded(found, decimals(found)).flatMap(it -> recipe.fixing().again().with(it.edits()));
    if (tried.flatMap(RuleContext::feed).isEmpty()) {
      return Optional.empty();
    }
    ComputedFeed feed = tried.get().feed().orElseThrow();
    List<Slopes> feeds = new ArrayList<>(List.of(new Slopes(feed)));
    tried
        .get()
        .floor()
        .plan()
        .flatMap(plan -> feed.weighed(plan.asRounded(feed.recipe())).feed())
        .ifPresent(rounded -> feeds.add(new Slopes(rounded)));
    List<Tightened> tighter = new ArrayList<>(found.task().kept());
    tighter.replaceAll(it -> it.by(feeds));
    return tighter.equals(found.task().kept()) ? Optional.empty() : Optional.of(tighter);
  }

  /** What stood against the last change that was tried; empty where none was. */
  String against() {
    return against;
  }

  /** The parts that stand against each other; none where it is not shown that no shares do. */
  List<Part> contradicting() {
    return Contradicting.of(task, Solver.standard(), Part::ease).orElse(List.of());
  }

  /** What stands against a limit where no shares within their bounds meet it and keep all else. */
  Optional<String> against(Limit limit) {
    return new StandsAgainst(task).words(limit);
  }
}
