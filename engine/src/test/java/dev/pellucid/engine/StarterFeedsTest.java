package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.FolderLayout;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The recipe that a folder of each species begins with passes with its premixes, prices and plant,
 * over the data that come with the program, and its sheets are made; today and years later.
 */
class StarterFeedsTest {
  private static final Path PLACE = Path.of("src/main/resources/dev/pellucid/starter");
  private static final Bundled DATA = Bundled.ofThisVersion();
  private static final LocalDate FIRST = LocalDate.of(2026, 11, 28);
  private static final LocalDate LATER = LocalDate.of(2029, 3, 1);

  @TempDir Path folder = Path.of("");

  record Case(String species, String jurisdiction, LocalDate day) {}

  static Stream<Case> everyCase() throws IOException {
    List<Case> cases = new ArrayList<>();
    for (String species : species()) {
      for (String jurisdiction : List.of("EU", "none")) {
        cases.add(new Case(species, jurisdiction, FIRST));
        cases.add(new Case(species, jurisdiction, LATER));
      }
    }
    return cases.stream();
  }

  /** A folder that holds a recipe; another holds what every folder gets. */
  private static List<String> species() throws IOException {
    try (Stream<Path> files = Files.walk(PLACE)) {
      return files
          .filter(file -> file.toString().endsWith(".recipe"))
          .map(file -> PLACE.relativize(file).getName(0).toString())
          .distinct()
          .sorted()
          .toList();
    }
  }

  @Test
  void thereIsOneForEachSpecies() throws IOException {
    assertEquals(
        DATA.places().stream()
            .filter(place -> place.startsWith("species/"))
            .map(place -> place.substring("species/".length(), place.lastIndexOf('.')))
            .sorted()
            .toList(),
        species());
  }

  @ParameterizedTest
  @MethodSource("everyCase")
  void itPassesAndItsSheetsAreMade(Case it) throws IOException {
    begin(it);
    FolderState state = FolderState.at(folder).over(DATA);
    CheckReport report = Pellucid.check(state, it.day);
    assertEquals(List.of(), unlooked(report, it), () -> FindingText.of(report.findings()));
    assertEquals(1, report.recipes());
    assertEquals(List.of(), report.notChecked());
    assertTrue(report.limits() > 30, report.tally());
    SheetReport sheets = Pellucid.batchSheets(state, it.day, Version.committed("1a2b3c4"));
    assertEquals(List.of(), sheets.withheld());
    assertEquals(3, sheets.sheets().size());
    assertEquals(List.of(), FolderLayout.of(folder).changes());
  }

  /**
   * What is found, but for the acts that have ended by then: whoever begins a folder with a program
   * that is years old is told to look them up.
   */
  private static List<String> unlooked(CheckReport report, Case it) {
    boolean late = it.day.equals(LATER) && it.jurisdiction.equals("EU");
    List<String> codes = new ArrayList<>();
    for (Finding one : report.findings()) {
      if (!(late && one.code().text().equals("authorisation-ended"))) {
        codes.add(one.code().text());
      }
    }
    assertEquals(0, report.count(Severity.ERROR));
    return codes;
  }

  @ParameterizedTest
  @MethodSource("everyCase")
  void everyPriceIsMadeUpAndSaysSo(Case it) throws IOException {
    begin(it);
    List<Path> prices = files(folder.resolve("prices"));
    assertEquals(1, prices.size());
    String text = Files.readString(prices.get(0));
    assertTrue(text.contains("\nfrom: " + it.day + "\nsource: starter\nprices:\n"), text);
    assertTrue(text.startsWith("# Every price here is made up."), text);
    assertFalse(text.contains("@"), text);
  }

  @ParameterizedTest
  @MethodSource("everyCase")
  void aSlipInItIsFound(Case it) throws IOException {
    begin(it);
    Path recipe = files(folder).stream().filter(StarterFeedsTest::isRecipe).findFirst().get();
    String text = Files.readString(recipe);
    Files.writeString(recipe, text.replaceFirst("(?m)^(  (VIT-\\S+) +)\\d\\.\\d+ %$", "$10.05 %"));
    assertFalse(text.equals(Files.readString(recipe)));
    CheckReport report = Pellucid.check(FolderState.at(folder).over(DATA), it.day);
    assertTrue(report.count(Severity.ERROR) > 0, report.tally());
  }

  private void begin(Case it) throws IOException {
    Path from = PLACE.resolve(it.species);
    for (Path file : files(from)) {
      String text = Files.readString(file).replace("@day@", it.day.toString());
      write(from.relativize(file).toString(), text.replace("@currency@", "NGN"));
    }
    String settings = "format: 1\nname: Ours\ncurrency: NGN\nplant: farm\njurisdiction: ";
    write("pellucid.yaml", settings + it.jurisdiction + "\n");
    write("sources.yaml", "starter:\n  standing: invented\n  cite: Made up.\n");
  }

  private static boolean isRecipe(Path file) {
    return file.toString().endsWith(".recipe");
  }

  private static List<Path> files(Path root) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private void write(String path, String text) throws IOException {
    Files.createDirectories(folder.resolve(path).resolveSibling(""));
    Files.writeString(folder.resolve(path), text);
  }
}
