package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Species;
import dev.pellucid.syntax.HeadLine.Holds;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * A {@code .limits} file with every name turned into its thing.
 *
 * @param saysItsKind whether its file says what kind it is; else it counts as a need
 * @param species names of species or of groups of species; empty: any
 * @param materials groups or names of ingredients that it bounds themselves; empty: it bounds feeds
 * @param jurisdiction whose law or guidance it is, where it is that
 * @param jurisdictionAt where it says so
 * @param lines how many lines of limits stand in its file
 * @param whole whether each of these could be read; when not, what is here is not all
 * @param holds how many there are to be, where its head says so
 * @param mustHold groups, ingredients or premixes of which a feed must hold something
 */
public record Profile(
    String name,
    String title,
    Limit.Kind kind,
    boolean saysItsKind,
    List<String> species,
    List<String> materials,
    Optional<Range> fish,
    Optional<String> jurisdiction,
    Optional<Span> jurisdictionAt,
    List<Limit> limits,
    int lines,
    boolean whole,
    Optional<Holds> holds,
    List<Word> mustHold,
    Span declared) {
  public Profile {
    species = List.copyOf(species);
    materials = List.copyOf(materials);
    limits = List.copyOf(limits);
    mustHold = List.copyOf(mustHold);
  }

  /**
   * Whether it is for a species. A need or a practice that names none is for all; law or guidance
   * that names none is for nobody, since nobody knows whom it binds.
   */
  public boolean isFor(Species one) {
    if (species.isEmpty()) {
      return !kind.bindsByItself();
    }
    for (String name : species) {
      if (one.is(name)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it bounds raw materials, and no feed. */
  public boolean boundsMaterials() {
    return !materials.isEmpty();
  }
}
