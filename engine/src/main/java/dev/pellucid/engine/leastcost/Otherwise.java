package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Aim;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.text.Choices;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What is left to a person where nothing may be loosened: another ingredient, another lot, or not
 * to make the feed. Ingredients of the folder are named with which it would be possible, tried one
 * by one: first those that come in where all are offered.
 */
record Otherwise(Posed posed, Solver solver, FeedComputer computer) {
  private static final int NAMED = 3;
  private static final double SOME = 1e-6;

  /** In a sentence; by the contradiction, where one was shown. */
  String words(Optional<Contradictions.Shown> shown) {
    if (shown.isEmpty() || !shown.get().contradiction().loosenings().isEmpty()) {
      return "no shares keep all that is asked";
    }
    if (!shown.get().isOfNever()) {
      return "no shares keep all that is asked, and loosening a few of these is not enough";
    }
    List<String> names = possible();
    return "no shares keep all that is asked, and what stands against it is not to be loosened: "
        + (names.isEmpty()
            ? "take another ingredient"
            : "take another ingredient (" + Choices.of(names) + " would make it possible)")
        + ", take another lot, or do not make it";
  }

  private List<String> possible() {
    List<String> priced = priced();
    List<String> order = new ArrayList<>(comesIn(priced));
    if (order.isEmpty()) {
      return List.of();
    }
    Set<String> all = new LinkedHashSet<>(order);
    all.addAll(priced);
    List<String> possible = new ArrayList<>();
    for (String name : all) {
      if (possible.size() < NAMED && !comesIn(List.of(name)).isEmpty()) {
        possible.add(name);
      }
    }
    return possible;
  }

  private List<String> priced() {
    RuleContext recipe = posed.recipe();
    Set<String> there = new HashSet<>(posed.wishes().tried());
    there.addAll(posed.wishes().without());
    for (Line line : recipe.recipe().lines()) {
      there.add(line.material().name());
    }
    List<String> names = new ArrayList<>();
    for (Ingredient one : recipe.tables().ingredients().values()) {
      if (!there.contains(one.name())
          && recipe.tables().price(one.name(), recipe.day()).isPresent()) {
        names.add(one.name());
      }
    }
    return names;
  }

  /** Those of some ingredients that come in where they are offered; none where that does not do. */
  private List<String> comesIn(List<String> names) {
    Wishes wishes = posed.wishes().moving(OptionalDouble.empty());
    for (String name : names) {
      wishes = wishes.trying(name);
    }
    Optional<Posed> offered = Posed.of(posed.recipe(), wishes, computer, posed.holding());
    return offered.isEmpty()
        ? List.of()
        : new Optimiser(solver)
            .solve(offered.get().task().aiming(Aim.CHANGE))
            .byKind(found -> comesIn(found, names), none -> List.of(), undecided -> List.of());
  }

  private static List<String> comesIn(Answer.Found found, List<String> names) {
    List<String> in = new ArrayList<>();
    for (int i = 0; i < found.shares().length; i++) {
      Free one = found.task().free().get(i);
      if (names.contains(one.line().material().name()) && found.shares()[i] > SOME) {
        in.add(one.line().material().name());
      }
    }
    return in;
  }
}
