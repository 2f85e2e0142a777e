package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.leastcost.Week;
import dev.pellucid.engine.report.LeastCostText;
import dev.pellucid.engine.report.LeastCostTold;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What came of asking for least cost.
 *
 * @param told each recipe that was asked for, in the order of paths
 * @param week what the changes come to together
 * @param isOne whether one was asked for
 * @param words that say it
 * @param json all of it, for scripts
 * @param changed the text of each recipe that would change, by its path below the folder
 * @param problem why nothing was asked, and what to write; a line each
 */
public record LeastCostReport(
    List<LeastCostTold> told,
    Week week,
    boolean isOne,
    LeastCostText words,
    String json,
    Map<String, String> changed,
    Optional<String> problem) {
  public LeastCostReport {
    told = List.copyOf(told);
    changed = new TreeMap<>(changed);
  }

  static LeastCostReport problem(String why) {
    return new LeastCostReport(
        List.of(),
        Week.of(List.of()),
        false,
        new LeastCostText(""),
        "",
        Map.of(),
        Optional.of(why));
  }

  /** For a console: one recipe in full, of many a few lines each. */
  public String shown() {
    return isOne ? words.text(told.get(0)) : words.brief(told, week);
  }

  /** All of it as text. */
  public String text() {
    return isOne ? words.text(told.get(0)) : words.text(told, week);
  }

  public String markdown() {
    return words.markdown(told, week);
  }

  /** The page of the one, or of all of the week. */
  public String html() {
    return isOne ? words.html(told.get(0)) : words.html(told, week);
  }

  /** One line for all. */
  public String tally() {
    return words.tally(told, week);
  }

  /**
   * Writes {@code least-cost.txt}, {@code least-cost.md}, {@code least-cost.html} and {@code
   * least-cost.json}; beside them, where all were asked for, a page for each that would change.
   *
   * @throws IOException where the disk fails
   */
  public void write(Path to) throws IOException {
    Outputs outputs = Outputs.into(to);
    outputs.write("least-cost.txt", text());
    outputs.write("least-cost.md", markdown());
    outputs.write("least-cost.json", json);
    outputs.write("least-cost.html", html());
    if (!isOne) {
      for (LeastCostTold one : told) {
        if (one.advice().change().isSome()) {
          outputs.write(one.advice().code() + ".html", words.html(one));
        }
      }
    }
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
    String one = isOne ? " -Dpellucid.recipe=" + told.get(0).advice().code() : "";
    return written
        ? List.of(
            "next: mvn pellucid:check, mvn pellucid:compare"
                + (isOne ? " -Dpellucid.feed=" + told.get(0).advice().code() : "")
                + ", set status approved where you agree"
                + (losesReview() ? " and tell who reviewed it anew" : "")
                + ", commit, and mvn pellucid:batch-sheet")
        : List.of(
            "nothing was written into recipes; to write it: mvn pellucid:least-cost"
                + one
                + " -Dpellucid.write=true, with the same wishes");
  }

  /** Whether a change takes out who reviewed the feed as it was. */
  private boolean losesReview() {
    return told.stream()
        .flatMap(one -> one.advice().change().edits().stream())
        .anyMatch(edit -> edit.span().text().matches("approved\\s+reviewed\\s.*"));
  }
}
