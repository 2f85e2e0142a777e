package dev.pellucid.engine.workspace;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The findings that are printed: of one code in one file the first hundred, and then how many more
 * there are. Nobody fixes more than that by hand; such a file is of another kind, or was written by
 * a machine, and one cause is behind all. Who counts or compares takes all of them.
 */
public final class Shown {
  public static final Code MORE = new Code("more-findings");

  /** How many of one code in one file are printed. */
  public static final int MOST = 100;

  private Shown() {}

  /** One code in one file. */
  private record Kind(String path, Code code) {
    static Kind of(Finding finding) {
      return new Kind(finding.span().file().path(), finding.code());
    }
  }

  /**
   * Those that are printed of all, in their order; where some are left out, one stands in the place
   * of the first of them and says how many.
   */
  public static List<Finding> of(List<Finding> all) {
    Map<Kind, Map<Severity, Long>> left = leftOut(all);
    if (left.isEmpty()) {
      return all;
    }
    List<Finding> shown = new ArrayList<>();
    Map<Kind, Integer> before = new HashMap<>();
    Set<Kind> told = new HashSet<>();
    for (Finding finding : all) {
      Kind kind = Kind.of(finding);
      if (before.merge(kind, 1, Integer::sum) <= MOST) {
        shown.add(finding);
      } else if (told.add(kind)) {
        shown.add(marker(finding, left.getOrDefault(kind, Map.of())));
      }
    }
    return List.copyOf(shown);
  }

  private static Map<Kind, Map<Severity, Long>> leftOut(List<Finding> all) {
    Map<Kind, Integer> before = new HashMap<>();
    Map<Kind, Map<Severity, Long>> left = new HashMap<>();
    for (Finding finding : all) {
      Kind kind = Kind.of(finding);
      if (before.merge(kind, 1, Integer::sum) > MOST) {
        left.computeIfAbsent(kind, none -> new EnumMap<>(Severity.class))
            .merge(finding.severity(), 1L, Long::sum);
      }
    }
    return left;
  }

  private static Finding marker(Finding first, Map<Severity, Long> counts) {
    SourceFile file = first.span().file();
    long all = counts.values().stream().mapToLong(count -> count).sum();
    Severity gravest = counts.keySet().iterator().next();
    return Finding.of(
            MORE,
            gravest,
            file.span(first.span().start(), first.span().start()),
            "and "
                + Plural.of(all, "more finding")
                + " of the kind "
                + first.code()
                + " from here on in this file")
        .helping("fix the first ones and check again; so many in one file usually have one cause");
  }
}
