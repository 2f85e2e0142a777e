package dev.pellucid.engine.workspace;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The findings that are shown of a folder: of one file the first thousand, and then how many more
 * there are. Nobody mends more than that by hand; such a file is of another kind, or was written by
 * a machine, and one cause is behind all. Reports of each would take memory without end.
 *
 * @param findings in the order of printing, those that say how many more there are among them
 * @param more how many of each severity are not among them
 */
public record Shown(List<Finding> findings, Map<Severity, Long> more) {
  public static final Code MORE = new Code("more-findings");

  /** How many of one file are shown. */
  public static final int MOST_OF_A_FILE = 1_000;

  public Shown {
    findings = List.copyOf(findings);
    more = Map.copyOf(more);
  }

  /**
   * Those that are shown of all.
   *
   * @param sorted in the order of printing, so that those of one file are together
   */
  public static Shown of(List<Finding> sorted) {
    Map<String, Integer> of = new HashMap<>();
    Map<Severity, Long> more = new EnumMap<>(Severity.class);
    List<Finding> shown = new ArrayList<>();
    List<Finding> hidden = new ArrayList<>();
    for (Finding finding : sorted) {
      String path = finding.span().file().path();
      if (!hidden.isEmpty() && !hidden.get(0).span().file().path().equals(path)) {
        close(hidden, shown, more);
      }
      if (of.merge(path, 1, Integer::sum) <= MOST_OF_A_FILE) {
        shown.add(finding);
      } else {
        hidden.add(finding);
      }
    }
    close(hidden, shown, more);
    return new Shown(shown, more);
  }

  /** One finding for those of a file that are not shown; it counts as none. */
  private static void close(List<Finding> hidden, List<Finding> shown, Map<Severity, Long> more) {
    if (hidden.isEmpty()) {
      return;
    }
    Map<Severity, Long> counts = new EnumMap<>(Severity.class);
    hidden.forEach(finding -> counts.merge(finding.severity(), 1L, Long::sum));
    Severity gravest = counts.keySet().iterator().next();
    counts.forEach((severity, count) -> more.merge(severity, count, Long::sum));
    shown.add(marker(hidden.get(0), gravest, hidden.size(), counts));
    hidden.clear();
  }

  private static Finding marker(
      Finding first, Severity gravest, int hidden, Map<Severity, Long> counts) {
    SourceFile file = first.span().file();
    List<String> words = new ArrayList<>();
    counts.forEach((severity, count) -> words.add(Plural.of(count, severity.word())));
    return Finding.of(
            MORE,
            gravest,
            file.span(first.span().start(), first.span().start()),
            "and "
                + Plural.of(hidden, "more finding")
                + " from here on in this file: "
                + String.join(", ", words))
        .helping("mend the first ones and check again; so many in one file usually have one cause");
  }

  /** How many findings of a severity there are, shown or not. */
  public long count(Severity severity) {
    long shown =
        findings.stream()
            .filter(finding -> finding.severity() == severity && !finding.code().equals(MORE))
            .count();
    return shown + more.getOrDefault(severity, 0L);
  }
}
