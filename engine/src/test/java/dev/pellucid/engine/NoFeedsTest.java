package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder without settings says in one message where to go, or what to write. */
class NoFeedsTest {
  @TempDir Path root = Path.of("");

  @Test
  void aFolderOfFeedsIsFine() throws IOException {
    file("pellucid.yaml", "");
    file("trout/pellucid.yaml", "");
    assertEquals(Optional.empty(), NoFeeds.message(root, "check"));
  }

  @Test
  void whereNothingLiesBelowTheGoalSaysWhatItAlwaysSaid() throws IOException {
    file("pom.xml", "");
    assertEquals(Optional.empty(), NoFeeds.message(root, "check"));
  }

  @Test
  void foldersOfFeedsBelowAreNamedEachWithItsCommand() throws IOException {
    file("recipes/pellucid.yaml", "");
    file("recipes/pom.xml", "");
    file("recipes/A-1.recipe", "");
    file("farms/north/pellucid.yaml", "");
    file("target/pellucid.yaml", "");
    assertEquals(
        "there is no pellucid.yaml in "
            + root
            + ", so it is no folder of feeds; below it are 2, say which:\n"
            + "  mvn pellucid:report -Dpellucid.folder=farms/north\n"
            + "  mvn pellucid:report -f recipes",
        NoFeeds.message(root, "report").orElseThrow());
  }

  /** What the message says to write is enough for what it is about. */
  @Test
  void recipesWithoutSettingsAreToldWhatToWrite() throws IOException {
    file("tilapia/NT-32.recipe", "");
    String message = NoFeeds.message(root, "check").orElseThrow();
    assertEquals(
        "there is no pellucid.yaml in " + root + ", and tilapia/NT-32.recipe lies below it;",
        message.lines().findFirst().orElseThrow());
    List<String> lines =
        message.lines().filter(line -> line.startsWith("  ")).map(String::strip).toList();
    file("pellucid.yaml", String.join("\n", lines) + "\n");
    assertEquals(Optional.empty(), NoFeeds.message(root, "check"));
    List<Finding> findings =
        Pellucid.check(root, "", LocalDate.of(2026, 11, 25)).findings().stream()
            .filter(one -> one.span().file().path().equals("pellucid.yaml"))
            .filter(one -> !one.code().text().equals("data-no-moisture-nutrient"))
            .toList();
    assertEquals(List.of(), findings);
  }

  private void file(String path, String text) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
