package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Cap;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.PracticeFigure;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that a recipe must keep and that hangs on its shares: each limit in force that can be judged,
 * law in as many batches as the folder asks for, bounds of practice, caps of ingredients.
 */
public final class Required {
  private static final double WHOLE = 100;

  private final RuleContext recipe;

  private Required(RuleContext recipe) {
    this.recipe = recipe;
  }

  /**
   * All of a recipe, in the order of its limits, practice and caps.
   *
   * @param margin the part of batches in which limits must be kept that do not say so themselves
   * @param offered ingredients that may come in
   */
  public static List<Requirement> of(
      RuleContext recipe, OptionalDouble margin, List<Ingredient> offered) {
    Required all = new Required(recipe);
    List<Requirement> kept = new ArrayList<>();
    all.limits(kept, margin);
    all.practice(kept);
    all.caps(kept, offered);
    return kept;
  }

  private void limits(List<Requirement> kept, OptionalDouble margin) {
    double lawKeptIn = recipe.tables().settings().lawKeptIn();
    for (LimitStatus status : recipe.limits()) {
      if (status.state().isJudged()) {
        kept.add(limit(status.limit(), margin));
        Optional<LawMargin> law = LawMargin.of(status);
        if (law.isPresent() && law.get().isNear()) {
          kept.add(Requirement.OfLimit.margin(law.get(), lawKeptIn));
        }
      }
    }
  }

  private static Requirement limit(Limit limit, OptionalDouble margin) {
    boolean plain = limit.inBatches().isEmpty() && !limit.subject().nutrients().isEmpty();
    return plain && margin.isPresent()
        ? Requirement.OfLimit.in(limit, margin.getAsDouble())
        : Requirement.OfLimit.judged(limit);
  }

  private void practice(List<Requirement> kept) {
    for (PracticeFigure figure : PracticeFigures.of(recipe)) {
      Optional<PracticeBound> bound = recipe.tables().practice().bound(figure.bound());
      // Each is a part of one: a bound beyond that asks nothing.
      if (bound.isPresent() && bound.get().low() > 0) {
        kept.add(new Requirement.OfPractice(figure, bound.get(), Bound.Side.MIN));
      }
      if (bound.isPresent() && bound.get().high() < 1) {
        kept.add(new Requirement.OfPractice(figure, bound.get(), Bound.Side.MAX));
      }
    }
  }

  private void caps(List<Requirement> kept, List<Ingredient> offered) {
    Map<String, Ingredient> all = new LinkedHashMap<>();
    recipe
        .recipe()
        .lines()
        .forEach(
            line -> line.material().ingredients().forEach(one -> all.putIfAbsent(one.name(), one)));
    offered.forEach(one -> all.putIfAbsent(one.name(), one));
    Optional<Species> species = recipe.recipe().species();
    for (Ingredient one : all.values()) {
      Optional<Cap> cap = species.isPresent() ? one.cap(species.get()) : Optional.empty();
      if (cap.isPresent() && cap.get().most().isPresent()) {
        kept.add(new Requirement.OfCap(one, cap.get(), cap.get().most().getAsDouble() * WHOLE));
      }
    }
  }
}
