package dev.pellucid.engine.goal;

import dev.pellucid.engine.compare.Allowance;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.report.CompareText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What came of comparing two states of a folder.
 *
 * @param comparison the recipes that changed, the gravest first
 * @param text for the console
 * @param markdown for a review, at most 60,000 characters
 * @param html all of it, to be read
 * @param json all of it, for scripts
 */
public record CompareReport(
    Comparison comparison, String text, String markdown, String html, String json) {

  /**
   * Writes {@code compare.txt}, {@code compare.md}, {@code compare.html} and {@code compare.json}.
   *
   * @throws IOException where the disk fails
   */
  public void write(Path to) throws IOException {
    Outputs outputs = Outputs.into(to);
    outputs.write("compare.txt", text);
    outputs.write("compare.md", markdown);
    outputs.write("compare.html", html);
    outputs.write("compare.json", json);
  }

  /**
   * What moves further than is allowed, a sentence each.
   *
   * @param costRise percent that the cost of a kg in the bags may rise by; empty for any
   * @param nutrientMove percent that a nutrient with a limit on it may rise or fall by
   */
  public List<String> beyond(OptionalDouble costRise, OptionalDouble nutrientMove) {
    List<String> beyond = new ArrayList<>();
    if (costRise.isPresent() || nutrientMove.isPresent()) {
      beyond.addAll(comparison.notices());
    }
    beyond.addAll(new Allowance(costRise, nutrientMove).beyond(comparison));
    return beyond;
  }

  /** One line for the end of a run. */
  public String tally() {
    return CompareText.tally(comparison);
  }
}
