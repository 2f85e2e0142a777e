package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.text.Plural;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What came of making records of figures.
 *
 * @param changes the records that are not there yet, or not as they would be
 * @param unchanged how many are
 * @param unmade recipes without one, and why
 * @param withoutRecipe paths of records whose recipe is gone, below the folder
 * @param problem why nothing was made, and what to do
 */
public record FiguresReport(
    List<Change> changes,
    int unchanged,
    List<String> unmade,
    List<String> withoutRecipe,
    Optional<String> problem) {
  public FiguresReport {
    changes = List.copyOf(changes);
    unmade = List.copyOf(unmade);
    withoutRecipe = List.copyOf(withoutRecipe);
  }

  /**
   * A record to be written.
   *
   * @param path below the folder
   */
  public record Change(String path, String text) {}

  /** One line for the end of a run. */
  public String tally() {
    return Plural.of(changes.size(), "record")
        + " of figures written, "
        + unchanged
        + " unchanged"
        + (unmade.isEmpty() ? "" : ", " + unmade.size() + " not made");
  }

  /** Writes every change into the folder. */
  public void write(Path root) throws IOException {
    Outputs outputs = Outputs.over(root);
    for (Change change : changes) {
      outputs.write(change.path(), change.text());
    }
  }
}
