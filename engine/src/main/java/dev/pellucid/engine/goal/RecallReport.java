package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.outcome.RecallJson;
import dev.pellucid.engine.report.RecallText;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What came of a recall.
 *
 * @param list what is told; absent where the question cannot be answered
 * @param problem why it cannot, and what to write
 * @param findings what is wrong with lots and records
 */
public record RecallReport(
    Optional<RecallList> list, Optional<String> problem, List<Finding> findings) {
  public RecallReport {
    findings = List.copyOf(findings);
  }

  /** All of it, laid out for a screen. */
  public String text() {
    return list.map(RecallText::text).orElse("");
  }

  /** A page that prints on A4, with a picture of what went where. */
  public String html() {
    return list.map(RecallText::html).orElse("");
  }

  /** All of it, for scripts. */
  public String json() {
    return list.map(RecallJson::of).orElse("");
  }

  /** Why the list may not be whole; absent where all could be searched. */
  public Optional<String> notWhole() {
    return list.map(RecallList::unsearched)
        .filter(missed -> !missed.isEmpty())
        .map(missed -> "the list may not be whole, fix these first: " + String.join("; ", missed));
  }

  /**
   * Writes {@code recall.txt}, {@code recall.html} and {@code recall.json}; nothing where the
   * question could not be answered.
   *
   * @throws IOException where the disk fails
   */
  public void write(Path to) throws IOException {
    if (list.isPresent()) {
      Outputs outputs = Outputs.into(to);
      outputs.write("recall.txt", text());
      outputs.write("recall.html", html());
      outputs.write("recall.json", json());
    }
  }
}
