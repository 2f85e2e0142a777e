package dev.pellucid.engine.goal;

import dev.pellucid.engine.trace.Trace.Back;
import dev.pellucid.engine.trace.Trace.Onward;
import dev.pellucid.finding.Finding;
import java.util.List;

/**
 * What came of a trace.
 *
 * @param text the answer, laid out for a screen
 * @param onward where a lot or batch went; one at most
 * @param back what is in a batch; of every batch where nothing was asked for
 * @param unknown what was asked for and cannot be answered, each a sentence with its remedy
 * @param unsearched files that could hold what was asked for and could not be searched, each with
 *     why; while there are any, the answer may not be whole
 * @param findings what is wrong with lots and records
 */
public record TraceReport(
    String text,
    List<Onward> onward,
    List<Back> back,
    List<String> unknown,
    List<String> unsearched,
    List<Finding> findings) {
  public TraceReport {
    onward = List.copyOf(onward);
    back = List.copyOf(back);
    unknown = List.copyOf(unknown);
    unsearched = List.copyOf(unsearched);
    findings = List.copyOf(findings);
  }
}
