package dev.pellucid.engine.sharing;

import dev.pellucid.engine.linear.PriceStays;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.JointAnswer;
import dev.pellucid.engine.optimise.JointOptimiser;
import dev.pellucid.engine.optimise.JointTask;
import dev.pellucid.engine.optimise.JointTask.Scarce;
import dev.pellucid.engine.sharing.SharedOut.Worth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a kg more of something short is worth to all feeds together: the price of its row in the
 * program, which is solved again with a little more to see that it is so. Where more binds than
 * needs to, the two differ, and what a little more saves is told. Between which amounts it holds is
 * solved again at both ends too.
 */
final class WorthOfMore {
  /** The part of what there is by which there is more when it is solved again. */
  private static final double PROBE = 1e-3;

  private static final double SAME = 0.01;

  /** Money per kg below which nothing can be told apart: a cent for a tonne. */
  private static final double LITTLE = 1e-5;

  /** Nobody plans with more of it than so many times what there is. */
  private static final double MOST = 10;

  private static final int HALVINGS = 12;

  private final Solver solver;
  private final JointAnswer.Found found;

  WorthOfMore(Solver solver, JointAnswer.Found found) {
    this.solver = solver;
    this.found = found;
  }

  /** Empty where nobody is short of it. */
  Optional<Worth> of(int scarce) {
    double kg = found.task().scarce().get(scarce).kg();
    double probe = Math.max(kg, 1) * PROBE;
    double told = found.worth(scarce);
    OptionalDouble more = cost(scarce, kg + probe);
    double saved = more.isPresent() ? (found.cost() - more.getAsDouble()) / probe : told;
    boolean same = Math.abs(saved - told) <= SAME * told;
    double perKg = same ? told : saved;
    if (perKg <= LITTLE) {
      return Optional.empty();
    }
    Optional<PriceStays> stays = same ? found.stays(scarce, solver) : Optional.empty();
    double to = stays.map(PriceStays::to).orElse(MOST * Math.max(kg, 1));
    double from = stays.map(PriceStays::from).orElse(kg);
    return Optional.of(
        new Worth(
            perKg,
            end(scarce, kg, Math.max(0, Math.min(from, kg)), perKg),
            end(scarce, kg, Math.min(Math.max(to, kg), MOST * Math.max(kg, 1)), perKg),
            probe));
  }

  /** Nearer and nearer to what there is, until the line of cost leads there. */
  private double end(int scarce, double kg, double furthest, double perKg) {
    double end = furthest;
    for (int i = 0; i < HALVINGS && Math.abs(end - kg) > PROBE * kg; i++) {
      OptionalDouble cost = cost(scarce, end);
      double line = perKg * (end - kg);
      if (cost.isPresent()
          && Math.abs(found.cost() - cost.getAsDouble() - line) <= SAME * Math.abs(line)) {
        return end;
      }
      end = (end + kg) / 2;
    }
    return kg;
  }

  /** Of all, with so much of it; empty where that cannot be met. */
  private OptionalDouble cost(int scarce, double kg) {
    JointTask task = found.task();
    List<Scarce> others = new ArrayList<>(task.scarce());
    others.set(scarce, others.get(scarce).plus(kg - others.get(scarce).kg()));
    return new JointOptimiser(solver)
        .near(task.with(others), found.shares())
        .byKind(
            one -> OptionalDouble.of(one.cost()),
            unmet -> OptionalDouble.empty(),
            undecided -> OptionalDouble.empty());
  }
}
