package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.FolderFindings;
import dev.pellucid.engine.goal.RunCodes;
import dev.pellucid.engine.yaml.YamlFindings;
import dev.pellucid.finding.Code;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each code about data and files has a page, and the page tells the truth. */
class DataPagesTest {
  /** What no file inside a page can show: a missing, a huge, a linked or a closed file. */
  private static final Set<String> PROSE =
      Set.of(
          "data-no-settings",
          "data-no-file",
          "yaml-too-large",
          "file-too-long",
          "file-unreadable",
          "file-link",
          "file-name-clash",
          "file-name-twice",
          "file-name-near",
          "file-name-unseen",
          "file-copy",
          "file-special",
          "more-findings",
          "broken-because-of",
          "premix-forgotten",
          "section-lost",
          "own-file-tells-less",
          "own-source-takes-over",
          "day-far-off",
          "record-not-judged",
          "made-from-unlike",
          "record-without-commit",
          "released-changed",
          "fault-of-pellucid");

  static Set<String> codes() {
    return Stream.of(
            TablesReader.codes(), YamlFindings.codes(), FolderFindings.codes(), RunCodes.all())
        .flatMap(Collection::stream)
        .map(Code::text)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void noCodeIsDeclaredTwice() {
    long declared =
        Stream.of(
                TablesReader.codes(), YamlFindings.codes(), FolderFindings.codes(), RunCodes.all())
            .mapToLong(Collection::size)
            .sum();
    assertEquals(declared, codes().size());
    assertTrue(declared > 60);
  }

  @ParameterizedTest
  @MethodSource("codes")
  void thePageBeginsWithTheCodeAndSaysWhy(String code) throws IOException {
    String page = page(code);
    assertTrue(page.startsWith("# " + code + "\n\n"), page);
    assertTrue(page.length() > code.length() + 120, page);
    assertEquals(PROSE.contains(code), !page.contains("\n## Wrong\n"), page);
  }

  @ParameterizedTest
  @MethodSource("codes")
  void theWrongExampleIsNamed(String code) throws IOException {
    if (PROSE.contains(code)) {
      return;
    }
    TablesRead stocked = Page.over(Pantry.full(), Page.of(page(code)).wrong());
    String text = FindingText.of(stocked.findings());
    assertTrue(text.contains("[" + code + "]"), text);
    Cases.verify("pages", code, text);
  }

  @ParameterizedTest
  @MethodSource("codes")
  void theRightExampleIsSilent(String code) throws IOException {
    if (PROSE.contains(code)) {
      return;
    }
    Page page = Page.of(page(code));
    assertFalse(page.right().isEmpty());
    assertEquals("", FindingText.of(Page.over(Pantry.full(), page.right()).findings()));
  }

  private static String page(String code) throws IOException {
    try (InputStream in =
        TablesReader.class.getResourceAsStream("/dev/pellucid/rules/" + code + ".md")) {
      assertNotNull(in, "no page for " + code);
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
