package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Batches that were made and do not say from what, told once for the folder: they are held against
 * recipes as they are today. Where no version control keeps the folder nobody could name a commit,
 * and nothing is said.
 */
final class WithoutCommit {
  static final Code CODE = new Code("record-without-commit");

  private static final int NAMED = 8;

  private WithoutCommit() {}

  static Optional<Finding> of(Shared shared) {
    List<BatchRecord> records = new ArrayList<>();
    for (BatchRecord record : shared.tables().batches().values()) {
      if (record.isMade() && !record.closed() && !BatchRecordCheck.isOfItsOwnState(record)) {
        records.add(record);
      }
    }
    return records.isEmpty() || !shared.texts().past().isKept()
        ? Optional.empty()
        : Optional.of(finding(records));
  }

  private static Finding finding(List<BatchRecord> records) {
    boolean one = records.size() == 1;
    String who =
        one
            ? records.get(0).number() + " does not say what it was made from"
            : records.size() + " records do not say what they were made from";
    Finding finding =
        Finding.note(
            CODE,
            records.get(0).declared(),
            who
                + ", so "
                + (one ? "it is" : "they are")
                + " judged by the recipes and limits of today");
    return (one ? finding : finding.noting(named(records)))
        .noting(
            one
                ? "nor is it held to what it was when it was released"
                : "nor are they held to what they were when they were released")
        .helping(
            "copy the line made-from from the sheet into the record before it is released; of one"
                + " that is fed or gone write closed: yes");
  }

  private static String named(List<BatchRecord> records) {
    List<String> names = records.stream().limit(NAMED).map(BatchRecord::number).toList();
    String more = records.size() > NAMED ? ", and " + (records.size() - NAMED) + " more" : "";
    return String.join(", ", names) + more;
  }
}
