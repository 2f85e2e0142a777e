package dev.pellucid.engine.yaml;

import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What a file says and what was wrong with the text.
 *
 * @param root empty where the file says nothing, or where it could not be read
 * @param whole whether all that was written is in {@code root}
 */
public record YamlRead(Optional<Yaml> root, List<Finding> findings, boolean whole) {
  public YamlRead {
    findings = List.copyOf(findings);
  }

  /** Of a file whose text could not be had at all, which was said where it was tried. */
  public static YamlRead closed() {
    return new YamlRead(Optional.empty(), List.of(), false);
  }
}
