package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.optimise.Aim;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.resolve.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A recipe as a task: which lines are free, and between what; what it must keep.
 *
 * @param recipe as it is written
 * @param task of its feed with lines for what may come in
 * @param held lines and ingredients that may not rise, and why
 * @param holding who says so of any other ingredient
 */
public record Posed(
    RuleContext recipe, Wishes wishes, Task task, List<Refusal> held, Held holding) {
  private static final double WHOLE = 100;

  public Posed {
    held = List.copyOf(held);
  }

  /** Empty where the feed has no figures. */
  public static Optional<Posed> of(
      RuleContext recipe, Wishes wishes, FeedComputer computer, Held holding) {
    if (recipe.feed().isEmpty()) {
      return Optional.empty();
    }
    List<Ingredient> offered = new ArrayList<>();
    for (String name : wishes.tried()) {
      Ingredient one = recipe.tables().ingredients().get(name);
      if (one != null && isAbsent(recipe, name)) {
        offered.add(one);
      }
    }
    ComputedFeed written = recipe.feed().get();
    Optional<ComputedFeed> feed =
        offered.isEmpty()
            ? Optional.of(written)
            : Offered.in(written, offered, recipe.tables(), computer, recipe.day());
    return feed.map(it -> posed(recipe, wishes, it, offered, holding));
  }

  private static boolean isAbsent(RuleContext recipe, String name) {
    for (Line line : recipe.recipe().lines()) {
      if (line.material().name().equals(name)) {
        return false;
      }
    }
    return true;
  }

  private static Posed posed(
      RuleContext recipe,
      Wishes wishes,
      ComputedFeed feed,
      List<Ingredient> offered,
      Held holding) {
    List<Refusal> held = new ArrayList<>();
    List<Free> free = new ArrayList<>();
    int written = recipe.recipe().lines().size();
    for (Line line : feed.recipe().lines()) {
      boolean isOffered = line.index() >= written;
      if (isFree(line, wishes) || isOffered) {
        free.add(free(recipe, wishes, line, holding, held));
      }
    }
    Task task =
        Task.of(
            feed,
            free,
            Requirements.of(recipe, wishes, offered),
            wishes.move().orElse(Double.POSITIVE_INFINITY),
            Aim.COST);
    Task stepped = StepOnScale.of(task, recipe.floor().reweighed(feed));
    Task stored =
        wishes.fromStock() && holding.store().isPresent()
            ? holding.store().get().bounding(recipe, stepped)
            : stepped;
    Task asked = wishes.keepLabel() ? KeptLabel.of(recipe, stored) : stored;
    return new Posed(recipe, wishes, asked, held, holding);
  }

  private static boolean isFree(Line line, Wishes wishes) {
    String name = line.material().name();
    boolean told = line.rest() || line.within().isPresent() || wishes.freed().contains(name);
    return line.material().single().isPresent() && (told || wishes.without().contains(name));
  }

  /** Why a line may not rise: what bans it from such a feed, then what it does not tell. */
  private static List<Refusal> against(RuleContext recipe, Line line, Held holding) {
    List<Refusal> against = new ArrayList<>();
    line.material().single().ifPresent(it -> against.addAll(Banned.of(recipe, it.ingredient())));
    against.addAll(holding.from(recipe.recipe(), line));
    return against;
  }

  private static Free free(
      RuleContext recipe, Wishes wishes, Line line, Held holding, List<Refusal> held) {
    double now = line.designed().kgPer100();
    if (wishes.without().contains(line.material().name())) {
      return new Free(line, 0, 0, false, 0);
    }
    double low = line.within().isPresent() ? line.within().get().low() * WHOLE : 0;
    double high = line.within().isPresent() ? line.within().get().high() * WHOLE : WHOLE;
    boolean orNone = line.within().isPresent() && line.within().get().orNone();
    if (wishes.move().isPresent()) {
      double move = wishes.move().getAsDouble();
      orNone &= now <= move;
      low = Math.max(low, now - move);
      high = Math.min(high, now + move);
    }
    if (high > now) {
      List<Refusal> against = against(recipe, line, holding);
      held.addAll(against);
      high = against.isEmpty() ? high : now;
      low = Math.min(low, high);
    }
    double step = line.step().isPresent() ? line.step().get().part() * WHOLE : 0;
    return new Free(line, low, high, orNone, step);
  }
}
