package dev.pellucid.engine;

import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.larder.Stocked;
import dev.pellucid.engine.made.Trace;
import dev.pellucid.engine.report.TraceText;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * What came of a trace.
 *
 * @param text a table, or a sentence where there is nothing to show
 * @param batches the numbers of the batches in it
 * @param unknown numbers that were asked for and that the folder does not have
 * @param findings errors of lots and records, for which the table may not be whole
 */
public record TraceReport(
    String text, List<String> batches, List<String> unknown, List<Finding> findings) {
  public TraceReport {
    batches = List.copyOf(batches);
    unknown = List.copyOf(unknown);
    findings = List.copyOf(findings);
  }

  static TraceReport of(FeedFolder folder, String lot, String batch) {
    List<Finding> findings = new ArrayList<>();
    Stocked stocked = DataTexts.of(folder, findings).stocked();
    findings.addAll(stocked.findings());
    findings.removeIf(finding -> finding.severity() != Severity.ERROR);
    Larder larder = stocked.larder();
    Trace trace = Trace.of(larder);
    trace = lot.isEmpty() ? trace : trace.ofLot(lot);
    trace = batch.isEmpty() ? trace : trace.ofBatch(batch);
    List<String> unknown = new ArrayList<>();
    for (String number : List.of(lot, batch)) {
      if (!number.isEmpty() && Trace.known(number, larder).isEmpty()) {
        unknown.add(number);
      }
    }
    return new TraceReport(TraceText.of(trace), List.copyOf(trace.batches()), unknown, findings);
  }

  /** One line for the end of a run. */
  public String tally() {
    return Counted.of(batches.size(), "batch record") + " in the trace";
  }
}
