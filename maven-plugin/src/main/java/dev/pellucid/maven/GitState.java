package dev.pellucid.maven;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * What git says of a folder, asked through the {@code git} command. Without git, or outside a
 * repository, there is no commit and the tree is not clean.
 *
 * @param commit the short name of the commit that is checked out
 * @param clean whether every recipe, premix, profile and data file below the folder is as that
 *     commit has it; one that git does not know, or is told to ignore, is not
 */
record GitState(String commit, boolean clean) {
  private static final GitState NONE = new GitState("", false);
  private static final String[] CHANGES = {
    "status", "--porcelain", "--untracked-files=all", "--ignored", "--",
    "*.recipe", "*.premix", "*.limits", "*.yaml", ":(exclude)target"
  };
  private static final int SECONDS = 30;

  static GitState of(File folder) {
    Optional<String> commit = said(folder, "rev-parse", "--short=10", "HEAD");
    Optional<String> changes = said(folder, CHANGES);
    return commit.isEmpty() || changes.isEmpty()
        ? NONE
        : new GitState(commit.get(), changes.get().isEmpty());
  }

  /** A commit that changed a folder, by its short name, and its day. */
  record Commit(String name, String day) {}

  /** The last commits that changed the folder, the newest first; none without git. */
  static List<Commit> last(File folder, int count) {
    return said(folder, "log", "-n", String.valueOf(count), "--format=%h %cs", "--", ".").stream()
        .flatMap(String::lines)
        .map(line -> line.split(" ", 2))
        .filter(words -> words.length == 2)
        .map(words -> new Commit(words[0], words[1]))
        .toList();
  }

  private static Optional<String> said(File folder, String... words) {
    return bytes(folder, words).map(bytes -> new String(bytes, StandardCharsets.UTF_8).strip());
  }

  /** What git prints; empty where there is no git, or where it says no. */
  static Optional<byte[]> bytes(File folder, String... words) {
    List<String> command = Stream.concat(Stream.of("git"), Stream.of(words)).toList();
    try {
      Process git =
          new ProcessBuilder(command)
              .directory(folder)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      git.getOutputStream().close();
      byte[] bytes = git.getInputStream().readAllBytes();
      return git.waitFor(SECONDS, TimeUnit.SECONDS) && git.exitValue() == 0
          ? Optional.of(bytes)
          : Optional.empty();
    } catch (IOException noGit) {
      return Optional.empty();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }
}
