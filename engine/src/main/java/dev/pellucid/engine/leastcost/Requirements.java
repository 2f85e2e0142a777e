package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.PracticeFigures;
import dev.pellucid.engine.check.RuleContext;
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

/**
 * All that a recipe must keep and that hangs on its shares: each limit in force that can be judged,
 * law in as many batches as the folder asks for, bounds of practice, caps.
 */
final class Requirements {
  private static final double WHOLE = 100;

  private final RuleContext recipe;
  private final Wishes wishes;

  private Requirements(RuleContext recipe, Wishes wishes) {
    this.recipe = recipe;
    this.wishes = wishes;
  }

  /**
   * @param offered ingredients that may come in
   */
  static List<Requirement> of(RuleContext recipe, Wishes wishes, List<Ingredient> offered) {
    Requirements all = new Requirements(recipe, wishes);
    List<Requirement> kept = new ArrayList<>();
    all.limits(kept);
    all.practice(kept);
    all.caps(kept, offered);
    return kept;
  }

  private void limits(List<Requirement> kept) {
    double lawKeptIn = recipe.tables().settings().lawKeptIn();
    for (LimitStatus status : recipe.limits()) {
      if (status.state().isJudged()) {
        kept.add(limit(status.limit()));
        Optional<LawMargin> margin = LawMargin.of(status);
        if (margin.isPresent() && margin.get().isNear()) {
          kept.add(Requirement.OfLimit.margin(margin.get(), lawKeptIn));
        }
      }
    }
  }

  private Requirement limit(Limit limit) {
    boolean plain = limit.inBatches().isEmpty() && !limit.subject().nutrients().isEmpty();
    return plain && wishes.margin().isPresent()
        ? Requirement.OfLimit.in(limit, wishes.margin().getAsDouble())
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
