package dev.pellucid.engine.sharing;

import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.JointAnswer;
import dev.pellucid.engine.optimise.JointOptimiser;
import dev.pellucid.engine.optimise.JointTask;
import dev.pellucid.engine.optimise.JointTask.Scarce;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.sharing.SharedOut.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Shares out what is short: all feeds as one program, then each recipe within its portion, rounded
 * and proven as least cost does it. Where there is not enough for all, it is found out first how
 * much more would be enough, and how much can be made.
 */
public final class ShareOut {
  /** What is had elsewhere costs so many times its price, so that it is had last of all. */
  private static final double DEAR = 1000;

  private static final double LEAST_PRICE = 0.01;
  private static final double NOTHING = 1e-6;

  /** So much of each supply more is kept back, where what is made leaves no room to round. */
  private static final double MORE = 2e-3;

  private static final int TRIES = 6;

  private final Solver solver;
  private final Settling settling;

  public ShareOut(Solver solver, FeedComputer computer) {
    this.solver = solver;
    this.settling = new Settling(solver, computer);
  }

  /**
   * Shares out.
   *
   * @param wanted at least one feed; each can be met by itself
   * @param supplies of each ingredient one
   */
  public SharedOut of(List<Wanted> wanted, List<Supply> supplies) {
    Optional<String> alone = notAlone(wanted);
    if (alone.isPresent()) {
      return SharedOut.notProven(alone.get());
    }
    JointTask task = Joining.of(wanted, supplies, new double[supplies.size()]);
    return new JointOptimiser(solver)
        .solve(task)
        .byKind(
            found -> all(wanted, supplies, found),
            unmet -> some(wanted, supplies),
            undecided -> SharedOut.notProven(undecided.why()));
  }

  /** A feed that keeps its limits with no shares at all, whatever there is. */
  private Optional<String> notAlone(List<Wanted> wanted) {
    for (Wanted one : wanted) {
      Optional<String> why =
          new Optimiser(solver)
              .solve(one.posed().task())
              .byKind(
                  found -> Optional.empty(),
                  unmet ->
                      Optional.of(
                          "no shares of "
                              + one.code()
                              + " keep its limits, however much there is of everything; mvn"
                              + " pellucid:least-cost -Dpellucid.recipe="
                              + one.code()
                              + " says what stands against what"),
                  undecided -> Optional.of(one.code() + ": " + undecided.why()));
      if (why.isPresent()) {
        return why;
      }
    }
    return Optional.empty();
  }

  private SharedOut all(List<Wanted> wanted, List<Supply> supplies, JointAnswer.Found found) {
    Settling.Result result = settling.of(wanted, wanted, supplies, found);
    return result.isTooTight() ? some(wanted, supplies) : result.told(true, new TreeMap<>());
  }

  private SharedOut some(List<Wanted> wanted, List<Supply> supplies) {
    return new JointOptimiser(solver)
        .solve(sparing(Joining.of(wanted, supplies, new double[supplies.size()]), supplies))
        .byKind(
            found -> some(wanted, supplies, found),
            unmet -> SharedOut.notProven("no shares keep the limits of all feeds"),
            undecided -> SharedOut.notProven(undecided.why()));
  }

  /** With more of everything, so dear that as little as can be is had of it. */
  private static JointTask sparing(JointTask task, List<Supply> supplies) {
    List<Scarce> dear = new ArrayList<>();
    for (int s = 0; s < supplies.size(); s++) {
      double price = Math.max(LEAST_PRICE, supplies.get(s).perKg());
      dear.add(task.scarce().get(s).at(DEAR * price));
    }
    return task.with(dear);
  }

  private SharedOut some(List<Wanted> wanted, List<Supply> supplies, JointAnswer.Found sparing) {
    MostMade most = new MostMade(solver, wanted, supplies, sparing);
    double[] reserved = new double[supplies.size()];
    SharedOut last = SharedOut.notProven("how much can be made could not be found");
    for (int i = 0; i < TRIES; i++) {
      for (int s = 0; s < reserved.length; s++) {
        reserved[s] = supplies.get(s).kg() * MORE * ((1 << i) - 0.5);
      }
      Optional<List<Wanted>> made = most.of(reserved);
      if (made.isEmpty()) {
        break;
      }
      last = told(wanted, made.get(), supplies, lacks(supplies, sparing));
      if (last.standing() != Standing.NOT_PROVEN) {
        return last;
      }
    }
    return last;
  }

  /** Nothing is proven where it leaves no room to round. */
  private SharedOut told(
      List<Wanted> wanted,
      List<Wanted> made,
      List<Supply> supplies,
      SortedMap<String, Double> lacks) {
    List<Wanted> some = made.stream().filter(one -> one.kg() > 0).toList();
    if (some.isEmpty()) {
      return settling.nothing(wanted, made, supplies).told(false, lacks);
    }
    JointTask task = Joining.of(some, supplies, new double[supplies.size()]);
    return new JointOptimiser(solver)
        .solve(task)
        .byKind(
            found -> settling.of(wanted, made, supplies, found).told(false, lacks),
            unmet -> SharedOut.notProven("what could be made leaves no room for shares"),
            undecided -> SharedOut.notProven(undecided.why()));
  }

  private static SortedMap<String, Double> lacks(List<Supply> supplies, JointAnswer.Found sparing) {
    SortedMap<String, Double> lacks = new TreeMap<>();
    for (int s = 0; s < supplies.size(); s++) {
      double kg = sparing.elsewhere(s);
      if (kg > NOTHING) {
        lacks.put(supplies.get(s).ingredient(), kg);
      }
    }
    return lacks;
  }
}
