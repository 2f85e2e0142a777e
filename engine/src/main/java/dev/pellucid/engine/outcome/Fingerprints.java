package dev.pellucid.engine.outcome;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Finding;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * By what a finding is known again in a later run: its code, the file, what it is about, and the
 * side of the limit; never a line, a column or a figure, so that it stays the same when lines move
 * and values change. Several that are the same in all of these are counted, in the order in which
 * they stand in the file.
 */
final class Fingerprints {
  private final IdentityHashMap<Finding, String> byFinding = new IdentityHashMap<>();

  /**
   * @param findings all of a run, in the order of printing
   */
  Fingerprints(List<Finding> findings) {
    Map<String, Integer> seen = new HashMap<>();
    for (Finding finding : findings) {
      String known = known(finding);
      int number = seen.merge(known, 1, Integer::sum);
      byFinding.put(finding, number == 1 ? known : known + "|" + number);
    }
  }

  String of(Finding finding) {
    String fingerprint = byFinding.get(finding);
    if (fingerprint == null) {
      throw new IllegalArgumentException("not a finding of this run: " + finding.span());
    }
    return fingerprint;
  }

  private static String known(Finding finding) {
    About about = finding.about();
    return String.join(
        "|",
        finding.code().text(),
        finding.span().file().path(),
        about.subject(),
        side(about.side()));
  }

  /** {@code min}, {@code max}, or empty. */
  static String side(About.Side side) {
    return side == About.Side.NONE ? "" : side.name().toLowerCase(Locale.ROOT);
  }
}
