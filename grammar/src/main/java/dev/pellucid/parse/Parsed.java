package dev.pellucid.parse;

import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile;
import java.util.List;

/** The tree of one file and what was wrong with the text. */
public record Parsed(FeedFile file, List<Finding> findings) {
  public Parsed {
    findings = List.copyOf(findings);
  }
}
