package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Remark;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.resolve.Reads;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
import java.util.List;
import java.util.Optional;

/**
 * One recipe, checked: its figures, how it stands with each of its limits, and what every rule says
 * of it.
 *
 * @param path below the folder
 * @param recipe absent where it could not be resolved
 * @param findings what is wrong with its words, and what the rules say
 * @param remarks what the rules say, each with the limit that it is about
 * @param records what is said of its batch records, and what they take
 * @param reads everything that was looked up for it
 * @param mendFirst names of the files to be fixed before it can be checked, where they are not its
 *     own
 * @param fault what broke in this program while it was checked; a finding tells of it
 */
public record Checked(
    String path,
    Optional<RuleContext> recipe,
    List<Finding> findings,
    List<Remark> remarks,
    BatchRecordCheck.Looked records,
    Reads reads,
    List<String> mendFirst,
    Optional<Throwable> fault) {
  public Checked {
    findings = List.copyOf(findings);
    remarks = List.copyOf(remarks);
    mendFirst = List.copyOf(mendFirst);
  }

  /** One whose text could not be read. */
  static Checked unread(String path, List<Finding> findings) {
    return new Checked(
        path,
        Optional.empty(),
        findings,
        List.of(),
        BatchRecordCheck.Looked.NOTHING,
        Reads.NONE,
        List.of(),
        Optional.empty());
  }

  /** One at which this program broke. */
  static Checked broken(SourceFile file, Throwable fault) {
    return new Checked(
        file.path(),
        Optional.empty(),
        List.of(Fault.finding(file, fault)),
        List.of(),
        BatchRecordCheck.Looked.NOTHING,
        Reads.NONE,
        List.of(),
        Optional.of(fault));
  }

  public String code() {
    return Trees.stem(path);
  }

  /** Absent where something stands in the way of its figures. */
  public Optional<ComputedFeed> feed() {
    return recipe.flatMap(RuleContext::feed);
  }

  /** Whether no error keeps it from being made as it is written. */
  public boolean isSound() {
    return feed().isPresent()
        && findings.stream().noneMatch(one -> one.severity() == Severity.ERROR);
  }
}
