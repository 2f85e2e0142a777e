package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.ResolvedRecipe.Met;
import dev.pellucid.syntax.Range;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a recipe is, and who asks for the limits that it was held to.
 *
 * @param at its name in its file
 * @param fish the sizes of its fish, as written
 * @param needs names of the profiles of need that it meets
 * @param practices names of those of practice
 * @param others names of those of law or guidance that it asks for itself
 * @param sections which of label, limits and overage it has
 * @param batch of what size and where it is made, where both are told
 * @param counts how many of its limits were judged, by who asks for them
 */
record Asked(
    Span at,
    String code,
    boolean approved,
    Optional<String> species,
    Optional<String> fish,
    List<String> needs,
    List<String> practices,
    List<String> others,
    Set<String> sections,
    Optional<Batch> batch,
    Counts counts) {

  /** A batch of so many kg at a plant of a name. */
  record Batch(double kg, String plant) {}

  /** How many limits are asked by law, guidance, need, practice and by recipes themselves. */
  record Counts(int law, int guidance, int need, int practice, int own) {
    static final Counts NONE = new Counts(0, 0, 0, 0, 0);

    Counts plus(Counts other) {
      return new Counts(
          law + other.law,
          guidance + other.guidance,
          need + other.need,
          practice + other.practice,
          own + other.own);
    }
  }

  Asked {
    needs = List.copyOf(needs);
    practices = List.copyOf(practices);
    others = List.copyOf(others);
    sections = Set.copyOf(sections);
  }

  static Asked of(RuleContext looked) {
    ResolvedRecipe recipe = looked.recipe();
    List<String> needs = new ArrayList<>();
    List<String> practices = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (Met met : recipe.profiles()) {
      switch (met.profile().kind()) {
        case NEED -> needs.add(met.profile().name());
        case PRACTICE -> practices.add(met.profile().name());
        case LAW, GUIDANCE, RECIPE -> others.add(met.profile().name());
      }
    }
    return new Asked(
        recipe.declared(),
        recipe.code(),
        recipe.isApproved(),
        recipe.species().map(Species::name),
        recipe.fish().map(Range::asWritten),
        needs,
        practices,
        others,
        sections(recipe),
        batch(recipe),
        counts(looked));
  }

  private static Optional<Batch> batch(ResolvedRecipe recipe) {
    return recipe.batch().isPresent() && recipe.plant().isPresent()
        ? Optional.of(new Batch(recipe.batch().get().kg(), recipe.plant().get().name()))
        : Optional.empty();
  }

  /** Which of the sections it has that a feed passes without. */
  private static Set<String> sections(ResolvedRecipe recipe) {
    Set<String> sections = new TreeSet<>();
    if (recipe.label().isPresent()) {
      sections.add("label");
    }
    for (Limit limit : recipe.limits()) {
      if (limit.origin().kind() == Limit.Kind.RECIPE) {
        sections.add("limits");
      }
    }
    for (Line line : recipe.taken()) {
      if (line.hasOverage()) {
        sections.add("overage");
      }
    }
    return sections;
  }

  private static Counts counts(RuleContext looked) {
    int law = 0;
    int guidance = 0;
    int need = 0;
    int practice = 0;
    int own = 0;
    for (LimitStatus status : looked.limits()) {
      Limit.Kind kind = status.limit().origin().kind();
      switch (kind) {
        case LAW -> law++;
        case GUIDANCE -> guidance++;
        case NEED -> need++;
        case PRACTICE -> practice++;
        case RECIPE -> own++;
      }
    }
    return new Counts(law, guidance, need, practice, own);
  }

  /** Whether it meets a profile, asked for or not. */
  boolean meets(String profile) {
    return needs.contains(profile) || practices.contains(profile) || others.contains(profile);
  }
}
