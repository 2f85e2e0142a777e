package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * What came of resolving a file.
 *
 * @param thing the resolved recipe or premix; absent when a finding stops its figures
 * @param read every name that was looked up, found or not: what the result depends on
 */
public record Resolution<T>(Optional<T> thing, List<Finding> findings, SortedSet<String> read) {
  public Resolution {
    findings = List.copyOf(findings);
  }
}
