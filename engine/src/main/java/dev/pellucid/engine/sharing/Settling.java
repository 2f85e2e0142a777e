package dev.pellucid.engine.sharing;

import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.leastcost.Portion;
import dev.pellucid.engine.leastcost.Portion.Settled;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.JointAnswer;
import dev.pellucid.engine.optimise.JointOptimiser;
import dev.pellucid.engine.optimise.JointTask;
import dev.pellucid.engine.optimise.JointTask.Scarce;
import dev.pellucid.engine.optimise.JointTask.Until;
import dev.pellucid.engine.optimise.Requirement.OfStock;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.sharing.SharedOut.Standing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Brings each feed into its portion of what is short: rounded, proven, and held once more against
 * what there is, as written and as weighed. Where a feed finds no shares to write within its
 * portion, so much is kept back of the supply that it can have a step more, and all is shared out
 * again.
 */
final class Settling {
  private static final double WHOLE = 100;
  private static final int TRIES = 7;

  /** By how much of its portion a feed may be over it by the noise of sums. */
  private static final double NOISE = 1e-9;

  private final Solver solver;
  private final Portion portion;

  Settling(Solver solver, FeedComputer computer) {
    this.solver = solver;
    this.portion = new Portion(solver, computer);
  }

  /** What came of it. */
  static final class Result {
    private final boolean tooTight;
    private final String why;
    private final Told told;

    private Result(boolean tooTight, String why, Told told) {
      this.tooTight = tooTight;
      this.why = why;
      this.told = told;
    }

    /** Whether what is made leaves no room to write shares down. */
    boolean isTooTight() {
      return tooTight;
    }

    SharedOut told(boolean all, SortedMap<String, Double> lacks) {
      return why.isEmpty()
          ? told.out(all ? Standing.ALL_MADE : Standing.SOME_MADE, lacks)
          : SharedOut.notProven(why);
    }
  }

  /** Nothing can be made. */
  Result nothing(List<Wanted> wanted, List<Wanted> made, List<Supply> supplies) {
    return new Result(false, "", Told.nothing(wanted, made, supplies));
  }

  /**
   * Each feed in its portion.
   *
   * @param made what of it is made; a feed of which nothing is made has no place in the answer
   */
  Result of(
      List<Wanted> wanted, List<Wanted> made, List<Supply> supplies, JointAnswer.Found first) {
    List<Wanted> some = made.stream().filter(one -> one.kg() > 0).toList();
    Spare spare = new Spare(some, supplies);
    JointAnswer.Found found = first;
    String why = "";
    for (int i = 0; i < TRIES; i++) {
      List<Settled> settled = settled(some, found, spare);
      Optional<String> against = against(some, settled);
      if (against.isEmpty() && !spare.keepsBack(over(first.task(), some, settled))) {
        return new Result(false, "", new Told(solver, wanted, made, supplies, first, settled));
      }
      why = against.orElse("the plan takes more than there is when it is weighed");
      if (against.isPresent() && !spare.grows(settled, found)) {
        return new Result(false, why, Told.nothing(wanted, made, supplies));
      }
      JointAnswer again =
          new JointOptimiser(solver)
              .near(Joining.of(some, supplies, spare.reserved()), found.shares());
      Optional<JointAnswer.Found> next =
          again.byKind(Optional::of, unmet -> Optional.empty(), undecided -> Optional.empty());
      if (next.isEmpty()) {
        return new Result(true, why, Told.nothing(wanted, made, supplies));
      }
      found = next.get();
    }
    return new Result(true, why, Told.nothing(wanted, made, supplies));
  }

  private static Optional<String> against(List<Wanted> some, List<Settled> settled) {
    for (int f = 0; f < settled.size(); f++) {
      if (!settled.get(f).isProven()) {
        return Optional.of(some.get(f).code() + ": " + settled.get(f).against());
      }
    }
    return Optional.empty();
  }

  private List<Settled> settled(List<Wanted> some, JointAnswer.Found found, Spare spare) {
    List<Settled> settled = new ArrayList<>();
    double[] left = left(found);
    for (int f = 0; f < some.size(); f++) {
      List<OfStock> portions = new ArrayList<>();
      for (int s = 0; s < found.task().scarce().size(); s++) {
        String ingredient = found.task().scarce().get(s).ingredient();
        double kg = found.taken(f, ingredient) + left[s] / some.size() + spare.of(f, s);
        Optional<Line> line = line(some.get(f), ingredient);
        if (line.isPresent()) {
          double points = kg / some.get(f).kg() * WHOLE * (1 + NOISE);
          portions.add(new OfStock(ingredient, line.get(), points, some.get(f).counted()));
        }
      }
      settled.add(portion.within(some.get(f).posed(), portions));
    }
    return settled;
  }

  /** The kg of each that nobody takes, and that all may take on all days. */
  private static double[] left(JointAnswer.Found found) {
    List<Scarce> all = found.task().scarce();
    double[] left = new double[all.size()];
    for (int s = 0; s < left.length; s++) {
      List<Double> takes = new ArrayList<>();
      for (int f = 0; f < found.feeds().size(); f++) {
        takes.add(found.taken(f, all.get(s).ingredient()));
      }
      left[s] = Math.max(0, -over(all.get(s), takes));
    }
    return left;
  }

  /** By how much more is taken than there is, on the day on which it is most; else below zero. */
  private static double over(Scarce scarce, List<Double> takes) {
    double over = takes.stream().mapToDouble(Double::doubleValue).sum() - scarce.kg();
    for (Until until : scarce.until()) {
      double late = 0;
      for (int f = 0; f < takes.size(); f++) {
        late += takes.get(f) * until.parts().get(f);
      }
      over = Math.max(over, late - (scarce.kg() - until.lessKg()));
    }
    return over;
  }

  /** The first that holds it. */
  static Optional<Line> line(Wanted wanted, String ingredient) {
    for (Line line : wanted.posed().task().feed().recipe().lines()) {
      boolean holds =
          line.material().reworked().isEmpty()
              && line.material().ingredients().stream()
                  .anyMatch(one -> one.name().equals(ingredient));
      if (holds) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  /** The kg of each supply that are taken and not there. */
  private static double[] over(JointTask task, List<Wanted> some, List<Settled> settled) {
    double[] over = new double[task.scarce().size()];
    for (int s = 0; s < over.length; s++) {
      Scarce scarce = task.scarce().get(s);
      List<Double> takes = new ArrayList<>();
      double unspared = 0;
      for (int f = 0; f < some.size(); f++) {
        Wanted one = some.get(f);
        String name = scarce.ingredient();
        takes.add(Takes.most(one.made(), settled.get(f).tried().orElseThrow(), name));
        unspared += one.spared(name, LocalDate.MIN) - one.spared(name, settled.get(f).feed());
      }
      over[s] = over(scarce, takes) + unspared - NOISE * 2 * scarce.kg();
    }
    return over;
  }

  /** What is kept back of each supply for each feed, and for all. */
  private static final class Spare {
    private static final double MORE = 1.1;

    private final List<Wanted> some;
    private final double[][] ofFeeds;
    private final double[] ofAll;

    Spare(List<Wanted> some, List<Supply> supplies) {
      this.some = some;
      this.ofFeeds = new double[some.size()][supplies.size()];
      this.ofAll = new double[supplies.size()];
    }

    double of(int feed, int scarce) {
      return ofFeeds[feed][scarce];
    }

    double[] reserved() {
      double[] reserved = ofAll.clone();
      for (double[] of : ofFeeds) {
        for (int s = 0; s < reserved.length; s++) {
          reserved[s] += of[s];
        }
      }
      return reserved;
    }

    /** Whether more is taken than there is; then so much is kept back. */
    boolean keepsBack(double[] over) {
      boolean any = false;
      for (int s = 0; s < over.length; s++) {
        ofAll[s] += Math.max(0, over[s]) * MORE;
        any |= over[s] > 0;
      }
      return any;
    }

    /** A step more for each that found nothing; false where that cannot help. */
    boolean grows(List<Settled> settled, JointAnswer.Found found) {
      boolean any = false;
      for (int f = 0; f < settled.size(); f++) {
        double step = Portion.step(some.get(f).posed()) / WHOLE * some.get(f).kg();
        for (int s = 0; s < ofAll.length && !settled.get(f).isProven(); s++) {
          if (found.taken(f, found.task().scarce().get(s).ingredient()) > 0) {
            ofFeeds[f][s] = Math.max(step, ofFeeds[f][s] * 2);
            any = true;
          }
        }
      }
      return any;
    }
  }
}
