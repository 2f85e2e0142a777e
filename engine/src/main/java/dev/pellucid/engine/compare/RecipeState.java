package dev.pellucid.engine.compare;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What one recipe comes to in one state of the folder.
 *
 * @param path below the folder
 * @param words its text line by line, so laid out that white space is no change
 * @param reads the names that it looked up, those in its premixes too
 * @param figures absent where it could not be computed
 * @param obstacle the first thing that keeps it from being computed; empty where nothing does
 */
public record RecipeState(
    String code,
    String path,
    List<String> words,
    Set<String> reads,
    Optional<FeedFigures> figures,
    String obstacle) {
  public RecipeState {
    words = List.copyOf(words);
    reads = Set.copyOf(reads);
  }

  /** Whether all its lines are the same, whatever its code is. */
  public boolean saysTheSameAs(RecipeState other) {
    return Wording.changed(other, this).isEmpty();
  }

  /**
   * Whether a file could bear on it: that of a name which it looked up or by which it is held, or
   * one that all feeds hang on.
   */
  public boolean couldHangOn(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    String stem = name.substring(0, Math.max(0, name.lastIndexOf('.')));
    boolean named =
        file.startsWith("ingredients/")
            || name.endsWith(".premix")
            || name.endsWith(".limits")
            || name.endsWith(".recipe");
    return !named
        || file.equals(path)
        || reads.contains(stem)
        || figures.stream().anyMatch(all -> all.isHeldBy(stem));
  }
}
