package dev.pellucid.slip;

import dev.pellucid.finding.Finding;
import java.util.Optional;

/** One mistake that people make: it knows the mistake when it sees it, and says how to fix it. */
public interface Slip {
  /** What is wrong with the line, if it is this mistake. */
  Optional<Finding> in(BrokenLine line);
}
