package dev.pellucid.engine.docs;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The folder of feeds in which a page of the documentation runs. It begins as the example, without
 * its records of figures, which would speak of every slip once more, or empty; the page writes and
 * edits its files, and asks what the check says.
 */
final class DocFolder {
  static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static final Path EXAMPLE = Path.of("..", "recipes");
  private static final Bundled ALONG = Bundled.ofThisVersion();
  private static final Pattern PART = Pattern.compile("(?m)^(?=[a-z])");

  private final Path root;
  private final Path committed;
  private @Nullable CheckReport report;

  private DocFolder(Path root, Path committed) {
    this.root = root;
    this.committed = committed;
  }

  /**
   * A new folder.
   *
   * @param place a new place on the disk
   * @param as {@code example} or {@code empty}
   */
  static DocFolder begin(Path place, String as) throws IOException {
    DocFolder folder = new DocFolder(place.resolve("feeds"), place.resolve("committed"));
    Files.createDirectories(folder.root);
    if (as.equals("example")) {
      copy(EXAMPLE, folder.root);
    } else if (!as.equals("empty")) {
      throw new AssertionError("a page runs in a folder that is example or empty, not " + as);
    }
    folder.commit();
    return folder;
  }

  Path root() {
    return root;
  }

  /** As the goals see it, with the data that come along. */
  FolderState state() {
    return FolderState.at(root).over(ALONG);
  }

  /** The folder as it was committed last. */
  Path committed() {
    return committed;
  }

  void commit() throws IOException {
    copy(root, committed);
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path relative = from.relativize(file);
        if (!relative.startsWith("target") && !file.toString().endsWith(".figures")) {
          Path copy = to.resolve(relative.toString());
          Files.createDirectories(copy.getParent());
          Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }

  boolean has(String path) throws IOException {
    return Files.isRegularFile(root.resolve(path)) || ALONG.text(path).isPresent();
  }

  /** The text of a file; where the folder has none, of the one that comes along. */
  String text(String path) throws IOException {
    Path file = root.resolve(path);
    return Files.isRegularFile(file) ? Files.readString(file) : ALONG.text(path).orElseThrow();
  }

  void write(String path, String text) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    changed();
  }

  /** What was found is no longer so: a file was written. */
  void changed() {
    report = null;
  }

  /**
   * Puts sections of a recipe, or blocks of a data file, in the place of those that begin with the
   * same word; those that are new come last.
   */
  void writeParts(String path, String text) throws IOException {
    Map<String, String> parts = parts(text(path));
    parts(text).forEach((word, part) -> parts.put(word, part.stripTrailing() + "\n\n"));
    write(path, String.join("", parts.values()).stripTrailing() + "\n");
  }

  private static Map<String, String> parts(String text) {
    Map<String, String> parts = new LinkedHashMap<>();
    for (String part : PART.split(text, -1)) {
      String word = part.strip().split("[\\s:]", 2)[0];
      parts.merge(word, part, String::concat);
    }
    return parts;
  }

  /**
   * Changes lines that stand one below the other.
   *
   * @param diff lines that go begin with {@code -}, those that come with {@code +}, others stay
   * @return what is wrong with it; empty where it was done
   */
  Optional<String> edit(String path, List<String> diff) throws IOException {
    String before = joined(diff, "-");
    String text = text(path);
    int at = ("\n" + text).indexOf("\n" + before);
    if (at < 0) {
      return Optional.of(path + " has no such lines, one below the other:\n" + before);
    }
    if (("\n" + text).indexOf("\n" + before, at + 1) >= 0) {
      return Optional.of(path + " has these lines twice:\n" + before);
    }
    write(path, text.substring(0, at) + joined(diff, "+") + text.substring(at + before.length()));
    return Optional.empty();
  }

  private static String joined(List<String> diff, String sign) {
    StringBuilder lines = new StringBuilder();
    for (String line : diff) {
      if (line.isEmpty() || line.startsWith(" ") || line.startsWith(sign)) {
        lines.append(line.isEmpty() ? "" : line.substring(1)).append('\n');
      }
    }
    return lines.toString();
  }

  CheckReport check() throws IOException {
    if (report == null) {
      report = Pellucid.check(state(), DAY);
    }
    return report;
  }

  /** Every finding, as it is printed. */
  List<String> printed() throws IOException {
    List<String> printed = new ArrayList<>();
    check().findings().forEach(finding -> printed.add(FindingText.of(finding).strip()));
    return printed;
  }

  /** Errors and warnings, by how they are printed. */
  Map<String, Finding> grave() throws IOException {
    Map<String, Finding> grave = new LinkedHashMap<>();
    for (Finding finding : check().findings()) {
      if (finding.severity() != Severity.NOTE) {
        grave.put(FindingText.of(finding).strip(), finding);
      }
    }
    return grave;
  }
}
