package dev.pellucid.slip;

import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * A line that did not parse to the one finding about it. The order of the list is meaning: the
 * first slip that knows the line speaks, so the surest stand first; the last knows every line.
 */
public final class Slips {
  private static final List<Slip> IN_ORDER = List.of(new ModelLine());

  private Slips() {}

  public static Finding finding(BrokenLine line) {
    for (Slip slip : IN_ORDER) {
      Optional<Finding> finding = slip.in(line);
      if (finding.isPresent()) {
        return finding.get();
      }
    }
    throw new IllegalStateException("the last slip knows every line");
  }
}
