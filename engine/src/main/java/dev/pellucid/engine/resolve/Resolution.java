package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What came of resolving a file.
 *
 * @param thing the resolved recipe or premix; absent when a finding stops its figures
 * @param reads everything that was looked up, there or not: what the result hangs on
 */
public record Resolution<T>(Optional<T> thing, List<Finding> findings, Reads reads) {
  public Resolution {
    findings = List.copyOf(findings);
  }
}
