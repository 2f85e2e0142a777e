package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.leastcost.Reasons.IngredientValue;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Nearby;
import dev.pellucid.engine.optimise.ProgramPrices;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.optimise.Tightened;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What each ingredient of the folder is worth in an answer: the money that a kg of it brings to all
 * that has a price there, by the prices of the program. At a price above it none comes in, and at
 * one below it some does; how much, is found by solving again with its line free.
 */
final class IngredientValues {
  private static final double WHOLE = 100;

  /** By such a part is a price below what it is worth when it is asked how much comes in. */
  private static final double JUST_BELOW = 0.01;

  private final Posed posed;
  private final Answer.Found found;
  private final ProgramPrices prices;
  private final EachOffered offered;
  private final Nearby nearby;
  private final boolean solved;
  private final List<Requirement> caps;

  /**
   * @param solved whether it is told how much would come in
   */
  IngredientValues(
      Posed posed,
      Answer.Found found,
      ProgramPrices prices,
      FeedComputer computer,
      Nearby nearby,
      boolean solved) {
    this.posed = posed;
    this.found = found;
    this.prices = prices;
    this.offered = new EachOffered(posed, found, computer);
    this.nearby = nearby;
    this.solved = solved;
    this.caps =
        solved ? Requirements.of(posed.recipe(), posed.wishes(), offered.absent()) : List.of();
  }

  /** The largest gap first; what has no price last. */
  List<IngredientValue> of() {
    List<IngredientValue> values = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (Slopes slopes : offered.slopes(offered.absent())) {
      double[] worths = prices.worths(slopes);
      for (Line line : slopes.feed().recipe().lines()) {
        if (line.material().single().isPresent() && told.add(line.material().name())) {
          value(slopes, worths, line).ifPresent(values::add);
        }
      }
    }
    values.sort(
        Comparator.comparing((IngredientValue one) -> one.price().isEmpty())
            .thenComparing(
                Comparator.comparingDouble((IngredientValue one) -> one.gap().orElse(one.worth()))
                    .reversed())
            .thenComparing(IngredientValue::name));
    return values;
  }

  private Optional<IngredientValue> value(Slopes slopes, double[] worths, Line line) {
    Ingredient one = line.material().single().orElseThrow().ingredient();
    Optional<Price> price = line.material().single().orElseThrow().price();
    double bought = slopes.bought(one.name()).perPoint()[line.index()];
    if (!(bought > 0)) {
      return Optional.empty();
    }
    double priceNow = price.map(Price::perKg).orElse(0.0);
    double beside = slopes.money().perPoint()[line.index()] - priceNow * bought;
    double worth = (worths[line.index()] - beside) / bought;
    double share = share(line);
    List<Refusal> held = held(one, line);
    double comesIn = solved ? comesIn(one, line, worth, price, held) : share;
    return Optional.of(
        new IngredientValue(
            one.name(),
            worth,
            price.isPresent() ? OptionalDouble.of(priceNow) : OptionalDouble.empty(),
            share,
            comesIn,
            held));
  }

  private boolean isOffered(Line line) {
    return line.index() >= found.task().feed().recipe().lines().size();
  }

  private double share(Line line) {
    for (int i = 0; i < found.shares().length; i++) {
      if (found.task().free().get(i).line().index() == line.index()) {
        return found.shares()[i];
      }
    }
    return line.designed().kgPer100();
  }

  private List<Refusal> held(Ingredient one, Line line) {
    RuleContext recipe = posed.recipe();
    List<Refusal> held = new ArrayList<>(Banned.of(recipe, one));
    held.addAll(posed.holding().from(recipe.recipe(), line));
    return held;
  }

  /**
   * Its share at its price, or, where that is more than it is worth, at one just below its worth;
   * if its line were free.
   */
  private double comesIn(
      Ingredient one, Line line, double worth, Optional<Price> now, List<Refusal> held) {
    double share = share(line);
    if (worth <= 0 || isOffered(line) && !held.isEmpty()) {
      return share;
    }
    double below = worth * (1 - JUST_BELOW);
    double at = now.isPresent() ? Math.min(now.get().perKg(), below) : below;
    Optional<Price> price = Repriced.of(posed.recipe(), one, at);
    Optional<Task> task = isOffered(line) ? offered.task(List.of(one)) : Optional.of(found.task());
    if (price.isEmpty() || task.isEmpty()) {
      return share;
    }
    return nearby
        .solve(freed(task.get(), one, line).priced(price.get()), shares(line))
        .byKind(it -> share(it, line), unmet -> share, undecided -> share);
  }

  private double[] shares(Line line) {
    double[] shares = found.shares();
    if (isFree(line)) {
      return shares;
    }
    double[] more = new double[shares.length + 1];
    System.arraycopy(shares, 0, more, 0, shares.length);
    more[shares.length] = line.designed().kgPer100();
    return more;
  }

  private boolean isFree(Line line) {
    for (Free free : found.task().free()) {
      if (free.line().index() == line.index()) {
        return true;
      }
    }
    return false;
  }

  /** What is free stays within its bounds; all else may be from nothing to its cap. */
  private Task freed(Task task, Ingredient one, Line line) {
    if (isFree(line)) {
      return task;
    }
    List<Line> lines = task.feed().recipe().lines();
    Line there = isOffered(line) ? lines.get(lines.size() - 1) : line;
    List<Free> free = new ArrayList<>(task.free());
    free.add(new Free(there, 0, WHOLE, false, 0));
    List<Tightened> kept = new ArrayList<>(task.kept());
    for (Requirement each : caps) {
      if (isOffered(line) && isCapOf(each, one)) {
        kept.add(new Tightened(each, 0));
      }
    }
    return task.with(free).keeping(kept);
  }

  private static boolean isCapOf(Requirement each, Ingredient one) {
    return each.byKind(
        limit -> false,
        practice -> false,
        cap -> cap.ingredient().name().equals(one.name()),
        label -> false,
        order -> false,
        stock -> false);
  }

  private double share(Answer.Found answer, Line line) {
    List<Free> free = answer.task().free();
    for (int i = 0; i < free.size(); i++) {
      if (free.get(i).line().material().name().equals(line.material().name())) {
        return answer.shares()[i];
      }
    }
    return 0;
  }
}
