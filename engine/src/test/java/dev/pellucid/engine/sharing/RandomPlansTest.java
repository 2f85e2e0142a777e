package dev.pellucid.engine.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Optimum;
import dev.pellucid.engine.linear.SecondSolver;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.JointAnswer;
import dev.pellucid.engine.optimise.JointOptimiser;
import dev.pellucid.engine.optimise.JointTask;
import dev.pellucid.engine.optimise.JointTask.Scarce;
import dev.pellucid.engine.optimise.Requirement.OfStock.Counted;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.SharedOut.SharedSupply;
import dev.pellucid.engine.sharing.SharedOut.Standing;
import dev.pellucid.engine.sharing.Wanted.Due;
import dev.pellucid.engine.workspace.Streamed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Plans at random: what is found costs what another solver finds by another form of the same
 * problem; what a kg more is worth is what solving again with a kg more saves; what is written
 * takes no more than there is, by sums of its own over what is weighed; and every recipe with its
 * change keeps its limits as the checker judges it. With {@code -Dpellucid.sharedPlans=500} so
 * many, with {@code -Dpellucid.sharedPlansSeed=7} others.
 */
class RandomPlansTest {
  private static final int PLANS = Integer.getInteger("pellucid.sharedPlans", 15);
  private static final int SEED = Integer.getInteger("pellucid.sharedPlansSeed", 20261129);

  private final Map<String, Integer> stood = new TreeMap<>();
  private final List<String> failed = new ArrayList<>();

  @Test
  void plansAtRandom() {
    Random random = new Random(SEED);
    for (int i = 0; i < PLANS; i++) {
      long seed = random.nextLong();
      RandomPlans drawn = new RandomPlans(new Random(seed));
      String at = "plan " + i + ", drawn of " + seed + ": ";
      optimum(at, drawn);
      written(at, drawn);
    }
    System.out.println("shared plans: " + stood);
    assertEquals(List.of(), failed);
    int erred = stood.getOrDefault("no second solver", 0);
    assertTrue(erred <= 1 + stood.getOrDefault("second solver", 0) / 4, () -> "" + stood);
    assertTrue(stood.getOrDefault("worth", 0) > PLANS / 4, () -> "" + stood);
    assertTrue(stood.getOrDefault("premixes", 0) > PLANS / 20, () -> "" + stood);
    assertTrue(stood.getOrDefault("SOME_MADE", 0) > PLANS / 20, () -> "" + stood);
  }

  private void optimum(String at, RandomPlans drawn) {
    JointTask task = Joining.of(drawn.wanted, drawn.supplies, new double[drawn.supplies.size()]);
    JointAnswer answer = new JointOptimiser(Solver.standard()).solve(task);
    String kind = answer.byKind(found -> "found", unmet -> "unmet", undecided -> undecided.why());
    stood.merge(kind, 1, Integer::sum);
    answer.byKind(
        found -> found(at, found), unmet -> 0, undecided -> failed.add(at + kind) ? 1 : 0);
  }

  private int found(String at, JointAnswer.Found found) {
    LinearProgram form = OtherForm.of(found);
    OptionalDouble second = SecondSolver.least(form);
    stood.merge(second.isPresent() ? "second solver" : "no second solver", 1, Integer::sum);
    double other = second.orElseGet(() -> proven(form));
    double off = Math.abs(other - found.cost());
    if (!(off <= 1e-5 * found.cost())) {
      failed.add(at + "costs " + found.cost() + ", and by another solver " + other);
    }
    for (int s = 0; s < found.task().scarce().size(); s++) {
      worth(at, found, s);
    }
    return 0;
  }

  /** Where the other library errs, which it does on a few: by ours, which proves its answers. */
  private static double proven(LinearProgram form) {
    return Solver.standard().solve(form).optimum().map(Optimum::cost).orElse(Double.NaN);
  }

  /** The price of what is short lies between what a little less costs and a little more saves. */
  private void worth(String at, JointAnswer.Found found, int s) {
    double step = found.task().scarce().get(s).kg() * 1e-4;
    double more = (found.cost() - cost(found, s, step)) / step;
    double less = (cost(found, s, -step) - found.cost()) / step;
    double told = found.worth(s);
    double near = 1e-3 * Math.max(1e-3, told);
    stood.merge(told > 1e-5 ? "worth" : "not worth", 1, Integer::sum);
    boolean isLess = Double.isNaN(less) || told <= less + near;
    if (!(told >= more - near && isLess)) {
      failed.add(at + "a kg more is worth " + told + " and saves " + more + " to " + less);
    }
  }

  private static double cost(JointAnswer.Found found, int s, double more) {
    List<Scarce> others = new ArrayList<>(found.task().scarce());
    others.set(s, others.get(s).plus(more));
    return new JointOptimiser(Solver.standard())
        .near(found.task().with(others), found.shares())
        .byKind(JointAnswer.Found::cost, unmet -> Double.NaN, undecided -> Double.NaN);
  }

  private void written(String at, RandomPlans drawn) {
    SharedOut out = drawn.plans.shareOut().of(drawn.wanted, drawn.supplies);
    stood.merge(out.standing().name(), 1, Integer::sum);
    if (out.standing() == Standing.NOT_PROVEN) {
      failed.add(at + out.why());
      return;
    }
    assertEquals(out.standing() == Standing.SOME_MADE, unmade(out) > 0, at);
    Map<String, String> changed = new TreeMap<>();
    for (SharedFeed one : out.feeds()) {
      one.settled()
          .ifPresent(
              its ->
                  changed.put(
                      one.wanted().posed().recipe().recipe().source().path(),
                      its.change().after()));
    }
    Texts texts = drawn.plans.texts.over(changed);
    Plans after = new Plans(texts);
    double cost = 0;
    for (SharedFeed one : out.feeds()) {
      if (one.kg() > 0) {
        cost += judged(at, after, one);
      }
    }
    if (Math.abs(cost - out.money().then()) > 1e-6 * cost) {
      failed.add(at + "costs " + cost + " and says " + out.money().then());
    }
    if (out.money().then() < out.money().least() * (1 - 1e-7)) {
      failed.add(at + "is cheaper than the least");
    }
    if (out.money().then() > out.money().least() * 1.02) {
      stood.merge("much for rounding", 1, Integer::sum);
    }
    for (SharedSupply one : out.supplies()) {
      overdrawn(at, after, out, one);
    }
  }

  private static double unmade(SharedOut out) {
    return out.feeds().stream().mapToDouble(SharedFeed::unmade).sum();
  }

  private double judged(String at, Plans after, SharedFeed feed) {
    RuleContext recipe = recipe(after, feed.wanted().code());
    for (LimitStatus status : recipe.limits()) {
      if (status.state().isBroken()) {
        failed.add(at + feed.wanted().code() + " breaks " + status.limit().name());
      }
    }
    ComputedFeed now = recipe.feed().orElseThrow();
    return feed.wanted().counted() == Counted.BAGGED
        ? feed.kg() * now.costPerKg()
        : feed.kg() / 100 * now.costPer100();
  }

  private static RuleContext recipe(Plans plans, String code) {
    String path = plans.shared.trees().path(code).orElseThrow();
    return Streamed.judged(plans.shared, path).recipe().orElseThrow();
  }

  /** By plain sums over rows, of those made on a day or later. */
  private void overdrawn(String at, Plans after, SharedOut out, SharedSupply supply) {
    Map<LocalDate, Double> there = new TreeMap<>(supply.supply().lasting());
    there.put(LocalDate.MIN, supply.supply().kg());
    there.forEach(
        (day, kg) -> {
          double taken = 0;
          for (SharedFeed one : out.feeds()) {
            double made =
                one.made().stream()
                    .filter(due -> !due.day().isBefore(day))
                    .mapToDouble(Due::kg)
                    .sum();
            taken += made > 0 ? made * perKg(after, one.wanted(), supply, false) : 0;
            for (Due due : one.made()) {
              taken -= due.day().isBefore(day) ? 0 : spared(after, one.wanted(), due, supply);
            }
          }
          if (taken > kg * (1 + 1e-8) + 1e-9) {
            failed.add(
                at + taken + " of " + kg + " " + supply.supply().ingredient() + " from " + day);
          }
        });
  }

  /** What premixes bring that are there, and no more than the feed takes of them. */
  private double spared(Plans after, Wanted wanted, Due due, SharedSupply supply) {
    double there = due.spared().getOrDefault(supply.supply().ingredient(), 0.0);
    if (there == 0) {
      return 0;
    }
    stood.merge("premixes", 1, Integer::sum);
    return Math.min(there, due.kg() * perKg(after, wanted, supply, true));
  }

  private static double perKg(Plans after, Wanted wanted, SharedSupply supply, boolean premixed) {
    ComputedFeed feed = recipe(after, wanted.code()).feed().orElseThrow();
    double kg = 0;
    for (Row row : feed.rows()) {
      boolean counts = !premixed || row.line().material().premixed().isPresent();
      boolean same = row.ingredient().name().equals(supply.supply().ingredient());
      kg += counts && same ? row.kgRichest() : 0;
    }
    return kg / (wanted.counted() == Counted.BAGGED ? feed.bagged() : 100);
  }
}
