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

  /** The part of a worth to which it is looked for. */
  private static final double CLOSE = 1e-3;

  /** Less is none. */
  private static final double NONE = 1e-7;

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
      double[] dearer = prices.dearer(slopes);
      for (Line line : slopes.feed().recipe().lines()) {
        if (line.material().single().isPresent() && told.add(line.material().name())) {
          value(slopes, dearer[line.index()], line).ifPresent(values::add);
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

  private Optional<IngredientValue> value(Slopes slopes, double dearer, Line line) {
    Ingredient one = line.material().single().orElseThrow().ingredient();
    Optional<Price> price = Repriced.now(slopes.feed(), line);
    double now = price.map(Price::perKg).orElse(0.0);
    return prices
        .worth(slopes, line.index(), one.name(), dearer, now)
        .map(worth -> value(one, line, worth, price, held(one, line)));
  }

  private IngredientValue value(
      Ingredient one, Line line, double worth, Optional<Price> price, List<Refusal> held) {
    double share = share(line);
    OptionalDouble now =
        price.isPresent() ? OptionalDouble.of(price.get().perKg()) : OptionalDouble.empty();
    boolean isNever = isOffered(line) && !held.isEmpty();
    if (!solved || worth <= 0 || isNever) {
      return new IngredientValue(one.name(), worth, now, share, share, held);
    }
    double comesIn = comesIn(one, line, Math.min(worth * (1 - JUST_BELOW), now.orElse(worth)));
    if (!isOffered(line) || comesIn > NONE) {
      return new IngredientValue(one.name(), worth, now, share, comesIn, held);
    }
    double lower = lower(one, line, worth);
    return new IngredientValue(
        one.name(),
        lower,
        now,
        share,
        comesIn(one, line, Math.min(lower * (1 - JUST_BELOW), now.orElse(lower))),
        held);
  }

  /**
   * What it is worth where something is just kept that it would break, so that another must go for
   * it to come in: the highest price at which it does.
   */
  private double lower(Ingredient one, Line line, double worth) {
    double in = 0;
    double out = worth;
    while (out - in > Math.max(out * CLOSE, CLOSE * CLOSE)) {
      double middle = (in + out) / 2;
      if (comesIn(one, line, middle) > NONE) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
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

  /** Its share at a price, if its line were free. */
  private double comesIn(Ingredient one, Line line, double perKg) {
    double share = share(line);
    Optional<Price> price = Repriced.of(posed.recipe(), one, perKg);
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
