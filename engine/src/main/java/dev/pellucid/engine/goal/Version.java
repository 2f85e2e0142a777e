package dev.pellucid.engine.goal;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Which state of the folder a batch sheet is made from, as the version control says.
 *
 * @param commit the short name of the commit; empty where there is none
 * @param uncommitted paths below the folder of files that are not as the commit has them, new or
 *     missing ones too; absent where nobody knows
 */
public record Version(String commit, Optional<SortedSet<String>> uncommitted) {
  /** Where no version control says anything. */
  public static final Version UNKNOWN = new Version("", Optional.empty());

  /** A state in which every file is as its commit has it. */
  public static Version committed(String commit) {
    return new Version(commit, Optional.of(new TreeSet<>()));
  }

  /** Whether all that something hangs on is as the commit has it. */
  boolean holds(Predicate<String> hangsOn) {
    return uncommitted.isPresent() && uncommitted.get().stream().noneMatch(hangsOn);
  }
}
