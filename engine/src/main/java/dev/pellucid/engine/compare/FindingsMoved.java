package dev.pellucid.engine.compare;

import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the check of a later state says of a file and that of an earlier one did not, and the other
 * way round. Like ones are counted: of two where one was, one is new. One of which only the words
 * or the place changed is neither new nor gone; one that became an error is.
 *
 * @param fresh those that are new
 * @param gone those that are said no more
 */
public record FindingsMoved(List<Found> fresh, List<Found> gone) {
  public static final FindingsMoved NONE = new FindingsMoved(List.of(), List.of());

  public FindingsMoved {
    fresh = List.copyOf(fresh);
    gone = List.copyOf(gone);
  }

  /** What is said of one file, or of one thing that may lie in another file now. */
  public static FindingsMoved between(List<Found> was, List<Found> is) {
    return was.isEmpty() && is.isEmpty()
        ? NONE
        : new FindingsMoved(beyond(is, was), beyond(was, is));
  }

  /**
   * Those that have none like them among the others. Of like ones those count as the same first
   * whose very words are on the other side too.
   */
  private static List<Found> beyond(List<Found> these, List<Found> others) {
    Map<String, Integer> words = new HashMap<>();
    Map<String, Integer> known = new HashMap<>();
    for (Found one : others) {
      words.merge(inWords(one), 1, Integer::sum);
      known.merge(one.known(), 1, Integer::sum);
    }
    boolean[] same = new boolean[these.size()];
    for (int i = 0; i < same.length; i++) {
      same[i] = takes(words, inWords(these.get(i))) && takes(known, these.get(i).known());
    }
    List<Found> beyond = new ArrayList<>();
    for (int i = 0; i < same.length; i++) {
      if (!same[i] && !takes(known, these.get(i).known())) {
        beyond.add(these.get(i));
      }
    }
    return beyond;
  }

  private static String inWords(Found one) {
    return one.known() + "|" + one.headline();
  }

  private static boolean takes(Map<String, Integer> there, String key) {
    int left = there.getOrDefault(key, 0);
    if (left > 0) {
      there.put(key, left - 1);
    }
    return left > 0;
  }

  public boolean isNone() {
    return fresh.isEmpty() && gone.isEmpty();
  }

  /** How many of a severity are new. */
  public int fresh(Severity severity) {
    return count(fresh, severity);
  }

  /** How many of a severity are gone. */
  public int gone(Severity severity) {
    return count(gone, severity);
  }

  private static int count(List<Found> all, Severity severity) {
    int count = 0;
    for (Found one : all) {
      count += one.severity() == severity ? 1 : 0;
    }
    return count;
  }

  /** The gravest first: where an error is new, where a warning is, where something is gone. */
  int rank() {
    return fresh(Severity.ERROR) > 0
        ? 0
        : fresh(Severity.WARNING) > 0 ? 1 : isNone() ? Effect.LEAST : 2;
  }
}
