package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.FiguresReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.Sheet;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A line at zero is there to be taken up again: until then nothing that is checked, weighed,
 * printed or bought knows of it.
 */
class LinesAtZeroTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();
  private static final String GROWER = "trout/TG-44.recipe";

  @TempDir Path copy;

  @BeforeEach
  void copyExample() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = copy.resolve(EXAMPLE.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
  }

  /** Raw, medicated, of the own species, unpriced, genetically modified and all others. */
  @Test
  void everyOtherIngredientAtZeroChangesNothing() throws IOException {
    Map<String, String> sheets = sheets();
    for (Path recipe : recipes()) {
      addAllOthers(recipe);
    }
    assertEquals("", FindingText.of(OwnFolder.check(copy, DAY).findings()));
    FiguresReport figures = OwnFolder.figures(copy, "", true);
    assertEquals(List.of(), figures.changes());
    assertEquals(sheets, sheets());
    assertTrue(
        compared(EXAMPLE, copy).text().startsWith("no finding is new and none is gone"),
        () -> "a line at zero moved a feed");
  }

  @Test
  void aLineThatIsLeftOutIsTakenOutAndOneThatComesBackIsTakenIn() throws IOException {
    rewrite(
        "dl-methionine                0.20 %",
        "dl-methionine  0.00 %  within 0.1 to 0.4 % or none");
    String out = compared(EXAMPLE, copy).text();
    assertTrue(out.contains("\n  dl-methionine 0.2 % -> none\n"), out);
    String in = compared(copy, EXAMPLE).text();
    assertTrue(in.contains("\n  dl-methionine none -> 0.2 %\n"), in);
    assertFalse(sheet().contains("DL-methionine,"));
  }

  /** What is said of its grinding and its overage waits for it. */
  @Test
  void whatElseIsSaidOfItWaitsForIt() throws IOException {
    String sheet = sheet();
    assertTrue(sheet.contains("DL-methionine,"), sheet);
    rewrite("  wheat-gluten ", "  krill-meal  0.00 %  within 1 to 4 % or none\n  wheat-gluten ");
    rewrite("\ncoat\n", "\ncoat\n  soybean-oil  0.00 %  within 1 to 4 % or none\n");
    rewrite("  blend      time", "  grind krill-meal screen 0.6 mm\n  blend      time");
    rewrite(
        "\noverage\n",
        "\noverage\n  krill-meal 5 % for handling\n  soybean-oil 20 g per weighing for handling\n");
    assertEquals("", FindingText.of(OwnFolder.check(copy, DAY).findings()));
    assertEquals(sheet, sheet());
  }

  @Test
  void withoutAWordOfHowFarItMayMoveItIsNoted() throws IOException {
    assertEquals(
        """
        trout/TG-44.recipe:14:14: note: krill-meal is at 0 %, so it brings nothing to the feed [line-at-zero]
           14 |   krill-meal 0.00 %
              |              ^^^^^^
         help: take the line out, or put # before it
         help: to keep it for later, say how much it would be: within 2 to 10 % or none, with your figures
        """,
        with("krill-meal 0.00 %"));
    assertEquals("", with("krill-meal 0.00 %  within 0 to 4 %"));
    assertEquals("", with("krill-meal 0.00 %  within 1 to 4 % or none"));
  }

  @Test
  void belowItsBoundsItIsLeftOutInWordsOnly() throws IOException {
    assertEquals(
        """
        trout/TG-44.recipe:14:14: error: krill-meal is at 0 %, its own line allows 1 to 4 % [outside-within]
           14 |   krill-meal 0.00 % within 1 to 4 %
              |              ^^^^^^
         note: bounds written at trout/TG-44.recipe:14:28
         help: write 1 to 4 % or none where it may be left out for now, else bring the share back
        """,
        with("krill-meal 0.00 % within 1 to 4 %"));
    assertEquals(
        """
        trout/TG-44.recipe:14:19: error: maize-gluten-60 is at 0.6 %, its own line allows 1 to 4 % or none [outside-within]
           14 |   maize-gluten-60 0.60 % within 1 to 4 % or none
              |                   ^^^^^^
         note: bounds written at trout/TG-44.recipe:14:33
         help: bring it up to 1 % at least, or down to 0 % to leave it out
        """,
        with("maize-gluten-60 0.60 % within 1 to 4 % or none"));
  }

  @Test
  void aPremixAtZeroIsOffItsDoseAndNothingElse() throws IOException {
    String text = with("VIT-WW 0.00 %");
    assertTrue(
        text.contains("warning: VIT-WW is at 0 %, its dose is 0.5 % [premix-off-dose]"), text);
    assertFalse(text.contains("supplied-by-two-premixes") || text.contains("line-at-zero"), text);
  }

  /** What is found of the grower with one line more. */
  private String with(String line) throws IOException {
    Path file = copy.resolve(GROWER);
    Files.copy(EXAMPLE.resolve(GROWER), file, StandardCopyOption.REPLACE_EXISTING);
    Files.deleteIfExists(copy.resolve(GROWER.replace(".recipe", ".figures")));
    rewrite("  wheat-gluten ", "  " + line + "\n  wheat-gluten ");
    return FindingText.of(OwnFolder.check(copy, DAY).findings());
  }

  private void rewrite(String from, String to) throws IOException {
    String text = Files.readString(copy.resolve(GROWER));
    assertTrue(text.contains(from), from);
    Files.writeString(copy.resolve(GROWER), text.replace(from, to));
  }

  private static CompareReport compared(Path from, Path to) throws IOException {
    return Pellucid.compare(FolderState.at(from), FolderState.at(to), DAY, "compare.html");
  }

  private void addAllOthers(Path recipe) throws IOException {
    String text = Files.readString(recipe);
    StringBuilder mix = new StringBuilder("\nmix\n");
    StringBuilder coat = new StringBuilder("\ncoat\n");
    for (String name : ingredients()) {
      if (!Pattern.compile("(?m)^  " + name + " ").matcher(text).find()) {
        String line = "  " + name + " 0.00 %  within 1 to 5 % or none  step 0.5 %\n";
        mix.append(line);
        coat.append(name.endsWith("oil") ? line : "");
      }
    }
    Files.writeString(
        recipe, text.replace("\nmix\n", mix.toString()).replace("\ncoat\n", coat.toString()));
  }

  private List<String> ingredients() throws IOException {
    try (Stream<Path> files = Files.list(copy.resolve("ingredients"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".yaml"))
          .map(name -> name.replace(".yaml", ""))
          .sorted()
          .toList();
    }
  }

  private List<Path> recipes() throws IOException {
    try (Stream<Path> files = Files.walk(copy)) {
      return files.filter(file -> file.toString().endsWith(".recipe")).sorted().toList();
    }
  }

  private String sheet() throws IOException {
    return Optional.ofNullable(sheets().get("TG-44")).orElseThrow();
  }

  /** Sheets, labels and the purchase list by name. */
  private Map<String, String> sheets() throws IOException {
    SheetReport report = OwnFolder.batchSheets(copy, DAY, Version.committed("1a2b3c4"));
    assertEquals(List.of(), report.withheld());
    Map<String, String> texts = new TreeMap<>();
    for (Sheet sheet : report.sheets()) {
      texts.put(sheet.code(), SheetTexts.withoutFingerprint(sheet.text()));
      sheet.label().ifPresent(label -> texts.put(sheet.code() + " label", label.text()));
    }
    report.purchases().ifPresent(list -> texts.put("purchases", list.text()));
    return texts;
  }
}
