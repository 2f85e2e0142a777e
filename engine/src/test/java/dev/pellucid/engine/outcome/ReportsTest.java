package dev.pellucid.engine.outcome;

import static dev.pellucid.text.PrintedPaths.BELOW_FOLDER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.ReportTexts;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamWriter;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Reports of what no small folder shows: thousands of findings, and letters that need care. */
class ReportsTest {
  private static final Code CODE = new Code("below-minimum");

  private static Finding error(String path, String headline) {
    return error(path, 0, headline);
  }

  private static Finding error(String path, int at, String headline) {
    Span span = new SourceFile(path, "recipe A-1\n\nmix\n").span(at, at);
    return Finding.error(CODE, span, headline);
  }

  private static final Askers NOBODY = new Askers(0, 0, 0, 0, 0, List.of(), "");

  private static CheckOutcome outcome(List<Finding> findings, List<RecipeOutcome> recipes) {
    Map<Severity, Long> counts =
        findings.stream().collect(Collectors.groupingBy(Finding::severity, Collectors.counting()));
    return new CheckOutcome(
        "so many recipes",
        0,
        0,
        NOBODY,
        counts,
        findings,
        recipes.stream().map(RecipeOutcome::standing).toList(),
        recipes.stream().map(recipe -> LimitSuite.of(recipe, BELOW_FOLDER)).toList(),
        Severity.ERROR);
  }

  private static String summary(CheckOutcome outcome) {
    return ReportTexts.of(new SummaryPage(outcome, BELOW_FOLDER));
  }

  private static String junit(CheckOutcome outcome) {
    return ReportTexts.of(new LimitsJunit(outcome, BELOW_FOLDER));
  }

  private static List<Finding> many(int number, Severity severity, String headline) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      Span span = new SourceFile("catfish/R-" + i + ".recipe", "recipe").span(0, 0);
      findings.add(Finding.of(CODE, severity, span, headline));
    }
    return findings;
  }

  private static List<RecipeOutcome> recipes(int number) {
    return IntStream.range(0, number).mapToObj(ReportsTest::recipe).toList();
  }

  private static RecipeOutcome recipe(int number) {
    String code = "R-" + number;
    List<LimitOutcome> limits =
        List.of(new LimitOutcome("lysine min", LimitOutcome.State.KEPT, Optional.empty()));
    return new RecipeOutcome(code + ".recipe", code, true, List.of(), limits, List.of(), List.of());
  }

  @Test
  void theSummaryStaysWithinItsBoundAndSaysWhatItLeftOut() {
    List<Finding> findings = new ArrayList<>();
    findings.addAll(many(9000, Severity.ERROR, "lysine is 1.2 %, the minimum is 1.9 %"));
    findings.addAll(many(9000, Severity.WARNING, "x".repeat(5000)));
    String page = summary(outcome(findings, recipes(10_000)));
    assertTrue(page.length() <= SummaryPage.LONGEST, () -> page.length() + " characters");
    assertTrue(page.length() > SummaryPage.LONGEST * 9 / 10, () -> page.length() + " characters");
    assertEquals(9000 + 9000 + 10_000, shown(page) + leftOut(page));
    assertTrue(page.indexOf("## Errors (9000)") < page.indexOf("## Recipes (10000)"));
    assertTrue(page.indexOf("## Recipes") < page.indexOf("## Warnings (9000)"));
  }

  @Test
  void ofFewNothingIsLeftOut() {
    String page = summary(outcome(many(20, Severity.ERROR, "lysine is low"), recipes(10)));
    assertEquals(30, shown(page));
    assertFalse(page.contains("left out"));
  }

  private static long shown(String page) {
    return page.lines().filter(line -> line.matches("\\| (catfish|R-).*")).count();
  }

  private static long leftOut(String page) {
    return page.lines()
        .filter(line -> line.contains(" more left out here"))
        .mapToLong(line -> Long.parseLong(line.substring(0, line.indexOf(' '))))
        .sum();
  }

  @Test
  void whatIsWorstStandsFirst() {
    RecipeOutcome broken =
        new RecipeOutcome(
            "Z-9.recipe",
            "Z-9",
            true,
            List.of(),
            List.of(new LimitOutcome("l", LimitOutcome.State.NOT_JUDGED, Optional.empty())),
            List.of(),
            List.of());
    RecipeOutcome unread = RecipeOutcome.unchecked("Y-9.recipe", "Y-9", List.of(), List.of());
    String page = summary(outcome(List.of(), List.of(recipe(1), broken, unread)));
    assertTrue(page.indexOf("| Y-9 ") < page.indexOf("| Z-9 "), page);
    assertTrue(page.indexOf("| Z-9 ") < page.indexOf("| R-1 "), page);
  }

  /** What is too long is cut where a person wrote it, never inside an escape of ours. */
  @Test
  void aLongTallyIsCutBeforeItIsEscaped() {
    String tally = "x".repeat(1998) + "#1 and more";
    String page =
        summary(
            new CheckOutcome(
                tally, 0, 0, NOBODY, Map.of(), List.of(), List.of(), List.of(), Severity.ERROR));
    assertTrue(page.endsWith("xx\\#&#8203;1…\n"), page);
  }

  @Test
  void marksOfMarkdownAndHtmlDoNothing() {
    String page =
        summary(outcome(List.of(error("a_b.recipe", "<b> | *x* [y](z) `q` #1")), List.of()));
    String row = "| a\\_b.recipe:1 | \\<b> \\| \\*x\\* \\[y\\](z) \\`q\\` \\#&#8203;1 |";
    assertTrue(page.contains(row), page);
  }

  @Test
  void whatXmlCannotHoldIsReplaced() throws Exception {
    Finding odd = error("A-1.recipe", "an odd \u0001 & \uFFFF < \" 𝛼 letter");
    RecipeOutcome recipe = RecipeOutcome.unchecked("A-1.recipe", "A-1", List.of(), List.of(odd));
    String xml = junit(outcome(List.of(odd), List.of(recipe)));
    Document read =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(xml)));
    assertEquals(
        "an odd <U+0001> & <U+FFFF> < \" 𝛼 letter",
        read.getElementsByTagName("error")
            .item(0)
            .getAttributes()
            .getNamedItem("message")
            .getNodeValue());
  }

  @Test
  void casesOfOneNameAreNumbered() {
    LimitOutcome kept =
        new LimitOutcome("zinc min (A-1)", LimitOutcome.State.KEPT, Optional.empty());
    RecipeOutcome recipe =
        new RecipeOutcome(
            "A-1.recipe", "A-1", true, List.of(), List.of(kept, kept), List.of(), List.of());
    String xml = junit(outcome(List.of(), List.of(recipe)));
    assertTrue(xml.contains("name=\"zinc min (A-1)\""), xml);
    assertTrue(xml.contains("name=\"zinc min (A-1) 2\""), xml);
  }

  /** What is written past the writer of the JDK reads back as that writer has it. */
  @Test
  void wordsOfXmlAreAsItsWriterHasThem() throws Exception {
    for (String words :
        List.of("", "plain: 5 %", "a\nb", "µ ä 中", "a < b & \"c\" > 'd'", "𝛼", "]]>")) {
      StringWriter expected = new StringWriter();
      XMLStreamWriter writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(expected);
      writer.writeStartElement("e");
      writer.writeAttribute("name", words);
      writer.writeCharacters(words);
      writer.writeEndElement();
      writer.close();
      Xml xml = new Xml();
      xml.start("e");
      xml.attribute("name", words);
      xml.open();
      xml.text(words);
      xml.end("e");
      assertEquals(expected.toString(), xml.toString());
    }
  }

  /** Section 3.11.6 of SARIF: in a link all brackets are escaped, elsewhere what looks like one. */
  @Test
  void wordsOfAMessageAreNoLinks() {
    assertEquals("2 [of 3]", SarifText.of("2 [of 3]"));
    assertEquals("\\[here\\](1) {{0}}", SarifText.of("[here](1) {0}"));
    assertEquals("[para\\[0\\]\\\\spans](3)", SarifText.link("para[0]\\spans", 3));
  }

  @Test
  void aPageForReadersTellsTheFileAndNothingOfTests() {
    String page =
        """
        # c

        Why.

        ## Wrong

        ```a/b.recipe part
        mix
        ```

        ```c.yaml
        x: 1
        ```

        ```d.yaml gone
        ```
        """;
    assertEquals(
        """
        # c

        Why.

        ## Wrong

        In `a/b.recipe`:

        ```
        mix
        ```

        `c.yaml`:

        ```
        x: 1
        ```

        There is no `d.yaml`:

        ```
        ```
        """,
        RuleWords.read(page).markdown());
  }

  /** RFC 3986: what the JDK reads back is the path. */
  @Test
  void aPathAsUri() {
    String path = "trial pond/ä: 50%/µ#1?[x].recipe";
    URI uri = URI.create(SarifLog.uri(path));
    assertEquals(path, uri.getPath());
    assertFalse(uri.isAbsolute());
    assertEquals("catfish/CG-36.recipe", SarifLog.uri("catfish/CG-36.recipe"));
  }

  @Test
  void sameInAllButPlaceAreCounted() {
    Finding first = error("A-1.recipe", 0, "lysine is low");
    Finding second = error("A-1.recipe", 3, "lysine is low");
    Finding other =
        error("A-1.recipe", 5, "lysine is low")
            .about(new About("lysine", About.Side.MIN, List.of("maize")));
    Fingerprints fingerprints = new Fingerprints(List.of(first, second, other));
    assertEquals("below-minimum|A-1.recipe||", fingerprints.of(first));
    assertEquals("below-minimum|A-1.recipe|||2", fingerprints.of(second));
    assertEquals("below-minimum|A-1.recipe|lysine|min", fingerprints.of(other));
  }

  @Test
  void wordsOfAPage() {
    RuleWords words =
        RuleWords.read("# code\n\nOne thing, and\nmore. Another.\n\nThird 1.5.\n\n## Wrong\n\nx\n");
    assertEquals(List.of("One thing, and more. Another.", "Third 1.5."), words.paragraphs());
    assertEquals("One thing, and more.", words.inShort());
    assertEquals("One thing, and more. Another.\n\nThird 1.5.", words.text());
    assertTrue(words.page().endsWith("## Wrong\n\nx\n"));
  }

  /** Whatever a finding's code is, SARIF has words for it. */
  @Test
  void everyPageHasWords() throws IOException {
    Path pages = Path.of("src", "main", "resources", "dev", "pellucid", "rules");
    try (Stream<Path> all = Files.list(pages)) {
      List<String> codes =
          all.map(page -> page.getFileName().toString().replace(".md", "")).toList();
      assertTrue(codes.size() > 200, codes::toString);
      for (String code : codes) {
        RuleWords words = RuleWords.of(new Code(code));
        assertFalse(words.inShort().isEmpty() || words.text().contains("```"), code);
        assertTrue(words.page().startsWith("# " + code + "\n"), code);
      }
    }
  }

  /**
   * The list of kinds has a line for each code. What is missing is told as the lines to add; the
   * last word is yours to choose among those that are there.
   */
  @Test
  void everyCodeIsOfAKind() throws IOException {
    Path pages = Path.of("src", "main", "resources", "dev", "pellucid", "rules");
    List<String> missing = new ArrayList<>();
    int levels = 0;
    try (Stream<Path> all = Files.list(pages)) {
      for (Path page : all.sorted().toList()) {
        Code code = new Code(page.getFileName().toString().replace(".md", ""));
        Optional<RuleKinds.Kind> kind = RuleKinds.of(code);
        if (kind.isEmpty()) {
          missing.add("%-32s %-8s KIND".formatted(code, "LEVEL"));
        } else {
          assertTrue(List.of("error", "warning", "note").contains(kind.get().level()), code.text());
          levels++;
        }
      }
    }
    assertEquals(
        List.of(), missing, "add to engine/src/main/resources/dev/pellucid/outcome/kinds.txt");
    Path list = Path.of("src", "main", "resources", "dev", "pellucid", "outcome", "kinds.txt");
    List<String> lines = Files.readAllLines(list);
    assertEquals(levels, lines.size(), "a line for a code without a page");
    assertEquals(lines.stream().sorted().toList(), lines);
  }

  /** What a page's wrong example gives, its line in the list of kinds says. */
  @Test
  void theLevelOfAKindIsThatOfItsPage() throws IOException {
    int told = 0;
    for (String folder : List.of("rule-pages", "larder-cases/pages")) {
      try (Stream<Path> goldens = Files.list(Path.of("src", "test", "resources", folder))) {
        for (Path golden : goldens.sorted().toList()) {
          String code = golden.getFileName().toString().replace(".approved.txt", "");
          List<String> levels =
              Files.readAllLines(golden).stream()
                  .filter(line -> line.endsWith(" [" + code + "]"))
                  .map(line -> line.replaceFirst("^.*?:[0-9]+:[0-9]+: ([a-z]+): .*$", "$1"))
                  .toList();
          Optional<RuleKinds.Kind> kind = RuleKinds.of(new Code(code));
          if (!levels.isEmpty() && kind.isPresent()) {
            assertTrue(levels.contains(kind.get().level()), code + " is told as " + levels);
            told++;
          }
        }
      }
    }
    assertTrue(told > 250, told + " pages");
  }
}
