package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.rebalance.Rebalancing;
import dev.pellucid.engine.rebalance.Rebalancing.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What came of asking for a batch re-balanced to its lots.
 *
 * @param told absent where nothing could be asked
 * @param text that says it
 * @param path of the record below the folder
 * @param changed the text of the record with the change; empty where there is none, or where it is
 *     to be put in by hand
 * @param problem why nothing was asked, and what to do
 */
public record RebalanceReport(
    Optional<Rebalancing> told,
    String text,
    String path,
    Optional<String> changed,
    Optional<String> problem) {

  static RebalanceReport problem(String why) {
    return new RebalanceReport(Optional.empty(), "", "", Optional.empty(), Optional.of(why));
  }

  /**
   * Puts the change into the record, the file whole.
   *
   * @return its path below the folder; none where there is no change
   * @throws IOException where the disk fails
   */
  public List<String> apply(Path root) throws IOException {
    if (changed.isEmpty()) {
      return List.of();
    }
    Outputs.over(root).write(path, changed.get());
    return List.of(path);
  }

  /** Whether the batch cannot be made as it stands, and nothing was found that mends it. */
  public boolean isStuck() {
    return told.filter(
            it -> it.standing() == Standing.IMPOSSIBLE || it.standing() == Standing.NOT_PROVEN)
        .isPresent();
  }

  /**
   * What a person does next, a line each; none where nothing changes.
   *
   * @param written whether the change stands in the record
   */
  public List<String> next(boolean written) {
    if (told.isEmpty() || changed.isEmpty()) {
      return told.filter(Rebalancing::isMoved).isPresent()
          ? List.of(
              "the record could not be changed without losing something: add these lines by hand")
          : List.of();
    }
    return List.of(
        written
            ? "next: whoever answers for these shares writes a name behind by, commit, and mvn"
                + " pellucid:batch-sheet makes the sheet that is signed before weighing"
            : "nothing was written; to write it: mvn pellucid:rebalance -Dpellucid.batch="
                + told.get().number()
                + " -Dpellucid.write=true");
  }
}
