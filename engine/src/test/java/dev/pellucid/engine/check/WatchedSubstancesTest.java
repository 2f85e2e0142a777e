package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.goal.CheckReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Undesirable substances and carotenoids: judged by what tells them, and by nothing else. */
class WatchedSubstancesTest {
  private static final String CAKE = "ingredients/groundnut-cake.yaml";

  @TempDir Path copy = Path.of("");

  @Test
  void aMouldyLotBreaksTheMaximumOfTheFeed() throws IOException {
    String told = new SlippedFolder(copy).with(CAKE, "below 0.02 mg/kg", "0.12 mg/kg").text();
    assertTrue(
        told.contains("\ncatfish/CF-31.recipe:16:3: error: aflatoxin-b1 is at least 0.01"), told);
    assertTrue(told.contains("the legal maximum (EU) is 0.01"), told);
    assertTrue(told.contains("do not give it, and counts as nothing"), told);
    assertTrue(told.contains("help: law cannot be waived"), told);
  }

  @Test
  void whatNothingTellsIsNeitherAFindingNorCountedAsChecked() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    for (String file : telling("    hydrocyanic-acid: none\n")) {
      folder.with(file, "    hydrocyanic-acid: none\n", "");
    }
    long all = checked();
    folder.with("ingredients/cassava-meal.yaml", "    hydrocyanic-acid: 60 mg/kg\n", "");
    assertEquals(List.of(), folder.codes(), folder.text());
    assertEquals(all - 1, checked(), "cassava is in one recipe");
  }

  @Test
  void tooMuchColourIsNamedBySumToo() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                "ingredients/krill-meal.yaml",
                "astaxanthin: 120 mg/kg",
                "astaxanthin: 4000 mg/kg\n    canthaxanthin: 4000 mg/kg");
    List<String> broken =
        folder.findings().stream()
            .filter(finding -> finding.span().file().fileName().equals("TS-48.recipe"))
            .map(finding -> finding.about().subject())
            .toList();
    assertEquals(List.of("astaxanthin + canthaxanthin", "canthaxanthin"), broken, folder.text());
  }

  /** The ingredients of which the file has some line. */
  private List<String> telling(String line) throws IOException {
    List<String> telling = new ArrayList<>();
    try (Stream<Path> files = Files.list(copy.resolve("ingredients"))) {
      for (Path file : files.sorted().toList()) {
        if (Files.readString(file).contains(line)) {
          telling.add("ingredients/" + file.getFileName());
        }
      }
    }
    assertTrue(telling.size() > 20, telling.toString());
    return telling;
  }

  private int checked() throws IOException {
    CheckReport report = OwnFolder.check(copy, LocalDate.of(2026, 11, 25));
    return report.limits();
  }
}
