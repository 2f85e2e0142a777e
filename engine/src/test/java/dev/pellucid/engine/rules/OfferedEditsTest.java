package dev.pellucid.engine.rules;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.engine.folder.FolderFindings;
import dev.pellucid.engine.yaml.YamlFindings;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.SyntaxCodes;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.TextEdit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a finding offers to write in place of the text fixes it: for the wrong example of every
 * page, each finding's edit is made by itself and the folder is checked again. That finding must be
 * gone, and nothing new may be wrong with how the files are written.
 */
class OfferedEditsTest {
  private static final Path PAGES = Path.of("src", "main", "resources", "dev", "pellucid", "rules");

  /** Codes of how files are written, not of what they say. */
  private static final Set<Code> WRITING =
      Stream.of(
              SyntaxCodes.all(), YamlFindings.codes(), TablesReader.codes(), FolderFindings.codes())
          .flatMap(Collection::stream)
          .collect(Collectors.toSet());

  @TempDir Path folder;

  static NavigableSet<String> codes() throws IOException {
    try (Stream<Path> pages = Files.list(PAGES)) {
      return pages
          .map(page -> page.getFileName().toString().replace(".md", ""))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @ParameterizedTest
  @MethodSource("codes")
  void everyOfferedEditMends(String code) throws IOException {
    List<RecipePage.Block> wrong = RecipePage.of(code).orElseThrow().wrong();
    List<Finding> before = mill("before", code).with(wrong).findings();
    int number = 0;
    for (Finding finding : before) {
      if (!finding.edits().isEmpty()) {
        Mill fixed = mill("after" + number++, code).with(wrong);
        SourceFile file = finding.span().file();
        fixed.write(file.path(), edited(finding).getBytes(StandardCharsets.UTF_8));
        holds(finding, before, fixed.findings());
      }
    }
  }

  @Test
  void manyPagesOfferAnEdit() throws IOException {
    int offers = 0;
    int number = 0;
    for (String code : codes()) {
      List<RecipePage.Block> wrong = RecipePage.of(code).orElseThrow().wrong();
      List<Finding> findings = mill("page" + number++, code).with(wrong).findings();
      offers += findings.stream().anyMatch(finding -> !finding.edits().isEmpty()) ? 1 : 0;
    }
    assertTrue(offers > 35, "pages with an edit: " + offers);
  }

  private static void holds(Finding fixed, List<Finding> before, List<Finding> after) {
    String told = "after the edit of\n" + FindingText.of(fixed) + "\n" + FindingText.of(after);
    assertTrue(
        count(after, fixed.code(), fixed.span().file().path())
            < count(before, fixed.code(), fixed.span().file().path()),
        told);
    for (Finding finding : after) {
      String path = finding.span().file().path();
      boolean fewer = count(after, finding.code(), path) <= count(before, finding.code(), path);
      assertTrue(fewer || !WRITING.contains(finding.code()), told);
    }
  }

  private static long count(List<Finding> findings, Code code, String path) {
    return findings.stream()
        .filter(finding -> finding.code().equals(code))
        .filter(finding -> finding.span().file().path().equals(path))
        .count();
  }

  /** The file with all edits of one finding made, the last first, so that places stay true. */
  private static String edited(Finding finding) {
    String text = finding.span().file().text();
    List<TextEdit> lastFirst =
        finding.edits().stream()
            .sorted(Comparator.comparing((TextEdit edit) -> edit.span().start()).reversed())
            .toList();
    for (TextEdit edit : lastFirst) {
      text =
          text.substring(0, edit.span().start())
              + edit.replacement()
              + text.substring(edit.span().end());
    }
    return text;
  }

  private Mill mill(String name, String code) throws IOException {
    return Mill.of(folder.resolve(name), code);
  }
}
