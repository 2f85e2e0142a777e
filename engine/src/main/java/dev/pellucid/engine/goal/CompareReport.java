package dev.pellucid.engine.goal;

import dev.pellucid.engine.compare.Allowance;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.NewFindings;
import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.report.CompareText;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What came of comparing two states of a folder.
 *
 * @param comparison the recipes that changed, the gravest first
 * @param currency of all money in it
 * @param text of all that a person is told
 * @param markdown for a review, at most 60,000 characters
 * @param html all of it, to be read
 * @param json all of it, for scripts
 */
public record CompareReport(
    Comparison comparison,
    String currency,
    String text,
    String markdown,
    String html,
    String json) {

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

  /** For a console: a line for each feed, premix and file. */
  public String brief() {
    return new CompareText(currency).brief(comparison);
  }

  /** One feed or premix in full; empty where nothing of that code changes. */
  public Optional<String> of(String code) {
    return new CompareText(currency).of(comparison, code);
  }

  /**
   * Findings that are new and at least so grave, in a sentence; empty where there are none.
   *
   * @param least the mildest severity that counts
   */
  public Optional<String> refused(Severity least) {
    return NewFindings.refused(comparison, least);
  }

  /** One line for all. */
  public String tally() {
    return CompareText.tally(comparison);
  }
}
