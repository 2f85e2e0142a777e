package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import java.util.List;

/**
 * What was read of one file or one part of it.
 *
 * @param thing what the text says, as far as it could be read
 * @param findings what was wrong with it, what was wrong with the text itself left out
 * @param whole whether all that is written is in the thing
 */
record Read<T>(T thing, List<Finding> findings, boolean whole) {
  Read {
    findings = List.copyOf(findings);
  }
}
