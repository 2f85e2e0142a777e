package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Protein of the species that is fed, as a limit names it: {@code inclusion own-species-protein max
 * 0 %}. Which ingredients that are, hangs on the recipe: those of its lines that tell the protein
 * of its species.
 */
public final class OwnSpecies {
  /** The group whose members are other ones for each species. */
  public static final String GROUP = "own-species-protein";

  private static final String SUBJECT = "inclusion " + GROUP;

  private OwnSpecies() {}

  /** Whether a limit is about it alone. */
  public static boolean isSubject(Limit limit) {
    return limit.subject().text().equals(SUBJECT);
  }

  /** Whether an ingredient is protein of a species. */
  public static boolean is(Ingredient one, Species species) {
    return one.protein().contains(species.name());
  }

  /** The limits of a recipe, with its own ingredients in place of the group. */
  static List<Limit> in(List<Limit> limits, List<Line> lines, Optional<Species> species) {
    for (Limit limit : limits) {
      if (isSubject(limit)) {
        return named(limits, names(lines, species));
      }
    }
    return limits;
  }

  private static List<Limit> named(List<Limit> limits, List<String> names) {
    List<Limit> named = new ArrayList<>(limits.size());
    for (Limit limit : limits) {
      named.add(
          isSubject(limit)
              ? new Limit(
                  new Subject.Inclusion(names, SUBJECT),
                  limit.side(),
                  limit.bound(),
                  limit.written(),
                  limit.basis(),
                  limit.inBatches(),
                  limit.origin(),
                  limit.waiver())
              : limit);
    }
    return named;
  }

  private static List<String> names(List<Line> lines, Optional<Species> species) {
    List<String> names = new ArrayList<>();
    if (species.isPresent()) {
      for (Line line : lines) {
        for (Ingredient one : line.material().ingredients()) {
          if (is(one, species.get()) && !names.contains(one.name())) {
            names.add(one.name());
          }
        }
      }
    }
    return names;
  }
}
