package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * A copy of the example folder in which single words are changed before it is checked; without its
 * records of figures, and without its lots and batch records unless they are asked for: these would
 * speak of every slip once more.
 */
public final class SlippedFolder {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();

  private final Path copy;

  public SlippedFolder(Path copy) throws IOException {
    this(copy, false);
  }

  /** With lots and batch records. */
  public static SlippedFolder withRecords(Path copy) throws IOException {
    return new SlippedFolder(copy, true);
  }

  private SlippedFolder(Path copy, boolean records) throws IOException {
    this.copy = copy;
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path relative = EXAMPLE.relativize(file);
        if (file.toString().endsWith(".figures")) {
          continue;
        }
        if (!records && (relative.startsWith("lots") || relative.startsWith("batches"))) {
          continue;
        }
        Path to = copy.resolve(EXAMPLE.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
  }

  /** Each stretch must be there, so that no slip goes stale in silence. */
  public SlippedFolder with(String path, String from, String to) throws IOException {
    Path file = copy.resolve(path);
    String text = Files.readString(file);
    assertTrue(text.contains(from), () -> path + " has no " + from);
    Files.writeString(file, text.replace(from, to));
    return this;
  }

  /** Without a whole section. */
  public SlippedFolder withoutSection(String path, String heading) throws IOException {
    String text = Files.readString(copy.resolve(path));
    int start = text.indexOf("\n" + heading + "\n");
    assertTrue(start >= 0, () -> path + " has no section " + heading);
    int end = text.indexOf("\n\n", start + 1);
    Files.writeString(
        copy.resolve(path), text.substring(0, start) + (end < 0 ? "" : text.substring(end + 1)));
    return this;
  }

  public List<Finding> findings() throws IOException {
    CheckReport report = OwnFolder.check(copy, DAY);
    return report.findings();
  }

  /** Every finding as it is printed. */
  public String text() throws IOException {
    return FindingText.of(findings());
  }

  /** Codes in the order of printing. */
  public List<String> codes() throws IOException {
    return findings().stream().map(finding -> finding.code().text()).toList();
  }
}
