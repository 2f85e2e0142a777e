package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.Provenance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a sheet tells of the state that it was made from, as it goes into the record. */
final class MadeFromLine {
  private static final int GROUP = 4;

  private MadeFromLine() {}

  /** In groups that a person can compare. */
  static String grouped(String fingerprint) {
    List<String> groups = new ArrayList<>();
    for (int from = 0; from < fingerprint.length(); from += GROUP) {
      groups.add(fingerprint.substring(from, Math.min(fingerprint.length(), from + GROUP)));
    }
    return String.join(" ", groups);
  }

  /**
   * The line of the record; empty where nothing is told. A commit that does not have what the sheet
   * shows is no commit that it was made from.
   */
  static Optional<String> of(Provenance from) {
    if (from.fingerprint().isEmpty()) {
      return Optional.empty();
    }
    // A name that consists of figures alone stands there as text all the same.
    String commit =
        from.clean() && !from.commit().isEmpty() ? "commit: " + from.commit() + ", " : "";
    return Optional.of("made-from: {" + commit + "fingerprint: " + from.fingerprint() + "}");
  }
}
