package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.outcome.Report;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What came of checking a folder, for people and for machines.
 *
 * @param files each report by the name of its file
 */
public record CheckReports(CheckReport check, SortedMap<String, Report> files) {
  public CheckReports {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /** Writes every report into a folder, in place of older ones. */
  public void write(Path to) throws IOException {
    Outputs outputs = Outputs.into(to);
    for (Map.Entry<String, Report> file : files.entrySet()) {
      outputs.write(file.getKey(), file.getValue()::writeTo);
    }
  }
}
