package dev.pellucid.engine.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.StarterTexts;
import dev.pellucid.engine.starter.StarterFile.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The first files of a folder are its templates with the wishes in their places. */
class StarterTest {
  private static final Path FOLDER = Path.of("src/main/resources/dev/pellucid/starter");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static Wishes wishes(String species, String name) {
    return new Wishes(species, "none", "NGN", name, DAY, "7.1");
  }

  private static Map<String, StarterFile> files(String species, String name) throws IOException {
    return Starter.whole(new Templates(StarterTexts.all()), wishes(species, name)).stream()
        .collect(Collectors.toMap(StarterFile::path, file -> file));
  }

  private static String text(Map<String, StarterFile> files, String path) {
    return Objects.requireNonNull(files.get(path), path).text();
  }

  /** A jar cannot be listed as a folder can, so what it holds is written down. */
  @Test
  void theIndexListsEveryTemplateAndNothingElse() throws IOException {
    try (Stream<Path> all = Files.walk(FOLDER)) {
      List<String> there =
          all.filter(Files::isRegularFile)
              .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
              .filter(path -> !path.equals("index.txt"))
              .sorted()
              .toList();
      assertEquals(String.join("\n", there) + "\n", Files.readString(FOLDER.resolve("index.txt")));
    }
  }

  @Test
  void everyLineOfATemplateStandsInItsFile() throws IOException {
    Map<String, String> texts = new TreeMap<>(StarterTexts.all());
    for (String species : new Templates(StarterTexts.all()).species()) {
      Map<String, StarterFile> files = files(species, "Pond");
      texts.forEach(
          (path, text) -> {
            if (path.startsWith("common/") || path.startsWith(species + "/")) {
              String below = path.substring(path.indexOf('/')).replace("/dot-", "/.").substring(1);
              String made = text(files, below);
              long more = made.startsWith("# yaml-language-server: ") ? 1 : 0;
              assertEquals(text.lines().count() + more, made.lines().count(), path);
            }
          });
    }
  }

  @Test
  void noPlaceForAWishIsLeft() throws IOException {
    Pattern asks = Pattern.compile("@[a-z][a-z-]*@");
    for (String species : new Templates(StarterTexts.all()).species()) {
      for (StarterFile file : files(species, "Pond").values()) {
        assertFalse(asks.matcher(file.text()).find(), file.path());
      }
    }
  }

  @Test
  void everyDataFileNamesItsSchemaWhereThatLies() throws IOException {
    for (String species : new Templates(StarterTexts.all()).species()) {
      Map<String, StarterFile> files = files(species, "Pond");
      int data = 0;
      for (StarterFile file : files.values()) {
        if (file.path().endsWith(".yaml") && !file.path().startsWith(".")) {
          String mark = "# yaml-language-server: $schema=";
          assertTrue(file.text().startsWith(mark), file.path());
          String named = file.text().lines().findFirst().orElseThrow().substring(mark.length());
          Path folder = Path.of("/" + file.path()).resolveSibling(named).normalize();
          assertTrue(
              files.containsKey(folder.toString().substring(1).replace('\\', '/')), file.path());
          data++;
        }
      }
      assertTrue(data >= 3, species);
    }
  }

  @Test
  void aNameIsAWordInEachKindOfFile() throws IOException {
    String name = "Pond \"1\" & \\sons <b> @you";
    Map<String, StarterFile> files = files("common-carp", name);
    assertTrue(
        text(files, "pellucid.yaml").contains("\nname: \"Pond \\\"1\\\" & \\\\sons <b> @you\"\n"));
    assertTrue(
        text(files, "pom.xml").contains("<name>Pond \"1\" &amp; \\sons &lt;b&gt; @you</name>"));
    assertTrue(text(files, "pom.xml").contains("<artifactId>pond-1-sons-b-you</artifactId>"));
    assertTrue(text(files, "README.md").startsWith("# Pond \"1\" "));
    assertTrue(text(files, "README.md").contains(" \\\\sons \\<b> @&#8203;you\n"));
  }

  @Test
  void anArtifactOfLettersThatMavenDoesNotKnowHasAPlainName() throws IOException {
    assertTrue(text(files("common-carp", "Карп"), "pom.xml").contains("<artifactId>feeds</"));
    assertTrue(
        text(files("common-carp", "Étang Nº 1"), "pom.xml").contains("<artifactId>etang-n-1<"));
  }

  @Test
  void theWishesStandInTheFiles() throws IOException {
    Map<String, StarterFile> files = files("common-carp", "Pond");
    String settings = text(files, "pellucid.yaml");
    assertTrue(settings.contains("\ncurrency: NGN\n"), settings);
    assertTrue(settings.contains("\njurisdiction: none\n"), settings);
    assertTrue(text(files, "pom.xml").contains("<pellucid.version>7.1</pellucid.version>"));
    String prices =
        files.entrySet().stream()
            .filter(file -> file.getKey().startsWith("prices/"))
            .map(file -> file.getValue().text())
            .collect(Collectors.joining());
    assertTrue(prices.contains("\nfrom: 2026-11-24\n"), prices);
    assertTrue(prices.contains(" NGN/kg"), prices);
    assertFalse(prices.contains("EUR"), prices);
  }

  /** A run that is stopped leaves no folder of feeds that the next one would not finish. */
  @Test
  void whatMakesTheFolderOneOfFeedsComesLast() throws IOException {
    List<StarterFile> files =
        Starter.whole(new Templates(StarterTexts.all()), wishes("common-carp", "Pond"));
    assertEquals("pellucid.yaml", files.get(files.size() - 1).path());
  }

  @Test
  void aFolderThatHasFeedsGetsNoneAndNothingThatTellsOfThem() throws IOException {
    List<StarterFile> files =
        Starter.aroundFeeds(new Templates(StarterTexts.all()), wishes("common-carp", "Pond"));
    assertEquals(List.of(), files.stream().filter(file -> file.part() == Part.FEEDS).toList());
    TreeSet<String> paths =
        files.stream().map(StarterFile::path).collect(Collectors.toCollection(TreeSet::new));
    assertTrue(paths.contains("pom.xml"));
    assertTrue(paths.contains(".gitignore"));
    assertFalse(paths.contains("README.md"));
    String settings = files.get(files.size() - 1).text();
    assertFalse(settings.contains("\nplant: "), settings);
    assertTrue(settings.contains("\ncurrency: NGN\n"), settings);
  }
}
