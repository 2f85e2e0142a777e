package dev.pellucid.maven;

import dev.pellucid.engine.folder.Past;
import dev.pellucid.engine.goal.FolderState;
import java.io.File;
import java.io.FileInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A folder of feeds in the state that a name means: a git revision, another folder, or the files as
 * they lie there. A name is looked up first, and only the full name of the commit that it stands
 * for goes on. {@code git archive} works in a shallow clone, a work tree, with a detached head and
 * in a subfolder of a repository, and touches neither index nor files; what {@code .gitattributes}
 * marks {@code export-ignore} it leaves out, and line ends are those of a checkout.
 */
final class NamedState {
  private static final String POM = "pom.xml";
  private static final String FULL_NAME = "[0-9a-f]{40}|[0-9a-f]{64}";

  private NamedState() {}

  /**
   * The state.
   *
   * @param name empty for the files as they lie there
   * @throws GitTrouble where the name means nothing here
   */
  static FolderState of(File folder, String name) throws GitTrouble {
    return of(new Git(folder), name);
  }

  static FolderState of(Git git, String name) throws GitTrouble {
    return of(git, name, (none, tip) -> Past.NONE);
  }

  /** How a folder was before a commit, its own included. */
  interface Before {
    Past of(Git git, String tip);
  }

  /**
   * The same with how it was before.
   *
   * @throws GitTrouble where the name means nothing here
   */
  static FolderState of(Git git, String name, Before before) throws GitTrouble {
    File folder = git.folder();
    if (name.isEmpty()) {
      return FolderState.at(folder.toPath()).knowing(before.of(git, "HEAD"));
    }
    if (isFolder(folder, name)) {
      File other = folder(folder, name);
      return FolderState.at(other.toPath()).knowing(before.of(new Git(other), "HEAD"));
    }
    Commit commit = named(git, name);
    if (!holdsFolder(git, commit.name())) {
      throw GitTrouble.noSuchFolder(folder, name);
    }
    return of(git, commit).knowing(before.of(git, commit.name()));
  }

  /**
   * The POM that lies in the folder in that state; empty where there is none.
   *
   * @throws GitTrouble where the name means nothing here
   */
  static Optional<String> pom(Git git, String name) throws GitTrouble {
    File folder = git.folder();
    if (!name.isEmpty() && !isFolder(folder, name)) {
      return pom(git, named(git, name));
    }
    File pom = new File(name.isEmpty() ? folder : folder(folder, name), POM);
    try (FileInputStream in = new FileInputStream(pom)) {
      return Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException unread) {
      return Optional.empty();
    }
  }

  /** The POM that lay in the folder in a commit; empty where there was none. */
  static Optional<String> pom(Git git, Commit commit) throws GitTrouble {
    return git.said("cat-file", "blob", commit.name() + ":./" + POM);
  }

  private static File folder(File folder, String name) {
    return new File(name).isAbsolute() ? new File(name) : new File(folder, name);
  }

  /** Whether a name is that of a folder. */
  static boolean isFolder(File folder, String name) {
    return !name.isEmpty() && folder(folder, name).isDirectory();
  }

  /**
   * The commit that a name stands for.
   *
   * @throws GitTrouble where it stands for none, with the cause
   */
  static Commit named(Git git, String name) throws GitTrouble {
    if (name.startsWith("-") || name.chars().anyMatch(Character::isISOControl)) {
      throw GitTrouble.notARevision(name);
    }
    boolean isShallow = isShallow(git);
    Optional<String> commit = commit(git, name);
    if (commit.isEmpty()) {
      throw commit(git, "HEAD").isEmpty()
          ? GitTrouble.nothingCommitted(git.folder())
          : name.contains("..") ? GitTrouble.range(name) : GitTrouble.unknown(name, isShallow);
    }
    return new Commit(commit.get());
  }

  /** The full name of a commit that is known to be there, as git tells it. */
  record Commit(String name) {
    Commit {
      if (!name.matches(FULL_NAME)) {
        throw new IllegalArgumentException("not the full name of a commit: " + name);
      }
    }
  }

  /** The folder in a commit that holds it. */
  static FolderState of(Git git, Commit commit) {
    return FolderState.packed(
        reading ->
            git.packed(
                commit.name(),
                tar -> {
                  reading.of(tar);
                  return true;
                }));
  }

  /** Whether the folder was there in a commit. */
  static boolean holdsFolder(Git git, String commit) throws GitTrouble {
    return git.said("rev-parse", "--verify", "--quiet", commit + ":./").isPresent();
  }

  /** The full name of the commit that a name stands for; a name is never taken for an option. */
  static Optional<String> commit(Git git, String name) throws GitTrouble {
    // In two steps, for of some names, as :/WORDS, what stands behind them would be a part.
    Optional<String> named =
        git.said("rev-parse", "--verify", "--quiet", "--end-of-options", name)
            .filter(said -> said.matches(FULL_NAME));
    return named.isEmpty()
        ? named
        : git.said("rev-parse", "--verify", "--quiet", named.get() + "^{commit}")
            .filter(said -> said.matches(FULL_NAME));
  }

  /**
   * Whether history ends early in this clone.
   *
   * @throws GitTrouble where the folder is not in the files of a repository
   */
  static boolean isShallow(Git git) throws GitTrouble {
    String[] said =
        git.saidOfRepository("rev-parse", "--is-inside-work-tree", "--is-shallow-repository")
            .split("\n", -1);
    if (!said[0].equals("true")) {
      throw GitTrouble.notUnderGit(git.folder());
    }
    return said.length > 1 && said[1].equals("true");
  }
}
