package dev.pellucid.engine.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A folder is listed in one order, and what is wrong with a file is a finding. */
class FeedFolderTest {
  @TempDir Path root = Path.of("");

  private void file(String path, String text) throws IOException {
    FeedFolder.write(root.resolve(path), text);
  }

  private FeedFolder listed() throws IOException {
    return FeedFolder.list(root, "feeds/");
  }

  @Test
  void listsWhatItKnowsInOrderAndPassesOverTheRest() throws IOException {
    file("b/CG-36.recipe", "x");
    file("a/KF-1.recipe", "x");
    file("VM-CAT.premix", "x");
    file("b/CG-36.figures", "x");
    file("ingredients/maize.yaml", "x");
    file("notes.yml", "x");
    file("README.md", "x");
    file("target/copy/CG-36.recipe", "x");
    file("module/target/CG-37.recipe", "x");
    file(".git/CG-38.recipe", "x");
    file("a/.hidden.recipe", "x");
    FeedFolder folder = listed();
    assertEquals(List.of("a/KF-1.recipe", "b/CG-36.recipe"), folder.ending(".recipe"));
    assertEquals(List.of("VM-CAT.premix"), folder.ending(".premix"));
    assertEquals(List.of("b/CG-36.figures"), folder.ending(".figures"));
    assertEquals(List.of("ingredients/maize.yaml", "notes.yml"), folder.data());
    assertEquals(List.of(), folder.findings());
  }

  @Test
  void aFolderInsideTargetMayBeTheRoot() throws IOException {
    file("target/work/CG-36.recipe", "x");
    FeedFolder folder = FeedFolder.list(root.resolve("target"), "");
    assertEquals(List.of("work/CG-36.recipe"), folder.ending(".recipe"));
  }

  @Test
  void readsTheTextExactlyUnderItsPrintedPath() throws IOException {
    file("CG-36.recipe", "\uFEFFrecipe CG-36\r\n# 20 °C 𝒳\n");
    List<Finding> findings = new ArrayList<>();
    SourceFile source = listed().read("CG-36.recipe", findings).orElseThrow();
    assertEquals("\uFEFFrecipe CG-36\r\n# 20 °C 𝒳\n", source.text());
    assertEquals("feeds/CG-36.recipe", source.path());
    assertEquals(List.of(), findings);
  }

  @Test
  void bytesThatAreNotUtf8AreNamed() throws IOException {
    Files.write(
        root.resolve("A-1.recipe"), "recipe A-1 \"20 °C\"".getBytes(StandardCharsets.ISO_8859_1));
    Files.write(root.resolve("A-2.recipe"), "recipe A-2".getBytes(StandardCharsets.UTF_16));
    assertFindings(
        "A-1.recipe", "feeds/A-1.recipe:1:16: error: the byte B0 is not UTF-8, the file was saved");
    assertFindings("A-2.recipe", "feeds/A-2.recipe:1:1: error: the file is saved as UTF-16");
  }

  @Test
  void aFileLongerThanAMebibyteIsNotRead() throws IOException {
    file("just.recipe", "#".repeat(1 << 20));
    file("over.recipe", "#".repeat((1 << 20) + 1));
    assertTrue(listed().read("just.recipe", new ArrayList<>()).isPresent());
    assertFindings(
        "over.recipe", "feeds/over.recipe:1:1: error: the file is about 2 MiB long, at most 1 MiB");
  }

  @Test
  void aFileThatIsGoneIsNamed() throws IOException {
    file("A-1.recipe", "x");
    FeedFolder folder = listed();
    Files.delete(root.resolve("A-1.recipe"));
    List<Finding> findings = new ArrayList<>();
    assertEquals(Optional.empty(), folder.read("A-1.recipe", findings));
    assertTrue(FindingText.of(findings).contains("the file cannot be opened [file-unreadable]"));
  }

  @Test
  void linksAreNamedAndNotFollowed() throws IOException {
    Path outside = Files.createTempDirectory("outside");
    FeedFolder.write(outside.resolve("A-9.recipe"), "x");
    file("A-1.recipe", "x");
    Files.createSymbolicLink(root.resolve("elsewhere"), outside);
    Files.createSymbolicLink(root.resolve("A-2.recipe"), outside.resolve("A-9.recipe"));
    Files.createSymbolicLink(root.resolve("notes.txt"), outside.resolve("A-9.recipe"));
    Files.createSymbolicLink(root.resolve("ring"), root);
    FeedFolder folder = listed();
    assertEquals(List.of("A-1.recipe"), folder.ending(".recipe"));
    assertEquals(
        List.of("feeds/A-2.recipe", "feeds/pellucid.yaml", "feeds/pellucid.yaml"),
        folder.findings().stream().map(finding -> finding.span().file().path()).toList());
    String told = FindingText.of(folder.findings());
    assertTrue(told.contains("feeds/ring is a link to a folder elsewhere"), told);
  }

  /** Once the first of them ended every goal in an exception. */
  @ParameterizedTest
  @CsvSource({
    "'X\n1.recipe', X\uFFFD1.recipe, a line end",
    "'X\t1.recipe', X\uFFFD1.recipe, a tab",
    "'X\u001b1.recipe', X\uFFFD1.recipe, U+001B",
    "'X\u202e1.recipe', X\uFFFD1.recipe, U+202E",
    "'one\nfolder/A-1.recipe', one\uFFFDfolder/A-1.recipe, a line end",
  })
  void aNameThatWouldTearALineApartIsTold(String name, String shown, String sign)
      throws IOException {
    file(name, "recipe X-1\n");
    FeedFolder folder = listed();
    assertEquals(List.of(), folder.ending(".recipe"));
    assertEquals(
        "feeds/"
            + shown
            + ":1:1: error: the name holds a sign that does not show, "
            + sign
            + ", and the file is not read [file-name-control]\n"
            + " help: rename it with letters, digits and hyphens\n",
        FindingText.of(folder.findings()));
  }

  @Test
  void namesThatDifferInCapitalsClash() throws IOException {
    file("feeds/a-1.premix", "x");
    file("feeds/A-1.premix", "x");
    if (listed().ending(".premix").size() == 2) {
      assertEquals(
          "feeds/feeds/a-1.premix:1:1: error: the name differs from feeds/feeds/A-1.premix in"
              + " capital letters only [file-name-clash]\n"
              + " help: rename one of the two, many systems take them for one file\n",
          FindingText.of(listed().findings()));
    }
  }

  @Test
  void aNameInTwoFoldersIsTold() throws IOException {
    file("trout/A-1.recipe", "x");
    file("old/A-1.recipe", "x");
    file("old/A-1.premix", "x");
    file("prices/2026.yaml", "x");
    file("lots/2026.yaml", "x");
    assertEquals(
        "feeds/trout/A-1.recipe:1:1: error: A-1 is the name of feeds/old/A-1.recipe too"
            + " [file-name-twice]\n"
            + " help: rename one of the two, or delete the one that is not wanted\n",
        FindingText.of(listed().findings()));
  }

  @Test
  void aRootThatIsNotThereIsABrokenRun() {
    assertThrows(
        NoSuchFileException.class, () -> FeedFolder.list(root.resolve("nowhere"), "nowhere/"));
  }

  private void assertFindings(String path, String start) throws IOException {
    List<Finding> findings = new ArrayList<>();
    listed().read(path, findings);
    assertEquals(1, findings.size());
    assertTrue(FindingText.of(findings).startsWith(start), FindingText.of(findings));
  }
}
