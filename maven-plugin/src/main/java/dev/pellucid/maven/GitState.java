package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * What git says of a folder. Without git, or outside a repository, there is no commit and the tree
 * is not clean.
 *
 * <p>Whether files are as their commit has them is not asked of git, whose answer depends on its
 * index, on filters and on a monitor that a repository may set up: they are held against the names
 * that git gives to contents.
 *
 * @param commit the short name of the commit that is checked out
 * @param uncommitted recipes, premixes, profiles and data files below the folder that are not as
 *     that commit has them, their line ends aside, missing ones too, and those that git does not
 *     know or is told to ignore; absent where nobody knows
 * @param trouble why git gave no answer, where a person should know
 */
record GitState(String commit, Optional<SortedSet<String>> uncommitted, Optional<String> trouble) {
  private static final int FULL_SHA_1 = 40;

  static GitState of(File folder) {
    return of(new Git(folder));
  }

  static GitState of(Git git) {
    try {
      NamedState.isShallow(git);
      Optional<String> full = NamedState.commit(git, "HEAD");
      Optional<String> commit = git.said("rev-parse", "--short=10", "HEAD");
      if (full.isEmpty() || commit.isEmpty()) {
        return none(Optional.empty());
      }
      return new GitState(commit.get(), uncommitted(git, full.get()), Optional.empty());
    } catch (GitTrouble trouble) {
      return none(trouble.isUsual() ? Optional.empty() : Optional.ofNullable(trouble.getMessage()));
    }
  }

  private static GitState none(Optional<String> trouble) {
    return new GitState("", Optional.empty(), trouble);
  }

  /**
   * A commit that changed a folder.
   *
   * @param name in full
   * @param shortName as it is printed
   */
  record Commit(String name, String shortName, String day) {}

  /**
   * The last commits that changed the folder and hold it, the newest first; none before the first.
   *
   * @throws GitTrouble where git cannot be asked
   */
  static List<Commit> last(Git git, int count) throws GitTrouble {
    NamedState.isShallow(git);
    Optional<String> head = NamedState.commit(git, "HEAD");
    if (head.isEmpty()) {
      return List.of();
    }
    String form = "--format=%H %h %cs";
    String most = "--max-count=" + count;
    List<Commit> last = new ArrayList<>();
    for (String line :
        git.said("rev-list", most, form, head.get(), "--", ".").orElse("").split("\n", -1)) {
      String[] words = line.split(" ", -1);
      // A line with the word commit stands before each.
      if (words.length == 3 && NamedState.holdsFolder(git, words[0])) {
        last.add(new Commit(words[0], words[1], words[2]));
      }
    }
    return last;
  }

  private static Optional<SortedSet<String>> uncommitted(Git git, String commit) throws GitTrouble {
    Map<String, String> names = new TreeMap<>();
    for (String entry : git.said("ls-tree", "-r", "-z", commit).orElse("").split("\0", -1)) {
      // "MODE blob NAME<tab>PATH", and links are of another mode.
      int tab = entry.indexOf('\t');
      String[] words = entry.substring(0, Math.max(0, tab)).split(" ", -1);
      if (words.length == 3 && words[1].equals("blob") && words[0].startsWith("100")) {
        names.put(entry.substring(tab + 1), words[2]);
      }
    }
    try {
      return Optional.of(Pellucid.uncommitted(git.folder().toPath(), names, GitState::bears));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  /** Whether git calls a content so: as it is, or with the line ends that git keeps. */
  private static boolean bears(byte[] content, String name) {
    String algorithm = name.length() > FULL_SHA_1 ? "SHA-256" : "SHA-1";
    return name.equals(name(algorithm, content))
        || name.equals(name(algorithm, withoutReturns(content)));
  }

  private static byte[] withoutReturns(byte[] content) {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(content.length);
    for (int i = 0; i < content.length; i++) {
      boolean beforeLineFeed = i + 1 < content.length && content[i + 1] == '\n';
      if (content[i] != '\r' || !beforeLineFeed) {
        kept.write(content[i]);
      }
    }
    return kept.toByteArray();
  }

  private static String name(String algorithm, byte[] content) {
    try {
      MessageDigest digest = MessageDigest.getInstance(algorithm);
      digest.update(("blob " + content.length + "\0").getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest.digest(content));
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }
}
