package dev.pellucid.engine.larder;

import dev.pellucid.finding.Finding;
import java.util.List;

/** The data of a folder and what was wrong with it. */
public record Stocked(Larder larder, List<Finding> findings) {
  public Stocked {
    findings = List.copyOf(findings);
  }
}
