package dev.pellucid.engine.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

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
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder is listed in one order, and what is wrong with a file is a finding. */
class TextsTest {
  @TempDir Path root = Path.of("");

  private void file(String path, String text) throws IOException {
    Outputs.into(root).write(path, text);
  }

  private Texts listed() throws IOException {
    return Texts.at(root);
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
    Texts folder = listed();
    assertEquals(List.of("a/KF-1.recipe", "b/CG-36.recipe"), folder.ending(".recipe"));
    assertEquals(List.of("VM-CAT.premix"), folder.ending(".premix"));
    assertEquals(List.of("b/CG-36.figures"), folder.ending(".figures"));
    assertEquals(List.of("ingredients/maize.yaml", "notes.yml"), folder.data());
    assertEquals(List.of(), folder.findings());
  }

  @Test
  void aFolderInsideTargetMayBeTheRoot() throws IOException {
    file("target/work/CG-36.recipe", "x");
    Texts folder = Texts.at(root.resolve("target"));
    assertEquals(List.of("work/CG-36.recipe"), folder.ending(".recipe"));
  }

  @Test
  void readsTheTextExactlyUnderItsPathBelowTheFolder() throws IOException {
    file("CG-36.recipe", "\uFEFFrecipe CG-36\r\n# 20 °C 𝒳\n");
    List<Finding> findings = new ArrayList<>();
    SourceFile source = listed().read("CG-36.recipe", findings).orElseThrow();
    assertEquals("\uFEFFrecipe CG-36\r\n# 20 °C 𝒳\n", source.text());
    assertEquals("CG-36.recipe", source.path());
    assertEquals(List.of(), findings);
  }

  @Test
  void bytesThatAreNotUtf8AreNamed() throws IOException {
    Files.write(
        root.resolve("A-1.recipe"), "recipe A-1 \"20 °C\"".getBytes(StandardCharsets.ISO_8859_1));
    Files.write(root.resolve("A-2.recipe"), "recipe A-2".getBytes(StandardCharsets.UTF_16));
    assertFindings(
        "A-1.recipe", "A-1.recipe:1:16: error: the byte B0 is not UTF-8, the file was saved");
    assertFindings("A-2.recipe", "A-2.recipe:1:1: error: the file is saved as UTF-16");
  }

  @Test
  void aFileLongerThanAMebibyteIsNotRead() throws IOException {
    file("just.recipe", "#".repeat(1 << 20));
    file("over.recipe", "#".repeat((1 << 20) + 1));
    assertTrue(listed().read("just.recipe", new ArrayList<>()).isPresent());
    assertFindings(
        "over.recipe", "over.recipe:1:1: error: the file is about 2 MiB long, at most 1 MiB");
  }

  @Test
  void aFileThatIsGoneIsNamed() throws IOException {
    file("A-1.recipe", "x");
    Texts folder = listed();
    Files.delete(root.resolve("A-1.recipe"));
    List<Finding> findings = new ArrayList<>();
    assertEquals(Optional.empty(), folder.read("A-1.recipe", findings));
    assertTrue(FindingText.of(findings).contains("the file cannot be opened [file-unreadable]"));
  }

  @Test
  void linksAreNamedAndNotFollowed() throws IOException {
    Path outside = Files.createTempDirectory("outside");
    Outputs.into(outside).write("A-9.recipe", "x");
    file("A-1.recipe", "x");
    Files.createSymbolicLink(root.resolve("elsewhere"), outside);
    Files.createSymbolicLink(root.resolve("A-2.recipe"), outside.resolve("A-9.recipe"));
    Files.createSymbolicLink(root.resolve("notes.txt"), outside.resolve("A-9.recipe"));
    Files.createSymbolicLink(root.resolve("ring"), root);
    Texts folder = listed();
    assertEquals(List.of("A-1.recipe"), folder.ending(".recipe"));
    assertEquals(
        List.of("A-2.recipe", "pellucid.yaml", "pellucid.yaml"),
        folder.findings().stream().map(finding -> finding.span().file().path()).toList());
    String told = FindingText.of(folder.findings());
    assertTrue(told.contains("ring is a link to a folder elsewhere"), told);
    assertTrue(folder.isLink("ring") && folder.isLink("A-2.recipe"));
    assertFalse(folder.isLink(Texts.SETTINGS));
    assertEquals(
        List.of("A-2.recipe", "elsewhere", "ring"),
        folder.passedOver().stream().map(Passed::path).sorted().toList());
  }

  @Test
  void aLinkThatLeadsNowhereIsNamed() throws IOException {
    Files.createSymbolicLink(root.resolve("batches"), root.resolve("unmounted"));
    assertEquals(
        "batches:1:1: warning: this is a link to another place and is not followed"
            + " [file-link]",
        FindingText.firstLine(listed().findings().get(0)));
    assertTrue(listed().isLink("batches"));
  }

  @Test
  void namesThatDifferInCapitalsClash() throws IOException {
    file("feeds/a-1.premix", "x");
    file("feeds/A-1.premix", "x");
    if (listed().ending(".premix").size() == 2) {
      assertEquals(
          "feeds/a-1.premix:1:1: error: the name differs from feeds/A-1.premix in"
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
        "trout/A-1.recipe:1:1: error: A-1 is the name of old/A-1.recipe too"
            + " [file-name-twice]\n"
            + " help: rename one of the two, or delete the one that is not wanted\n",
        FindingText.of(listed().findings()));
  }

  @Test
  void whatIsNotReadForASlipInItsNameIsTold() throws IOException {
    file("catfish/CG-36.RECIPE", "x");
    file("prices/2026.yaml.txt", "x");
    file("catfish/CG-37.recipe.orig", "x");
    file("catfish/CG-37.recipe", "x");
    file("README.txt", "x");
    file("catfish/photo.JPG", "x");
    file("catfish/CG-37.recipe~", "x");
    file("catfish/.CG-37.recipe.swp", "x");
    assertEquals(
        """
        catfish/CG-36.RECIPE:1:1: warning: this file is not read, for its name ends in .RECIPE \
        [file-name-near]
         help: rename it to CG-36.recipe, or move it out of the folder

        catfish/CG-37.recipe.orig:1:1: note: this file is a copy that is laid by, and is not \
        read [file-copy]
         help: delete it, or rename it to CG-37.recipe if it is the one that counts

        prices/2026.yaml.txt:1:1: warning: this file is not read, for its name ends in \
        .yaml.txt [file-name-near]
         help: rename it to 2026.yaml, or move it out of the folder
        """,
        FindingText.of(listed().findings()));
    assertEquals(List.of("catfish/CG-37.recipe"), listed().paths());
  }

  /** By its name each of these can be the record of a batch, or tell of lots. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "prices/CG-36-2026-11-18-1.txt",
        "CG-36-2026-11-18-1",
        "batches/NEW-1-2026-11-18-12.json",
        "notes/CG-36-2026-11-18-1 (2)",
        "batches/CG-36-2026-11-18-1.pdf",
        "batches/.CG-36-2026-11-18-1.yaml",
        "cg-36-2026-11-18-1.text",
        "plans/lots-2026.txt",
        "lots/2026-11"
      })
  void aTextThatCanBeARecordIsToldWhereverItLies(String path) throws IOException {
    file("catfish/CG-36.recipe", "x");
    file(path, "x");
    String told = FindingText.of(listed().findings());
    assertTrue(
        told.startsWith(path + ":1:1: warning: this file is not read, and by its name"), told);
    assertEquals(List.of(path), listed().passedOver().stream().map(Passed::path).toList());
  }

  /** What lies beside a record, and what only looks a little like one. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "photos/CG-36-2026-11-18-1.jpg",
        "batches/.CG-36-2026-11-18-1.yaml.swp",
        "batches/CG-36-2026-11-18-1.yaml~",
        "photo-2026-11-18-2.jpg",
        "IMG-2026-11-18-2.jpg",
        "minutes-2026-11-18.txt",
        "target/CG-36-2026-11-18-2.txt",
        ".git/CG-36-2026-11-18-2",
        "pilots.txt",
        "lots/README.md"
      })
  void whatBelongsToARecordIsNotTold(String path) throws IOException {
    file("catfish/CG-36.recipe", "x");
    file("batches/2026/CG-36-2026-11-18-1.yaml", "x");
    file(path, "x");
    assertEquals("", FindingText.of(listed().findings()));
    assertEquals(List.of(), listed().passedOver());
  }

  @Test
  void aPointBehindTheEndingIsTold() throws IOException {
    file("catfish/CG-36.recipe.", "x");
    assertEquals(
        "catfish/CG-36.recipe.:1:1: warning: this file is not read, for its name ends in"
            + " .recipe and a point [file-name-near]",
        FindingText.firstLine(listed().findings().get(0)));
  }

  @Test
  void aPipeIsNeverOpened() throws Exception {
    Path pipe = root.resolve("A-1.recipe");
    Process made = new ProcessBuilder("mkfifo", pipe.toString()).start();
    assumeTrue(made.waitFor() == 0);
    assertTrue(
        FindingText.of(listed().findings())
            .startsWith("A-1.recipe:1:1: warning: this is a pipe, a socket or a device"));
    assertEquals(List.of(), listed().paths());
  }

  @Test
  void aNameWithWhatCannotBeSeenIsToldAndNotRead() throws IOException {
    file("A\u001B[31m-1.recipe", "x");
    file("A\n-2.recipe", "x");
    file("A\u202E-3.recip", "x");
    file("x\u200By/A-4.recipe", "x");
    file("x\u200By/A-5.recipe", "x");
    file("a\u001Bpicture.png", "x");
    file("خوراک\u200Cماهی/A-6.recipe", "x");
    assertEquals(
        """
        A<U+000A>-2.recipe:1:1: error: the name holds a character that cannot be seen, U+000A, \
        line feed (lf) [file-name-unseen]
        A<U+001B>[31m-1.recipe:1:1: error: the name holds a character that cannot be seen, \
        U+001B, escape [file-name-unseen]
        A<U+202E>-3.recip:1:1: error: the name holds a character that cannot be seen, U+202E, \
        right-to-left override [file-name-unseen]
        x<U+200B>y:1:1: error: the name holds a character that cannot be seen, U+200B, zero \
        width space [file-name-unseen]
        """,
        listed().findings().stream()
            .map(finding -> FindingText.firstLine(finding) + "\n")
            .collect(Collectors.joining()));
    assertEquals(List.of("خوراک\u200Cماهی/A-6.recipe"), listed().paths());
  }

  private static String text(Texts texts, String path) {
    return texts.read(path, new ArrayList<>()).map(SourceFile::text).orElse("not read");
  }

  @Test
  void severalFilesAsAnotherStateHasThem() throws IOException {
    file("A-1.recipe", "old 1");
    file("A-2.recipe", "old 2");
    file("A-3.recip", "x");
    Texts before = listed().over(Map.of());
    Files.delete(root.resolve("A-2.recipe"));
    Files.delete(root.resolve("A-3.recip"));
    file("A-1.recipe", "new 1");
    file("A-3.recipe", "new 3");
    file("A-4.recipe", "new 4");
    Texts now = listed();
    Texts mixed = before.with(List.of("A-2.recipe", "A-3.recip", "A-3.recipe"), now);
    assertEquals(List.of("A-1.recipe", "A-3.recipe"), mixed.paths());
    assertEquals(List.of(), mixed.findings());
    assertEquals("new 3", text(mixed, "A-3.recipe"));
    Texts back = mixed.with(List.of("A-3.recip", "A-4.recipe", "none.recipe"), before);
    assertEquals(List.of("A-1.recipe", "A-3.recipe"), back.paths());
    assertEquals(before.findings(), back.findings());
    assertEquals(1, back.findings().size());
  }

  @Test
  void anEditorsTextStandsInPlaceOfTheFiles() throws IOException {
    file("A-1.recipe", "saved 1");
    file("A-2.recipe", "saved 2");
    Texts disk = listed();
    Texts edited = disk.over(Map.of("A-1.recipe", "typed 1", "b/A-3.recipe", "typed 3"));
    assertEquals(List.of("A-1.recipe", "A-2.recipe", "b/A-3.recipe"), edited.paths());
    assertEquals("typed 1", text(edited, "A-1.recipe"));
    assertEquals("saved 2", text(edited, "A-2.recipe"));
    assertEquals(
        "b/A-3.recipe", edited.read("b/A-3.recipe", new ArrayList<>()).orElseThrow().path());
    assertEquals("saved 1", text(disk, "A-1.recipe"));
    assertEquals(List.of("A-1.recipe", "A-2.recipe"), disk.paths());
    Texts fewer = edited.without(List.of("A-1.recipe", "A-2.recipe", "none.recipe"));
    assertEquals(List.of("b/A-3.recipe"), fewer.paths());
    assertEquals(disk.paths(), edited.with(edited.paths(), disk).paths());
  }

  @Test
  void aTextInMemoryIsTheSameObjectUntilItSaysSomethingElse() throws IOException {
    file("A-1.recipe", "saved");
    Texts one = listed().over(Map.of("A-1.recipe", "typed", "A-2.recipe", "typed"));
    SourceFile held = one.read("A-1.recipe", new ArrayList<>()).orElseThrow();
    Texts same = one.over(Map.of("A-1.recipe", "typed", "A-2.recipe", "typed more"));
    assertSame(held, same.read("A-1.recipe", new ArrayList<>()).orElseThrow());
    assertSame(
        held,
        same.without(List.of("A-2.recipe")).read("A-1.recipe", new ArrayList<>()).orElseThrow());
    assertSame(
        held,
        listed()
            .with(List.of("A-1.recipe"), one)
            .read("A-1.recipe", new ArrayList<>())
            .orElseThrow());
    Texts other = one.over(Map.of("A-1.recipe", "tiped"));
    assertEquals("tiped", text(other, "A-1.recipe"));
  }

  /** What is typed is told of as what is saved: by name, by place, by length. */
  @Test
  void anEditorsTextIsHeldToWhatAFileIs() throws IOException {
    file("a/A-1.recipe", "x");
    Texts typed =
        listed()
            .over(
                Map.of(
                    "b/A-1.recipe", "x",
                    "A-2.recip", "x",
                    "A-3\u202E.recipe", "x",
                    "target/A-4.recipe", "x",
                    ".A-5.recipe", "x",
                    "notes.txt", "x",
                    "A-6.recipe", "#".repeat((1 << 20) + 1)));
    assertEquals(List.of("A-6.recipe", "a/A-1.recipe", "b/A-1.recipe"), typed.paths());
    assertEquals(
        List.of("file-name-near", "file-name-unseen", "file-name-twice"),
        typed.findings().stream().map(finding -> finding.code().text()).toList());
    List<Finding> found = new ArrayList<>();
    assertEquals(Optional.empty(), typed.read("A-6.recipe", found));
    assertEquals("file-too-long", found.get(0).code().text());
    assertEquals(
        List.of(),
        typed.without(List.of("b/A-1.recipe")).findings().stream()
            .filter(finding -> finding.code().equals(FolderFindings.TWICE))
            .toList());
  }

  @Test
  void anEditorsTextInPlaceOfALinkIsRead() throws IOException {
    Files.createSymbolicLink(root.resolve("A-1.recipe"), root.resolve("nowhere"));
    Texts typed = listed().over(Map.of("A-1.recipe", "typed"));
    assertEquals(1, listed().findings().size());
    assertEquals(List.of(), typed.findings());
    assertEquals("typed", text(typed, "A-1.recipe"));
  }

  @Test
  void aRootThatIsNotThereIsABrokenRun() {
    assertThrows(NoSuchFileException.class, () -> Texts.at(root.resolve("nowhere")));
  }

  private void assertFindings(String path, String start) throws IOException {
    List<Finding> findings = new ArrayList<>();
    listed().read(path, findings);
    assertEquals(1, findings.size());
    assertTrue(FindingText.of(findings).startsWith(start), FindingText.of(findings));
  }
}
