package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.Composition;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * What one ingredient does not tell that matters for one recipe, in this order: contents that could
 * break a limit, a cap for the species, the digestibility of what makes up the whole, and what the
 * species needs told. What a bound leaves no room for, as for starch in an oil, is no silence.
 */
public final class Silences {
  /** Of so little protein it does not matter how much is digested. */
  private static final double A_TRACE = 0.01;

  private final Ingredient ingredient;
  private final Composition composition;
  private final ResolvedRecipe recipe;
  private final Nutrients nutrients;
  private final BitSet seen = new BitSet();
  private final List<Silence> found = new ArrayList<>();

  private Silences(
      Ingredient ingredient, Composition composition, ResolvedRecipe recipe, Nutrients nutrients) {
    this.ingredient = ingredient;
    this.composition = composition;
    this.recipe = recipe;
    this.nutrients = nutrients;
  }

  /**
   * What an ingredient does not tell by which a recipe with more of it would be judged, whether it
   * is in the recipe or not.
   *
   * @param composition of the ingredient, for the species and the kind of process of the recipe
   */
  public static List<Silence> of(
      Ingredient ingredient, Composition composition, ResolvedRecipe recipe, Nutrients nutrients) {
    Silences all = new Silences(ingredient, composition, recipe, nutrients);
    for (Limit limit : recipe.limits()) {
      all.contents(limit);
    }
    if (recipe.species().isPresent()) {
      all.ofSpecies(recipe.species().get());
    }
    return List.copyOf(all.found);
  }

  /** More of what is not told breaks a maximum, and the lower sum of a ratio a minimum. */
  private void contents(Limit limit) {
    Subject subject = limit.subject();
    List<Nutrient> breaking =
        limit.side() == Bound.Side.MAX ? subject.raisedBy() : subject.loweredBy();
    for (Nutrient nutrient : breaking) {
      content(nutrient, limit);
    }
  }

  /** What follows from others is not told itself: one of those is missing. */
  private void content(Nutrient nutrient, Limit limit) {
    int index = nutrient.index();
    if (seen.get(index) || !isOpen(nutrient)) {
      return;
    }
    seen.set(index);
    if (nutrient.formula().isPresent()) {
      for (Nutrient.Formula.Term term : nutrient.formula().get().terms()) {
        Optional<Nutrient> needed = nutrients.named(term.nutrient());
        if (needed.isPresent()) {
          content(needed.get(), limit);
        }
      }
      return;
    }
    Optional<Nutrient> whole = whole(nutrient);
    if (whole.isPresent() && recipe.species().isPresent() && !isOpen(whole.get())) {
      digestibility(whole.get(), recipe.species().get());
    } else if (whole.isPresent()) {
      content(whole.get(), limit);
    } else {
      found.add(new Silence.OfContent(ingredient, nutrient, limit));
    }
  }

  private void ofSpecies(Species species) {
    if (ingredient.cap(species).isEmpty()) {
      found.add(new Silence.OfCap(ingredient, species));
    }
    for (Nutrient nutrient : nutrients.inOrder()) {
      Optional<Nutrient> whole = whole(nutrient);
      if (whole.isPresent()
          && whole.get().ofTheWhole()
          && composition.isUnknown(nutrient.index())) {
        digestibility(whole.get(), species);
      }
    }
    for (String name : species.needsTold()) {
      Optional<Nutrient> nutrient = nutrients.named(name);
      if (nutrient.isPresent() && isOpen(nutrient.get()) && !seen.get(nutrient.get().index())) {
        found.add(new Silence.OfNeed(ingredient, nutrient.get(), species));
      }
    }
  }

  /** Each whole once. */
  private void digestibility(Nutrient whole, Species species) {
    for (Silence one : found) {
      if (one.equals(new Silence.OfDigestibility(ingredient, whole, species))) {
        return;
      }
    }
    boolean more =
        composition.isUnbounded(whole.index()) || composition.high().at(whole.index()) > A_TRACE;
    if (more) {
      found.add(new Silence.OfDigestibility(ingredient, whole, species));
    }
  }

  private Optional<Nutrient> whole(Nutrient digestible) {
    return digestible.digestibleOf().isPresent()
        ? nutrients.named(digestible.digestibleOf().get())
        : Optional.empty();
  }

  /** Whether it is not told and there may be some. */
  private boolean isOpen(Nutrient nutrient) {
    return composition.isUnknown(nutrient.index()) && composition.mayBeMore(nutrient.index());
  }
}
