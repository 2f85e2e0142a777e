package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Records of which nobody can say how they stand, told once for each reason: where a clone is
 * shallow that is one thing, however many records there are.
 */
final class NotJudged {
  static final Code CODE = new Code("record-not-judged");

  /** So many are named; of the others there is the count. */
  private static final int NAMED = 8;

  private final Map<Why, List<BatchRecord>> records = new LinkedHashMap<>();

  /**
   * Why.
   *
   * @param words behind a colon
   * @param help what to do; may be empty
   */
  private record Why(Severity severity, String words, String help) {}

  /** What it was made from is not to be had. */
  void gone(BatchRecord record, String doubt, String help) {
    add(record, new Why(Severity.NOTE, doubt, help));
  }

  /** Its files have changed since, and it does not say in which commit they were. */
  void noCommit(BatchRecord record) {
    add(
        record,
        new Why(
            Severity.WARNING,
            "files have changed since, and no commit is named that has them",
            "write the commit beside the fingerprint, as the sheet has both: made-from: {commit:"
                + " ..., fingerprint: ...}"));
  }

  /** Something of it cannot be understood by what it was made from. */
  void unclear(BatchRecord record, String words) {
    add(record, new Why(Severity.NOTE, words, ""));
  }

  void add(NotJudged others) {
    others.records.forEach((why, of) -> of.forEach(record -> add(record, why)));
  }

  private void add(BatchRecord record, Why why) {
    records.computeIfAbsent(why, none -> new ArrayList<>()).add(record);
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    records.forEach((why, of) -> findings.add(finding(why, of)));
    return findings;
  }

  private static Finding finding(Why why, List<BatchRecord> of) {
    BatchRecord first = of.get(0);
    String who =
        of.size() == 1
            ? first.number() + " is not judged: "
            : Plural.of(of.size(), "record") + " are not judged: ";
    Finding finding = Finding.of(CODE, why.severity(), place(first), who + why.words());
    if (of.size() > 1) {
      finding = finding.noting(named(of));
    } else if (first.madeFrom().flatMap(it -> it.commit()).isPresent()) {
      finding = finding.noting("made from " + commit(first));
    }
    finding = finding.noting("lots and weights count in the store and in traces all the same");
    return why.help().isEmpty() ? finding : finding.helping(why.help());
  }

  private static String named(List<BatchRecord> of) {
    List<String> words = new ArrayList<>();
    for (BatchRecord record : of.subList(0, Math.min(NAMED, of.size()))) {
      words.add(record.number() + " of " + commit(record));
    }
    String more = of.size() > NAMED ? ", and " + (of.size() - NAMED) + " more" : "";
    return String.join(", ", words) + more;
  }

  private static String commit(BatchRecord record) {
    return record
        .madeFrom()
        .flatMap(it -> it.commit())
        .map(it -> "commit " + it.thing())
        .orElse("no commit");
  }

  /** Where a record says what it was made from. */
  static Span place(BatchRecord record) {
    return record
        .madeFrom()
        .map(it -> it.commit().or(() -> it.fingerprint()).map(Located::place).orElse(it.place()))
        .orElse(record.declared());
  }
}
