package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.folder.StarterTexts;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.FolderLayout;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.InitReport;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.engine.starter.Templates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A folder of feeds begins anywhere, passes as it stands, and nothing in it is written over. */
class InitTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);

  @TempDir Path root = Path.of("");

  private static InitReport planned(Path folder, Map<String, String> wishes) throws IOException {
    return Pellucid.init(folder, wishes, DAY, "7.1");
  }

  private static InitReport.Written begin(Path folder, Map<String, String> wishes)
      throws IOException {
    return planned(folder, wishes).write(folder);
  }

  private static List<String> problems(Path folder, Map<String, String> wishes) throws IOException {
    return planned(folder, wishes).problems();
  }

  private Path file(String path, String text) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.resolveSibling(""));
    return Files.writeString(file, text);
  }

  private static SortedMap<String, String> all(Path folder) throws IOException {
    SortedMap<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(one -> !Files.isDirectory(one)).toList()) {
        String text = Files.isRegularFile(file) ? Files.readString(file) : "a link";
        all.put(folder.relativize(file).toString().replace('\\', '/'), text);
      }
    }
    return all;
  }

  private static FolderState feeds(Path folder) {
    return FolderState.at(folder).over(Bundled.ofThisVersion());
  }

  private static String told(CheckReport report) {
    return report.findings().stream()
        .map(one -> one.span() + " " + one.headline() + "\n")
        .collect(Collectors.joining());
  }

  /** A sheet breaks its lines. */
  private static String flat(String sheet) {
    return sheet.replaceAll("\\s+", " ");
  }

  record Case(String species, String jurisdiction) {}

  static Stream<Case> everySpeciesUnderEachJurisdiction() throws IOException {
    return new Templates(StarterTexts.all())
        .species().stream()
            .flatMap(species -> Stream.of("none", "eu").map(law -> new Case(species, law)));
  }

  @ParameterizedTest
  @MethodSource("everySpeciesUnderEachJurisdiction")
  void itChecksCleanAndItsSheetsPrint(Case it) throws IOException {
    Path folder = Files.createDirectory(root.resolve("my feeds"));
    begin(
        folder, Map.of("species", it.species, "jurisdiction", it.jurisdiction, "currency", "NGN"));
    CheckReport report = Pellucid.check(feeds(folder), DAY);
    assertEquals("", told(report));
    assertTrue(report.limits() > 30, report.tally());
    assertEquals(List.of(), report.notChecked());
    SheetReport sheets = Pellucid.batchSheets(feeds(folder), DAY, Version.UNKNOWN);
    assertEquals(List.of(), sheets.withheld());
    assertTrue(sheets.sheets().size() >= 2, () -> sheets.tally());
    String noLaw = "No law was judged, for the folder names no jurisdiction";
    sheets
        .sheets()
        .forEach(
            sheet -> {
              assertEquals(it.jurisdiction.equals("none"), flat(sheet.text()).contains(noLaw));
              assertEquals(it.jurisdiction.equals("none"), flat(sheet.html()).contains(noLaw));
            });
    FolderLayout layout = FolderLayout.of(folder);
    assertEquals(List.of(), layout.changes());
    assertEquals(layout.files(), layout.inOrder());
  }

  @Test
  void itSaysWhatItWroteAndWhatComesNext() throws IOException {
    Path folder = Files.createDirectory(root.resolve("my feeds"));
    InitReport.Written written = begin(folder, Map.of("species", "common-carp"));
    List<String> done = written.done();
    assertEquals(
        "a folder of feeds for common-carp, prices in EUR, no law judged; "
            + all(folder).size()
            + " files written",
        done.get(0));
    for (String path : all(folder).keySet()) {
      String told = path.startsWith(".schema/") ? ".schema/ (" : path;
      assertTrue(done.stream().anyMatch(line -> line.startsWith("  " + told)), path);
    }
    assertEquals(
        List.of(
            "next:",
            "  mvn verify",
            "    checks the feeds and writes their sheets to target/batch-sheets",
            "  git init",
            "    keeps every change; what is not committed makes drafts only",
            "README.md says how to go on"),
        written.next(folder));
    assertEquals("  mvn -f \"my feeds\" verify", written.next(root).get(1));
  }

  @Test
  void whatWasNotNamedIsSaid() throws IOException {
    List<String> done = begin(root, Map.of()).done();
    assertTrue(
        done.get(done.size() - 1)
            .startsWith(
                "no species was named; with -Dpellucid.species=... in an empty folder there are"
                    + " feeds for "),
        () -> String.join("\n", done));
  }

  @Test
  void twiceItWritesNothingAndSaysSo() throws IOException {
    begin(root, Map.of());
    SortedMap<String, String> first = all(root);
    InitReport.Written again = begin(root, Map.of());
    assertEquals(
        List.of("nothing was written, every file of a folder of feeds is there already"),
        again.done());
    assertEquals(first, all(root));
    assertEquals("  mvn verify", again.next(root).get(1));
  }

  @Test
  void anotherSpeciesIsNotPutIntoAFolderThatHasFeeds() throws IOException {
    begin(root, Map.of());
    SortedMap<String, String> first = all(root);
    List<String> done = begin(root, Map.of("species", "african-catfish")).done();
    assertEquals(first, all(root));
    assertEquals(
        "what was wished of a folder that begins was not heeded; pellucid.yaml says what this one"
            + " is, and its recipes say of which species",
        done.get(done.size() - 1));
  }

  @Test
  void whatIsDeletedOfTheFirstFeedsStaysSo() throws IOException {
    begin(root, Map.of());
    SortedMap<String, String> first = all(root);
    for (String path : first.keySet()) {
      if (path.endsWith(".recipe") || path.startsWith("prices/") || path.equals("README.md")) {
        Files.delete(root.resolve(path));
      }
    }
    Files.delete(root.resolve(".gitignore"));
    List<String> done = begin(root, Map.of()).done();
    assertEquals("there are feeds here already, and none was added; 1 file written", done.get(0));
    assertEquals("  .gitignore", done.get(1));
    assertFalse(Files.exists(root.resolve("README.md")));
  }

  @Test
  void filesOfOtherKindsStayAsTheyAre() throws IOException {
    file("README.md", "mine\n");
    file(".gitignore", "*.bak\n");
    file("pom.xml", "<project><modelVersion>4.0.0</modelVersion></project>\n");
    file("src/main.py", "print('hi')\n");
    file("docker-compose.yaml", "services: {}\n");
    file("list of prices.csv", "maize;0.21\n");
    file("docs/notes.yml", "a: b\n");
    Files.createSymbolicLink(root.resolve("sources.yaml"), root.resolve("nowhere"));
    SortedMap<String, String> before = all(root);
    InitReport.Written written = begin(root, Map.of("species", "common-carp"));
    SortedMap<String, String> after = all(root);
    before.forEach((path, text) -> assertEquals(text, after.get(path), path));
    List<String> done = written.done();
    assertTrue(
        done.contains("left as they were: .gitignore, README.md, pom.xml, sources.yaml")
            || done.contains("left as they were: .gitignore, pom.xml, README.md, sources.yaml"),
        () -> String.join("\n", done));
    assertTrue(
        done.contains(".gitignore has no line target/; add it, so that no sheet is committed"));
    int at =
        done.indexOf("pom.xml does not call pellucid; put this among the plugins of its build:");
    assertEquals("  <plugin>", done.get(at + 1));
    assertEquals("    <groupId>dev.pellucid</groupId>", done.get(at + 2));
    assertTrue(done.contains("  </plugin>"));
    assertEquals("  mvn pellucid:check, once pom.xml calls pellucid", written.next(root).get(1));
    assertTrue(Files.isSymbolicLink(root.resolve("sources.yaml")));
  }

  @Test
  void filesOfOtherKindsAreNoHindranceToThoseOfFeeds() throws IOException {
    file("src/main.py", "print('hi')\n");
    file("docker-compose.yaml", "name: shop\nservices:\n  web: {image: shop, ports: ['80:80']}\n");
    file("list of prices.csv", "maize;0.21\n");
    file("docs/notes.yml", "a: b\n");
    file("charts/web.yaml", "{{ if .on }}\nkind: Service\nmetadata:\n  name: web\n{{ end }}\n");
    file("recipes of cakes.doc", "flour\n");
    begin(root, Map.of());
    assertEquals("", told(Pellucid.check(feeds(root), DAY)));
  }

  @Test
  void aPomThatCallsThePluginIsAskedForNothing() throws IOException {
    file("pom.xml", "<project><!-- pellucid-maven-plugin --></project>");
    file(".gitignore", "/target\n");
    InitReport.Written written = begin(root, Map.of("species", "common-carp"));
    assertEquals(
        List.of("left as they were: .gitignore, pom.xml"),
        written.done().stream().filter(line -> !line.startsWith(" ")).skip(1).toList());
    assertEquals("  mvn verify", written.next(root).get(1));
  }

  @Test
  void aRecipeWithoutSettingsGetsSettingsThatNameNoPlant() throws IOException {
    file("A-1.recipe", "recipe A-1\n\nmix\n  maize                        100 %\n");
    begin(root, Map.of("species", "common-carp"));
    SortedMap<String, String> all = all(root);
    assertEquals(
        List.of("A-1.recipe"),
        all.keySet().stream().filter(path -> path.endsWith(".recipe")).toList());
    assertFalse(all.getOrDefault("pellucid.yaml", "plant: ").contains("\nplant: "));
    assertFalse(all.containsKey("README.md"));
  }

  @Test
  void aPlaceWhereNothingCanBeginIsRefusedInASentence() throws IOException {
    Path mine = file("notes.txt", "mine");
    assertEquals(
        List.of("there is no folder " + root.resolve("x") + "; make it, then run the goal again"),
        problems(root.resolve("x"), Map.of()));
    assertEquals(
        List.of(mine + " is a file, not a folder; name a folder"), problems(mine, Map.of()));
    assertEquals(Map.of("notes.txt", "mine"), all(root));
  }

  @Test
  void everySlipIsToldAtOnceAndNothingIsWritten() throws IOException {
    Map<String, String> wishes =
        Map.of("species", "carp", "jurisdiction", "mars", "currency", "euro");
    assertEquals(4, problems(root.resolve("x"), wishes).size());
    assertEquals(3, problems(root, wishes).size());
    assertEquals(Map.of(), all(root));
  }

  @Test
  void oneFolderOfFeedsHoldsNoOther() throws IOException {
    file("feeds/pellucid.yaml", "format: 1\n");
    Path within = Files.createDirectories(root.resolve("feeds/new/deep"));
    assertEquals(
        List.of(
            within
                + " lies in the folder of feeds "
                + root.resolve("feeds")
                + ", and a folder of feeds holds no other; begin one beside it"),
        problems(within, Map.of()));
    assertEquals(
        List.of(
            "below "
                + root
                + " is a folder of feeds already, with feeds/pellucid.yaml; work there, or begin"
                + " one beside it"),
        problems(root, Map.of()));
  }

  @Test
  void aFileWhereAFolderIsToBeIsToldBeforeAnythingIsWritten() throws IOException {
    Path plant = file("plant", "a list of plants");
    assertEquals(
        List.of(
            plant + " stands where a folder is to be; call it otherwise, then run the goal again"),
        problems(root, Map.of("species", "common-carp")));
    assertEquals(Map.of("plant", "a list of plants"), all(root));
  }

  @Test
  void insideARepositoryItSaysWhereBuildServersLook() throws IOException {
    Files.createDirectories(root.resolve(".git"));
    Path folder = Files.createDirectories(root.resolve("feeds"));
    InitReport.Written written = begin(folder, Map.of("species", "common-carp"));
    List<String> done = written.done();
    assertEquals(
        "build servers read their files at the root of the repository only: move .github and"
            + " .gitlab-ci.yml to "
            + root
            + ", and say in them where FEEDS are",
        done.get(done.size() - 1));
    assertFalse(written.next(folder).contains("  git init"));
  }

  /** What a killed run wrote is kept, and the rest is added. */
  @Test
  void aRunThatWasStoppedIsTakenUpAgain() throws IOException {
    begin(root, Map.of());
    SortedMap<String, String> whole = all(root);
    for (String path : List.of("pellucid.yaml", "pom.xml", "sources.yaml", "README.md")) {
      Files.delete(root.resolve(path));
    }
    for (String path : whole.keySet()) {
      if (path.endsWith(".recipe") || path.startsWith("plant/")) {
        Files.delete(root.resolve(path));
      }
    }
    // Feeds come after what stands round them, and settings last: no recipe was reached.
    for (String path : whole.keySet()) {
      if (path.endsWith(".premix")) {
        Files.delete(root.resolve(path));
      }
    }
    begin(root, Map.of());
    assertEquals(whole, all(root));
  }

  @Test
  void nothingBehindALinkIsTouched() throws IOException {
    Path outside = Files.createDirectory(root.resolve("outside"));
    Path folder = Files.createDirectory(root.resolve("in"));
    Files.createSymbolicLink(folder.resolve("prices"), outside);
    assertTrue(Files.exists(folder.resolve("prices"), LinkOption.NOFOLLOW_LINKS));
    InitReport planned = planned(folder, Map.of());
    IOException told = assertThrows(IOException.class, () -> planned.write(folder));
    assertTrue(String.valueOf(told.getMessage()).contains("leads out of its folder"));
    assertEquals(Map.of(), all(outside));
  }
}
