package dev.pellucid.engine;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.FiguresReport;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * A copy of the example folder of which records of figures are made, and are then held against it.
 */
abstract class FiguresOfTheExample {
  static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  static final String GROWER = "catfish/CG-36.recipe";
  static final String RECORD = "catfish/CG-36.figures";
  static final String FINISHER = "carp/KF-29.figures";

  @TempDir Path copy = Path.of("");
  SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(copy);
  }

  FiguresReport made() throws IOException {
    return OwnFolder.figures(copy, "", false);
  }

  FiguresReport written() throws IOException {
    FiguresReport report = made();
    report.write(copy);
    return report;
  }

  /** What a check says of records. */
  List<Finding> said(LocalDate day) throws IOException {
    return OwnFolder.check(copy, day).findings().stream()
        .filter(finding -> finding.span().file().path().endsWith(".figures"))
        .toList();
  }

  String said() throws IOException {
    return FindingText.of(said(DAY));
  }

  List<String> lines(String path) throws IOException {
    return Files.readAllLines(copy.resolve(path));
  }

  /** The first word of each line that a change moves, adds or takes out. */
  Set<String> moved(String path) throws IOException {
    List<String> before = lines(path);
    made().write(copy);
    List<String> after = lines(path);
    Set<String> subjects = new TreeSet<>();
    List<String> all = new ArrayList<>(before);
    all.addAll(after);
    for (String line : all) {
      if (!before.contains(line) || !after.contains(line)) {
        subjects.add(line.strip().split(" {2,}", -1)[0]);
      }
    }
    return subjects;
  }
}
