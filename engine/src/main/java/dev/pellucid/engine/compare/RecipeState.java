package dev.pellucid.engine.compare;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What one recipe comes to in one state of the folder.
 *
 * @param path below the folder
 * @param words its text line by line, so laid out that white space is no change
 * @param hangsOn whether what a file tells, by its path below the folder, bears on it
 * @param figures absent where it could not be computed
 * @param obstacle the first thing that keeps it from being computed; empty where nothing does
 * @param found what its check says
 * @param printed what stands on its sheet and its label
 */
public record RecipeState(
    String code,
    String path,
    List<String> words,
    Predicate<String> hangsOn,
    Optional<FeedFigures> figures,
    String obstacle,
    List<Found> found,
    Printed printed) {
  public RecipeState {
    words = List.copyOf(words);
    found = List.copyOf(found);
  }

  /** Whether all its lines are the same, whatever its code is. */
  public boolean saysTheSameAs(RecipeState other) {
    return Wording.changed(other, this).isEmpty();
  }
}
