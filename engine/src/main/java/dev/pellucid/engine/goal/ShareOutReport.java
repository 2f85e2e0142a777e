package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.report.ShareOutText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What came of sharing out.
 *
 * @param pages all of it, for people
 * @param json all of it, for scripts
 * @param changed the text of each recipe that would change, by its path below the folder
 * @param option the words of a command line that ask for the same plan
 * @param problems why nothing was shared out, a line each
 */
public record ShareOutReport(
    ShareOutText.Pages pages,
    String json,
    Map<String, String> changed,
    String option,
    List<String> problems) {
  public ShareOutReport {
    changed = new TreeMap<>(changed);
    problems = List.copyOf(problems);
  }

  static ShareOutReport problem(List<String> why) {
    return new ShareOutReport(ShareOutText.Pages.NONE, "", Map.of(), "", why);
  }

  /** Why nothing was shared out; empty where it was. */
  public Optional<String> problem() {
    return problems.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", problems));
  }

  /** For a console. */
  public String shown() {
    return pages.text();
  }

  /**
   * Writes {@code share-out.txt}, {@code share-out.md}, {@code share-out.html} and {@code
   * share-out.json}.
   *
   * @throws IOException where the disk fails
   */
  public void write(Path to) throws IOException {
    Outputs outputs = Outputs.into(to);
    outputs.write("share-out.txt", pages.text());
    outputs.write("share-out.md", pages.markdown());
    outputs.write("share-out.html", pages.html());
    outputs.write("share-out.json", json);
  }

  /**
   * Puts every change in its place in the folder, each file whole.
   *
   * @return paths of what was written, below the folder
   * @throws IOException where the disk fails
   */
  public List<String> apply(Path root) throws IOException {
    return ChangedFiles.write(root, changed);
  }

  /**
   * What a person does next, a line each; none where nothing changes.
   *
   * @param written whether the changes stand in the recipes
   */
  public List<String> next(boolean written) {
    if (changed.isEmpty()) {
      return List.of();
    }
    return List.of(
        written
            ? "next: mvn pellucid:check, mvn pellucid:compare, set status approved where you agree,"
                + " commit, and mvn pellucid:batch-sheet"
            : "nothing was written into recipes; to write it: mvn pellucid:share-out"
                + option
                + " -Dpellucid.write=true, with the same wishes");
  }
}
