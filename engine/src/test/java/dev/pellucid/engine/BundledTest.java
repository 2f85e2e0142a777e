package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What comes along with the program, and how a folder has its own in place of it. */
class BundledTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path RESOURCES = Path.of("src/main/resources");
  private static final Path PLACE = RESOURCES.resolve("dev/pellucid/bundled");
  private static final Bundled DATA = Bundled.ofThisVersion();

  @TempDir Path folder;

  @Test
  void theListNamesEveryFileThatIsThere() throws IOException {
    try (Stream<Path> files = Files.walk(PLACE)) {
      List<String> there =
          files
              .filter(Files::isRegularFile)
              .map(file -> PLACE.relativize(file).toString().replace('\\', '/'))
              .filter(path -> !path.equals("index.txt"))
              .sorted()
              .toList();
      assertEquals(there, Files.readString(PLACE.resolve("index.txt")).lines().toList());
      assertEquals(there, DATA.places().stream().sorted().toList());
    }
  }

  @Test
  void theExampleSaysTheSameWhoeverOwnsItsData() throws IOException {
    CheckReport along = Pellucid.check(FolderState.at(Example.OWN).over(DATA), DAY);
    CheckReport own = Pellucid.check(FolderState.at(Example.whole()), DAY);
    assertEquals(own.tally(), along.tally());
    assertEquals(List.of(), along.findings());
    assertEquals("", own.dataAlong());
    assertTrue(along.dataAlong().contains("15 limits, "), along.dataAlong());
    assertTrue(
        along.dataAlong().endsWith("its own ingredients/fish-meal-65.yaml"), along.dataAlong());
  }

  @Test
  void aFileOfTheFolderTakesThePlaceOfTheOneOfItsName() throws IOException {
    write("pellucid.yaml", settings());
    write(
        "ingredients/grains/maize.yaml",
        DATA.text("ingredients/maize.yaml").orElseThrow().replace("lysine: ", "lisine: "));
    List<Finding> found = check();
    assertTrue(
        found.stream()
            .allMatch(one -> one.span().file().path().equals("ingredients/grains/maize.yaml")),
        found::toString);
    assertTrue(found.stream().anyMatch(one -> one.headline().contains("lisine")), found::toString);
  }

  @Test
  void aSourceOfTheFolderIsAddedAndCountsMore() throws IOException {
    write("pellucid.yaml", settings());
    write("sources.yaml", "ours:\n  standing: own-analysis\n  cite: Ours.\n");
    write(
        "ingredients/maize.yaml",
        DATA.text("ingredients/maize.yaml")
            .orElseThrow()
            .replace("source: handbook", "source: ours"));
    assertEquals(List.of(), check());
  }

  @Test
  void aClassThatOwnRetentionLacksIsToldByThatFile() throws IOException {
    write("pellucid.yaml", settings());
    String whole = DATA.text("practice/retention.yaml").orElseThrow();
    write("practice/retention.yaml", whole.replaceFirst("(?m)^riboflavin:", "riboflavins:"));
    Finding told =
        check().stream()
            .filter(one -> one.code().text().equals("data-unknown-stability"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        told.helps().stream()
            .anyMatch(help -> help.startsWith("practice/retention.yaml of the folder stands in")),
        told::toString);
  }

  @Test
  void aSourceWithTheNameOfAnotherIsTold() throws IOException {
    write("pellucid.yaml", settings());
    write("sources.yaml", "handbook:\n  standing: published\n  cite: Tables of the house.\n");
    assertEquals(
        List.of("sources.yaml:1:1 own-source-takes-over"),
        check().stream().map(one -> one.span() + " " + one.code().text()).toList());
    write("sources.yaml", DATA.text("sources.yaml").orElseThrow());
    assertEquals(List.of(), check());
    write(
        "sources.yaml",
        DATA.text("sources.yaml").orElseThrow().replace("from-memory", "own-analysis"));
    assertTrue(check().size() > 1, "better trusted, each of them");
    write(
        "sources.yaml",
        DATA.text("sources.yaml").orElseThrow().replace("published", "from-memory"));
    assertEquals(List.of(), check());
  }

  @Test
  void aNutrientOfTheFolderCountsWhateverItsFileIsCalled() throws IOException {
    write("pellucid.yaml", settings());
    write(
        "nutrients/ours.yaml",
        "lysine:\n  title: Lysine of ours\n  unit: g/kg\n  part-of: crude-protein\n  stability: stable\n");
    assertEquals(List.of(), check());
    write(
        "nutrients/more.yaml",
        "lysine:\n  title: Again\n  unit: g/kg\n  part-of: crude-protein\n  stability: stable\n");
    assertEquals(1, check().size());
  }

  @Test
  void whatAFileOfTheFolderLeavesOutIsTold() throws IOException {
    write("pellucid.yaml", settings());
    write("practice/bounds.yaml", DATA.text("practice/bounds.yaml").orElseThrow());
    assertEquals(List.of(), check());
    write("practice/bounds.yaml", "shelf-life: {from: 14 d, to: 120 d, source: house-rules}\n");
    Finding bounds = check().get(0);
    assertEquals(Severity.WARNING, bounds.severity());
    assertTrue(bounds.headline().matches(".*practice/bounds.yaml and leaves out of it .* more"));
    assertTrue(bounds.helps().get(0).contains("-Dpellucid.own=practice/bounds.yaml"));
    write("practice/bounds.yaml", DATA.text("practice/bounds.yaml").orElseThrow());
    write(
        "mine/carp-grower.limits",
        DATA.text("limits/carp-grower.limits").orElseThrow().replaceAll("(?m)^  lysine .*\n", ""));
    assertTrue(
        check().stream()
            .anyMatch(
                one -> one.headline().endsWith("leaves out of it lysine, lysine : crude-protein")),
        check()::toString);
  }

  /**
   * An act that ended: the entry that comes along cannot be changed, but one of its name counts.
   */
  @Test
  void aFindingInWhatComesAlongIsMendedInTheFolder() throws IOException {
    LocalDate later = LocalDate.of(2028, 1, 1);
    CheckReport before = Pellucid.check(FolderState.at(Example.OWN).over(DATA), later);
    Finding zinc = ofZinc(before).orElseThrow();
    assertEquals("pellucid:sources.yaml", zinc.span().file().path());
    assertTrue(zinc.helps().get(2).contains("write the whole entry anew in sources.yaml"));
    FileUtils.copyDirectory(Example.OWN.toFile(), folder.toFile());
    Files.writeString(
        folder.resolve("sources.yaml"),
        """
        eu-zinc:
          standing: published
          cite: The act and the register, read again.
          address: http://data.europa.eu/eli/reg_impl/2016/1095/oj
          ends: 2026-07-27
          end-looked-up: 2027-12-15
          end-found: It goes on.
        """,
        StandardOpenOption.APPEND);
    assertEquals(
        Optional.empty(), ofZinc(Pellucid.check(FolderState.at(folder).over(DATA), later)));
  }

  private static Optional<Finding> ofZinc(CheckReport report) {
    return report.findings().stream()
        .filter(one -> one.code().text().equals("authorisation-ended"))
        .filter(one -> one.headline().contains("eu-zinc"))
        .findFirst();
  }

  @Test
  void aFolderWithAllItsDataTakesNothing() throws IOException {
    write("pellucid.yaml", settings() + "data: own\n");
    CheckReport report = Pellucid.check(FolderState.at(folder).over(DATA), DAY);
    assertEquals("", report.dataAlong());
    assertTrue(
        report.findings().stream()
            .anyMatch(
                one ->
                    one.span().text().equals("own")
                        && one.headline().startsWith("this keeps out all data that come along")),
        report.findings()::toString);
    write("pellucid.yaml", settings() + "data: mine\n");
    assertTrue(FindingText.of(check()).contains("leave the line out"), check()::toString);
  }

  /** A new version of the program brings another figure; the folder stays as it is. */
  @Test
  void aComparisonTellsWhatNewDataDoToAFeed() throws IOException {
    FolderState folder = FolderState.at(Example.OWN);
    CompareReport same =
        Pellucid.compare(folder.over(DATA), folder.over(DATA), DAY, "compare.html");
    assertTrue(same.tally().endsWith("; no feed changes"), same.tally());
    Bundled newer =
        dataWith("ingredients/maize.yaml", "crude-protein: 8.75", "crude-protein: 9.75");
    CompareReport report =
        Pellucid.compare(folder.over(DATA), folder.over(newer), DAY, "compare.html");
    assertTrue(report.text().contains("because of pellucid:ingredients/maize.yaml"), report.text());
    assertTrue(report.text().contains("not touched, changed by its data"), report.text());
  }

  private static Bundled dataWith(String place, String was, String now) throws IOException {
    return Bundled.read(
        path -> {
          String text = Files.readString(RESOURCES.resolve(path));
          String changed = path.endsWith(place) ? text.replace(was, now) : text;
          return Optional.of(new ByteArrayInputStream(changed.getBytes(StandardCharsets.UTF_8)));
        });
  }

  @Test
  void aProfileThatComesAlongIsNamedWithItsMark() throws IOException {
    write("pellucid.yaml", settings());
    write(
        "feeds/X.recipe",
        "recipe X \"X\"\n  species common-carp\n  meets carp-grower\n\nmix\n  maize rest\n");
    String said = FindingText.of(check()).toString();
    assertTrue(said.contains("pellucid:limits/carp-grower.limits:"), said);
  }

  private static String settings() {
    return "format: 1\nname: Ours\ncurrency: EUR\njurisdiction: none\n";
  }

  private List<Finding> check() throws IOException {
    return Pellucid.check(FolderState.at(folder).over(DATA), DAY).findings();
  }

  private void write(String path, String text) throws IOException {
    Files.createDirectories(folder.resolve(path).getParent());
    Files.writeString(folder.resolve(path), text);
  }
}
