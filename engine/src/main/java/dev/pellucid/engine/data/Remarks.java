package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.List;

/** What is to be said of one thing while it is read, and whether an error is among it. */
final class Remarks {
  private final List<Finding> findings = new ArrayList<>();
  private boolean sound = true;

  void add(Finding finding) {
    findings.add(finding);
    sound &= finding.severity() != Severity.ERROR;
  }

  void addAll(Iterable<Finding> more) {
    for (Finding finding : more) {
      add(finding);
    }
  }

  /** Whether no error was said so far. */
  boolean isSound() {
    return sound;
  }

  /** In the order in which they were said. */
  List<Finding> findings() {
    return List.copyOf(findings);
  }
}
