package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.goal.NoFeeds;
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
    assertEquals(Optional.empty(), NoFeeds.message(root, called("check", root)));
  }

  @Test
  void whereNothingLiesBelowTheGoalSaysWhatItAlwaysSaid() throws IOException {
    file("pom.xml", "");
    assertEquals(Optional.empty(), NoFeeds.message(root, called("check", root)));
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
        NoFeeds.message(root, called("report", root)).orElseThrow());
  }

  @Test
  void theCommandCanBeTypedWhereTheGoalWasCalled() throws IOException {
    file("pom.xml", "");
    file("farms/north/pellucid.yaml", "");
    file("farms/south side/pellucid.yaml", "");
    file("farms/west/pellucid.yaml", "");
    file("farms/west/pom.xml", "");
    Path farms = root.resolve("farms");
    assertEquals(
        List.of(
            "  mvn pellucid:check -Dpellucid.folder=farms/north",
            "  mvn pellucid:check \"-Dpellucid.folder=farms/south side\"",
            "  mvn pellucid:check -f farms/west"),
        commands(farms, called("check", root)));
    assertEquals(
        List.of(
            "  mvn pellucid:check -f farms -Dpellucid.folder=north",
            "  mvn pellucid:check -f farms \"-Dpellucid.folder=south side\"",
            "  mvn pellucid:check -f farms/west"),
        commands(farms, new NoFeeds.Called("check", root, farms)));
    Path project = root.resolve("build");
    assertEquals(
        "  mvn pellucid:check -Dpellucid.folder=" + farms.resolve("north"),
        commands(farms, called("check", project)).get(0));
  }

  private static List<String> commands(Path folder, NoFeeds.Called called) throws IOException {
    String message = NoFeeds.message(folder, called).orElseThrow();
    return message.lines().filter(line -> line.startsWith("  ")).toList();
  }

  private static NoFeeds.Called called(String goal, Path project) {
    return new NoFeeds.Called(goal, project, project);
  }

  /** What the message says to write is enough for what it is about. */
  @Test
  void recipesWithoutSettingsAreToldWhatToWrite() throws IOException {
    file("tilapia/NT-32.recipe", "");
    String message = NoFeeds.message(root, called("check", root)).orElseThrow();
    assertEquals(
        "there is no pellucid.yaml in " + root + ", and tilapia/NT-32.recipe lies below it;",
        message.lines().findFirst().orElseThrow());
    List<String> lines =
        message.lines().filter(line -> line.startsWith("  ")).map(String::strip).toList();
    file("pellucid.yaml", String.join("\n", lines) + "\n");
    assertEquals(Optional.empty(), NoFeeds.message(root, called("check", root)));
    List<Finding> findings =
        OwnFolder.check(root, LocalDate.of(2026, 11, 25)).findings().stream()
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
