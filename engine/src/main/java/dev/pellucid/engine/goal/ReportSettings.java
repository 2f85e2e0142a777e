package dev.pellucid.engine.goal;

import dev.pellucid.engine.outcome.Tool;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;

/**
 * How reports for machines are written.
 *
 * @param paths how files are called in them
 * @param failsFrom the least grave findings that a report of tests calls failures, errors at least
 * @param version of this program, as it was built; may be empty
 * @param address of what there is to read about this program; may be empty
 * @param rulesAddress of the folder in which the pages of rules lie; may be empty
 */
public record ReportSettings(
    PrintedPaths paths, Severity failsFrom, String version, String address, String rulesAddress) {

  /** Where nothing is told but how files are called. */
  public static ReportSettings of(PrintedPaths paths) {
    return new ReportSettings(paths, Severity.ERROR, "", "", "");
  }

  Tool tool() {
    return new Tool(version, address, rulesAddress);
  }
}
