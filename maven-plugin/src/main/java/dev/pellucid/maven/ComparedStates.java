package dev.pellucid.maven;

import dev.pellucid.engine.folder.Past;
import dev.pellucid.engine.goal.FolderState;
import java.util.Optional;

/**
 * The two states that are compared. {@code A...B} stands for what came on B since it left A: from
 * the newest commit that both have, to B; without a B it is what is checked out, and the files as
 * they lie there are held against that commit.
 *
 * @param pomBefore the POM of the folder in the earlier state, where it has one
 */
record ComparedStates(FolderState from, FolderState to, Optional<String> pomBefore) {
  private static final String SINCE = "...";

  /**
   * @param to empty for the files as they lie there
   * @throws GitTrouble where a name means nothing here, with the cause
   */
  static ComparedStates of(Git git, String from, String to) throws GitTrouble {
    return of(git, from, to, (none, tip) -> Past.NONE);
  }

  /**
   * The same, each state with how it was before.
   *
   * @param to empty for the files as they lie there
   * @throws GitTrouble where a name means nothing here, with the cause
   */
  static ComparedStates of(Git git, String from, String to, NamedState.Before before)
      throws GitTrouble {
    int dots = from.indexOf(SINCE);
    if (dots < 0 || NamedState.isFolder(git.folder(), from)) {
      return new ComparedStates(
          NamedState.of(git, from, before),
          NamedState.of(git, to, before),
          NamedState.pom(git, from));
    }
    String left = from.substring(0, dots);
    String right = from.substring(dots + SINCE.length());
    if (!right.isEmpty() && !to.isEmpty()) {
      throw GitTrouble.twoEnds(from, to);
    }
    String end = right.isEmpty() ? to : right;
    NamedState.Commit base = base(git, left.isEmpty() ? "HEAD" : left, end);
    if (!NamedState.holdsFolder(git, base.name())) {
      throw GitTrouble.noSuchFolder(git.folder(), base.name());
    }
    return new ComparedStates(
        NamedState.of(git, base).knowing(before.of(git, base.name())),
        NamedState.of(git, end, before),
        NamedState.pom(git, base));
  }

  /** The newest commit that both have; of a folder, what is checked out stands for it. */
  private static NamedState.Commit base(Git git, String left, String end) throws GitTrouble {
    boolean checkedOut = end.isEmpty() || NamedState.isFolder(git.folder(), end);
    NamedState.Commit one = NamedState.named(git, left);
    NamedState.Commit other = NamedState.named(git, checkedOut ? "HEAD" : end);
    // Only full names go on. Where there are several such commits, git tells one of the best.
    Optional<String> base =
        git.said("merge-base", one.name(), other.name()).flatMap(said -> said.lines().findFirst());
    if (base.isEmpty()) {
      throw GitTrouble.noCommonCommit(left, checkedOut ? "HEAD" : end, NamedState.isShallow(git));
    }
    return new NamedState.Commit(base.get());
  }
}
