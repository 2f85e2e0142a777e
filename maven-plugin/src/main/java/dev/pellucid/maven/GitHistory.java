package dev.pellucid.maven;

import dev.pellucid.engine.folder.Committed;
import dev.pellucid.engine.folder.Past.Written;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** How the files below a folder were written by commits, by plumbing that no setting changes. */
final class GitHistory {
  private static final Pattern COMMIT = Pattern.compile("[0-9a-f]{40}|[0-9a-f]{64}");
  private static final int SHORT = 10;
  private static final String GONE = "D";

  private final Git git;
  private final String below;

  /**
   * @param below where the folder of feeds lies, with a slash at its end
   */
  GitHistory(Git git, String below) {
    this.git = git;
    this.below = below;
  }

  /** A file that a commit wrote, or took away. */
  private record Change(String commit, String path, String id, boolean isGone) {}

  /**
   * What commits wrote, in their order.
   *
   * @throws GitTrouble where git cannot be asked
   * @throws IOException where its answer is not whole
   */
  List<Written> of(String folder, List<String> commits) throws IOException {
    List<Change> changes =
        git.answered(
            commits,
            this::changes,
            "diff-tree",
            "--stdin",
            "-r",
            "-m",
            "--root",
            "-z",
            "--no-renames",
            "--no-abbrev",
            "--raw",
            "--",
            folder);
    Set<String> names = new HashSet<>();
    changes.stream().filter(one -> !one.isGone()).forEach(one -> names.add(one.id()));
    Map<String, GitObject> contents = GitObject.of(git, names);
    List<Written> written = new ArrayList<>();
    for (Change one : changes) {
      Optional<String> text =
          Optional.ofNullable(contents.get(one.id()))
              .filter(it -> !one.isGone())
              .map(GitObject::text);
      if (one.isGone() || text.isPresent()) {
        written.add(new Written(one.path(), one.commit().substring(0, SHORT), text));
      }
    }
    return written;
  }

  /** "COMMIT", then for each file ":MODE MODE ID ID STATUS" and its path, a zero behind each. */
  private List<Change> changes(InputStream output) throws IOException {
    String[] parts = new String(output.readAllBytes(), StandardCharsets.UTF_8).split("\0", -1);
    List<Change> changes = new ArrayList<>();
    String commit = "";
    for (int i = 0; i < parts.length; i++) {
      if (COMMIT.matcher(parts[i]).matches()) {
        commit = parts[i];
      } else if (parts[i].startsWith(":") && i + 1 < parts.length) {
        change(commit, parts[i].split(" ", -1), parts[i + 1]).ifPresent(changes::add);
        i++;
      }
    }
    return changes;
  }

  private Optional<Change> change(String commit, String[] words, String path) {
    boolean isOurs =
        words.length == 5
            && !commit.isEmpty()
            && path.startsWith(below)
            && Committed.isRead(path.substring(below.length()));
    return isOurs
        ? Optional.of(
            new Change(commit, path.substring(below.length()), words[3], words[4].equals(GONE)))
        : Optional.empty();
  }
}
