package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import java.util.List;

/** The data of a folder and what was wrong with it. */
public record TablesRead(FeedTables tables, List<Finding> findings) {
  public TablesRead {
    findings = List.copyOf(findings);
  }
}
