package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What README.md shows is what the tool says today. */
class ReadmeTest {
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final Path OWN_FOLDER =
      Path.of("..", "maven-plugin", "src", "it", "an-own-folder-needs-no-parent");

  @TempDir Path copy;

  @Test
  void theRecipeIsTheExampleWithLinesLeftOut() throws IOException {
    String example = Files.readString(Path.of("..", "recipes", GROWER));
    assertShortened(example.lines().toList(), block("recipe"));
  }

  @Test
  void theFindingIsWhatTheSlipGives() throws IOException {
    String slip = "soybean-meal-48              4%d.00 %%";
    String text = new SlippedFolder(copy).with(GROWER, slip.formatted(4), slip.formatted(0)).text();
    assertEquals(text.strip().replace("catfish/", "recipes/catfish/"), block("finding").strip());
  }

  @Test
  void theSheetIsTheExampleSheetWithLinesLeftOut() throws IOException {
    String sheet =
        OwnFolder.batchSheets(
                Example.whole(), LocalDate.of(2026, 11, 25), Version.committed("1a2b3c4"))
            .sheets()
            .stream()
            .filter(one -> one.code().equals("CG-36"))
            .findFirst()
            .orElseThrow()
            .text();
    assertShortened(sheet.lines().toList(), block("sheet"));
  }

  @Test
  void theChangeIsWhatItDoes() throws IOException {
    String meal = "soybean-meal-48              4%d.00 %%";
    SlippedFolder.withRecords(copy).with(GROWER, meal.formatted(4), meal.formatted(0));
    String text =
        Pellucid.compare(
                FolderState.at(Example.whole()),
                FolderState.at(copy),
                LocalDate.of(2026, 11, 25),
                "compare.html")
            .text();
    assertShortened(text.lines().toList(), block("change"));
  }

  @Test
  void theLeastCostIsThatOfDearFishMeal() throws IOException {
    SlippedFolder.withRecords(copy)
        .with("prices/2026-11.yaml", "fish-meal-65: 1.62 EUR/kg", "fish-meal-65: 2.16 EUR/kg");
    String text =
        OwnFolder.leastCost(
                copy,
                LocalDate.of(2026, 11, 25),
                "CG-36",
                Map.of("move", "3 points"),
                PrintedPaths.BELOW_FOLDER)
            .text();
    assertShortened(text.lines().toList(), block("least-cost"));
  }

  @Test
  void theTraceIsThatOfTheExample() throws IOException {
    String text =
        OwnFolder.trace(Example.whole(), PrintedPaths.BELOW_FOLDER, "SE1-9042", "").text();
    assertShortened(text.lines().toList(), block("trace"));
  }

  @Test
  void theDiffIsWhatTheSlipDoesToTheFigures() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    List<String> before = figures();
    String slip = "soybean-meal-48              4%d.00 %%";
    folder.with(GROWER, slip.formatted(4), slip.formatted(0));
    List<String> after = figures();
    List<String> diff = block("diff").lines().toList();
    assertShortened(before, without("+", diff));
    assertShortened(after, without("-", diff));
    assertTrue(diff.stream().noneMatch(line -> line.startsWith("-") && after.contains(fact(line))));
    assertTrue(
        diff.stream().noneMatch(line -> line.startsWith("+") && before.contains(fact(line))));
  }

  /** The project that a new folder begins with is the one that a real build of the plugin uses. */
  @Test
  void theProjectOfAnOwnFolderIsOneThatIsBuilt() throws IOException {
    String pom = Files.readString(OWN_FOLDER.resolve("pom.xml"));
    String version = PublishedVersionTest.version();
    assertEquals(pom.replace("@project.version@", version).strip(), block("xml").strip());
    assertFalse(pom.contains("<parent>") || pom.contains("pellucid.day"), pom);
  }

  @Test
  void theFilesOfAnOwnFolderAreThoseOfTheOneThatIsBuilt() throws IOException {
    List<String> named =
        block("folder").lines().map(line -> line.split(" ", 2)[0]).sorted().toList();
    try (Stream<Path> files = Files.walk(OWN_FOLDER)) {
      assertEquals(
          files
              .filter(Files::isRegularFile)
              .map(file -> OWN_FOLDER.relativize(file).toString().replace('\\', '/'))
              .filter(path -> !path.matches("pom.xml|invoker.properties|verify.groovy"))
              .sorted()
              .toList(),
          named);
    }
  }

  private List<String> figures() throws IOException {
    String text = OwnFolder.figures(copy, "CG-36", false).changes().get(0).text();
    return text.lines().toList();
  }

  private static String without(String sign, List<String> diff) {
    return diff.stream()
        .filter(line -> !line.startsWith(sign))
        .map(ReadmeTest::fact)
        .collect(Collectors.joining("\n"));
  }

  private static String fact(String line) {
    return line.substring(1);
  }

  private static void assertShortened(List<String> whole, String shortened) {
    Iterator<String> lines = whole.iterator();
    List<String> kept = shortened.lines().filter(line -> !line.isBlank()).toList();
    assertFalse(kept.size() < 10, "too little is shown");
    for (String line : kept) {
      boolean found = false;
      while (!found && lines.hasNext()) {
        found = lines.next().equals(line);
      }
      assertTrue(found, "not there, or not in this order: " + line);
    }
  }

  private static String block(String kind) throws IOException {
    String readme = Files.readString(Path.of("..", "README.md"));
    Matcher block = Pattern.compile("(?s)\n```" + kind + "\n(.*?)\n```\n").matcher(readme);
    assertTrue(block.find(), "no block " + kind);
    return block.group(1);
  }
}
