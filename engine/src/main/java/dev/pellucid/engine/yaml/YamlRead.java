package dev.pellucid.engine.yaml;

import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What a file says and what was wrong with the text.
 *
 * @param root empty where the file says nothing, or where it could not be read
 */
public record YamlRead(Optional<Yaml> root, List<Finding> findings) {
  public YamlRead {
    findings = List.copyOf(findings);
  }

  /** Whether all that was written is in {@link #root}. */
  public boolean whole() {
    return findings.isEmpty();
  }
}
