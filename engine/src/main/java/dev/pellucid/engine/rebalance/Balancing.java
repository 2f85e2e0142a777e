package dev.pellucid.engine.rebalance;

import dev.pellucid.engine.check.Freedom;
import dev.pellucid.engine.check.PartWords;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.check.SmallestChange;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.leastcost.Held;
import dev.pellucid.engine.leastcost.LabelAnew;
import dev.pellucid.engine.leastcost.Refusal;
import dev.pellucid.engine.leastcost.ShareEdits;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.rebalance.Rebalancing.Cause;
import dev.pellucid.engine.rebalance.Rebalancing.Costs;
import dev.pellucid.engine.rebalance.Rebalancing.LineMove;
import dev.pellucid.engine.rebalance.Rebalancing.LotIn;
import dev.pellucid.engine.rebalance.Rebalancing.Standing;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * From one planned batch to what a person is told: it is held against every limit with its lots; if
 * one is missed, the change of fewest points is looked for among lines that tell a {@code within}
 * and the rest, and proven; the reasons are asked of the same batch without one lot after the
 * other.
 *
 * <p>Of a batch, {@code in 95 % of batches} is asked of what is left open: a content that was
 * measured in its lot does not differ from batch to batch any more, one that was not still does.
 */
public final class Balancing {
  private static final double WHOLE = 100;

  private final BatchTrials trials;
  private final Held held;
  private final List<LotIn> lots;
  private final Set<String> freed;

  /**
   * @param held who says which lines may not rise
   * @param lots of the batch that were measured
   * @param freed lines that may move though they tell no {@code within}
   */
  public Balancing(BatchTrials trials, Held held, List<LotIn> lots, Set<String> freed) {
    this.trials = trials;
    this.held = held;
    this.lots = List.copyOf(lots);
    this.freed = Set.copyOf(freed);
  }

  /**
   * What is found.
   *
   * @param steps of each line that changes; none where nothing is offered
   */
  public record Found(Rebalancing told, List<SmallestChange.Step> steps, int decimals) {
    public Found {
      steps = List.copyOf(steps);
    }
  }

  /** Looks for it. */
  public Found found() {
    if (lots.isEmpty()) {
      return nothing(Standing.NO_GROUND, "", List.of());
    }
    RuleContext laid = trials.laid();
    if (laid.feed().isEmpty()) {
      return nothing(
          Standing.NOT_PROVEN, "with its lots the process has no figures for it", List.of());
    }
    if (missed(trials.now()).isEmpty()) {
      return nothing(Standing.KEPT, "", List.of());
    }
    List<Limit> targets = missed(laid);
    if (targets.isEmpty()) {
      return nothing(Standing.RECIPE_KEEPS, "", List.of());
    }
    int decimals = decimals(laid);
    return found(laid, targets, decimals);
  }

  /** Law that too few batches keep counts where the recipe itself keeps it in enough. */
  private List<Limit> missed(RuleContext batch) {
    List<Limit> missed = new ArrayList<>(SmallestChange.missed(batch));
    List<Limit> ofRecipe = SmallestChange.missed(trials.written());
    missed.removeIf(
        limit ->
            ofRecipe.contains(limit)
                && batch.judgement().status(limit).filter(it -> it.state().isKept()).isPresent());
    return missed;
  }

  private Found found(RuleContext laid, List<Limit> targets, int decimals) {
    Freedom freedom = new Freedom(heldLines(laid), fixed(laid), OptionalInt.of(decimals));
    SmallestChange.Outcome outcome = SmallestChange.of(laid, targets, freedom);
    if (outcome.tried().flatMap(RuleContext::feed).isEmpty()) {
      List<String> against = outcome.against().stream().map(PartWords::of).toList();
      return nothing(
          against.isEmpty() ? Standing.NOT_PROVEN : Standing.IMPOSSIBLE,
          against.isEmpty() ? why(outcome.brings()) : "",
          against);
    }
    RuleContext tried = outcome.tried().get();
    Rebalancing told =
        new Rebalancing(
            trials.number(),
            laid.recipe().code(),
            Standing.MOVED,
            "",
            lots,
            lines(laid, tried),
            LimitMoves.of(trials.written(), laid, Optional.of(tried), targets),
            LimitMoves.others(laid, Optional.of(tried), targets),
            causes(laid, targets),
            costs(laid.feed().orElseThrow(), tried.feed().orElseThrow()),
            LabelAnew.of(trials.written(), laid, tried),
            Cautions.of(outcome.steps(), refusals(laid)),
            List.of());
    return new Found(told, outcome.steps(), decimals);
  }

  private static String why(String brings) {
    return brings.isEmpty()
        ? "no shares with the decimals of the recipe keep all on the scales of the plant"
        : "with the nearest that was tried, " + brings;
  }

  private Found nothing(Standing standing, String why, List<String> against) {
    RuleContext laid = trials.laid();
    List<Limit> targets = laid.feed().isPresent() ? missed(laid) : List.of();
    return new Found(
        new Rebalancing(
            trials.number(),
            laid.recipe().code(),
            standing,
            why,
            lots,
            List.of(),
            LimitMoves.of(trials.written(), laid, Optional.empty(), targets),
            LimitMoves.others(laid, Optional.empty(), targets),
            causes(laid, targets),
            Optional.empty(),
            List.of(),
            List.of(),
            against),
        List.of(),
        0);
  }

  /** Of lines that tell a {@code within}, as least cost writes them. */
  private static int decimals(RuleContext laid) {
    List<Free> free = new ArrayList<>();
    for (Line line : laid.recipe().lines()) {
      if (line.within().isPresent() && line.material().single().isPresent()) {
        double step = line.step().map(it -> it.part() * WHOLE).orElse(0.0);
        free.add(new Free(line, 0, WHOLE, false, step));
      }
    }
    return ShareEdits.decimals(free);
  }

  /** Of lines that the recipe lets go. */
  private List<Refusal> refusals(RuleContext laid) {
    List<Refusal> all = new ArrayList<>();
    for (Line line : laid.recipe().lines()) {
      if (!fixed(laid).contains(line.index())) {
        all.addAll(held.from(laid.recipe(), line));
      }
    }
    return all;
  }

  /** What does not tell by what a feed with more of it would be judged. */
  private Set<Integer> heldLines(RuleContext laid) {
    Set<Integer> lines = new HashSet<>();
    for (Line line : laid.recipe().lines()) {
      if (!held.from(laid.recipe(), line).isEmpty()) {
        lines.add(line.index());
      }
    }
    return lines;
  }

  /**
   * As at least cost, lines that tell no freedom stay. So does a second line of one ingredient: a
   * record names the first by it.
   */
  private Set<Integer> fixed(RuleContext laid) {
    Set<Integer> fixed = new HashSet<>();
    Set<String> seen = new HashSet<>();
    for (Line line : laid.recipe().lines()) {
      String name = line.material().name();
      boolean told = line.rest() || line.within().isPresent() || freed.contains(name);
      if (!seen.add(name) || !told) {
        fixed.add(line.index());
      }
    }
    return fixed;
  }

  private static List<LineMove> lines(RuleContext laid, RuleContext tried) {
    List<LineMove> moves = new ArrayList<>();
    for (Line line : laid.recipe().lines()) {
      Line then = tried.recipe().lines().get(line.index());
      if (then.designed().compareTo(line.designed()) != 0) {
        moves.add(
            new LineMove(
                line.material().name(),
                line.designed().kgPer100(),
                then.designed().kgPer100(),
                line.within().map(Line.Within::asWritten).orElse(""),
                line.rest()));
      }
    }
    return moves;
  }

  private List<Cause> causes(RuleContext laid, List<Limit> targets) {
    List<Cause> causes = new ArrayList<>();
    for (Limit limit : targets) {
      causes.addAll(Causes.of(trials, laid, limit, lots));
    }
    return causes;
  }

  private static Optional<Costs> costs(ComputedFeed before, ComputedFeed after) {
    return before.unpriced().isEmpty() && after.unpriced().isEmpty()
        ? Optional.of(new Costs(before.costPerKg(), after.costPerKg()))
        : Optional.empty();
  }
}
