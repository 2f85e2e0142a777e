package dev.pellucid.engine.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.engine.figures.FiguresFindings;
import dev.pellucid.engine.folder.FolderFindings;
import dev.pellucid.engine.goal.RunCodes;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.resolve.ResolveCodes;
import dev.pellucid.engine.trace.FollowedTwice;
import dev.pellucid.engine.trace.LineToClean;
import dev.pellucid.engine.workspace.WholeFolder;
import dev.pellucid.engine.yaml.YamlFindings;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.SyntaxCodes;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.stream.Stream;
import org.approvaltests.Approvals;
import org.approvaltests.core.Options;
import org.approvaltests.namer.NamerWrapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each code about recipes, premixes and profiles has a page, and the page tells the truth: its
 * wrong example, laid over the {@link Mill} and checked by the whole route, gives the finding it is
 * about and the accepted text in {@code rule-pages}; its right example gives no finding at all.
 */
class RecipePagesTest {
  private static final Path GOLDENS = Path.of("src", "test", "resources", "rule-pages");
  private static final Path PAGES = Path.of("src", "main", "resources", "dev", "pellucid", "rules");

  @TempDir Path folder;

  static NavigableSet<String> codes() throws IOException {
    NavigableSet<String> codes = EngineCodes.all();
    SyntaxCodes.all().forEach(code -> codes.add(code.text()));
    return codes;
  }

  @Test
  void enoughCodesWereFound() throws IOException {
    assertTrue(EngineCodes.all().size() > 50, EngineCodes.all().toString());
    assertEquals(84, SyntaxCodes.all().size());
  }

  @Test
  void theListsOfCodesHoldEveryCodeOfTheSourcesOnce() throws IOException {
    List<String> listed =
        Stream.of(
                ResolveCodes.all(),
                Rules.codes(),
                FiguresFindings.codes(),
                BatchRecordCheck.codes(),
                List.of(LineToClean.CODE, FollowedTwice.CODE),
                WholeFolder.codes())
            .flatMap(Collection::stream)
            .map(Code::text)
            .sorted()
            .toList();
    assertEquals(List.copyOf(EngineCodes.all()), listed);
  }

  @Test
  void everyPageBelongsToACode() throws IOException {
    NavigableSet<String> known = codes();
    Stream.of(TablesReader.codes(), YamlFindings.codes(), FolderFindings.codes(), RunCodes.all())
        .flatMap(Collection::stream)
        .map(Code::text)
        .forEach(known::add);
    try (Stream<Path> pages = Files.list(PAGES)) {
      for (Path page : pages.toList()) {
        String name = page.getFileName().toString();
        assertTrue(known.contains(name.replace(".md", "")), "no such code: " + name);
      }
    }
  }

  @Test
  void theMillItselfIsSilent() throws IOException {
    assertEquals("", FindingText.of(new Mill(folder).findings()));
    assertEquals("", FindingText.of(Mill.of(folder.resolve("records"), "lot-expired").findings()));
    assertEquals("", FindingText.of(Mill.of(folder.resolve("kept"), "figures-stale").findings()));
  }

  @ParameterizedTest
  @MethodSource("codes")
  void thePageBeginsWithTheCodeAndSaysWhy(String code) throws IOException {
    RecipePage page = page(code);
    assertTrue(page.text().startsWith("# " + code + "\n\n"), page.text());
    assertTrue(page.why().length() > 120, page.why());
  }

  @ParameterizedTest
  @MethodSource("codes")
  void theWrongExampleIsNamed(String code) throws IOException {
    RecipePage page = page(code);
    assertFalse(page.wrong().isEmpty(), "no wrong example");
    String text = FindingText.of(Mill.of(folder, code).with(page.wrong()).findings());
    assertTrue(text.contains("[" + code + "]"), text);
    verify(code, text);
  }

  @ParameterizedTest
  @MethodSource("codes")
  void theRightExampleIsSilent(String code) throws IOException {
    RecipePage page = page(code);
    assertFalse(page.right().isEmpty(), "no right example");
    List<Finding> said = new ArrayList<>(Mill.of(folder, code).with(page.right()).findings());
    // A page that shows several profiles has no recipe for each.
    said.removeIf(
        one -> one.code().text().equals("profile-unmet") && !code.equals("profile-unmet"));
    assertEquals("", FindingText.of(said));
  }

  private static RecipePage page(String code) throws IOException {
    return RecipePage.of(code).orElseThrow(() -> new AssertionError("no page for " + code));
  }

  private static void verify(String code, String text) {
    String place = GOLDENS.toAbsolutePath() + "/";
    Approvals.verify(
        text, new Options().forFile().withNamer(new NamerWrapper(() -> code, () -> place)));
  }
}
