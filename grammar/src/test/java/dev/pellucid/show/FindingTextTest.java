package dev.pellucid.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The excerpt marks the stretch, however long and strange its line. */
class FindingTextTest {
  private static final Code CODE = new Code("some-code");

  @Test
  void theWholeOfAnUsualLineIsShown() {
    assertEquals(
        """
        a.recipe:2:3: error: here [some-code]
            2 |   maize  14 %
              |   ^^^^^ it
        """,
        shown("mix\n\t maize  14 %\n", "maize"));
  }

  @Test
  void whatCannotBeSeenIsShownByItsNumber() {
    assertEquals(
        """
        a.recipe:1:4: error: here [some-code]
            1 | a <U+202E>b maize<U+0007>
              |           ^^^^^^^ it
        """,
        shown("a \u202Eb maize\u0007\n", "b maize"));
  }

  /** Place, word and mark stand out on a screen, and nothing else does. */
  @Test
  void whatStandsOutIsPainted() {
    Paint paint =
        new Paint() {
          @Override
          public String place(String words) {
            return "<" + words + ">";
          }

          @Override
          public String grave(Severity severity, String words) {
            return severity.word().charAt(0) + "(" + words + ")";
          }
        };
    SourceFile file = new SourceFile("a.recipe", "mix\n  maize  14 %\n");
    Finding finding =
        Finding.warning(CODE, file.span(6, 11), "here").labelled("it").helping("fix it");
    assertEquals(
        """
        <m/a.recipe:2:3>: w(warning): here [some-code]
            2 |   maize  14 %
              |   w(^^^^^ it)
         help: fix it
        """,
        FindingText.of(finding, new PrintedPaths("m/"), paint));
  }

  @Test
  void ofALongLineThePartRoundTheMarkIsShown() {
    String text = "# " + "x ".repeat(500_000) + "maize" + " y".repeat(1000) + "\n";
    assertEquals(
        """
        a.recipe:1:1000003: error: here [some-code]
            1 | …%smaize%s…
              |  %s^^^^^ it
        """
            .formatted("x ".repeat(20), " y".repeat(57) + " ", " ".repeat(40)),
        shown(text, "maize"));
  }

  @Test
  void aMarkOfAMillionLettersIsCut() {
    String word = "m".repeat(1 << 20);
    String text = shown("  " + word + " 14 %\n", word);
    assertTrue(text.length() < 600, text);
    assertTrue(text.contains("\n    1 |   " + "m".repeat(158) + "…\n"), text);
    assertTrue(text.contains("|   " + "^".repeat(158) + " it\n"), text);
  }

  @Test
  void pairsAreNotPartedAtTheEdges() {
    for (int shift = 0; shift < 2; shift++) {
      String text = "x".repeat(shift) + "\uD83D\uDC1F".repeat(500);
      String shown = shown(text + "maize" + text, "maize");
      assertEquals(-1, shown.indexOf("<U+"), shown);
    }
  }

  /** Not before what stands in prose, which names files below the folder. */
  @Test
  void eachPlaceIsCalledAsTheReaderKnowsIt() {
    SourceFile file = new SourceFile("a.recipe", "mix\n");
    Finding finding =
        Finding.error(CODE, file.span(0, 3), "see limits/b.limits")
            .seeing("limit written", new SourceFile("limits/b.limits", "").beginning())
            .helping("look at c.premix");
    String text =
        """
        feeds/a.recipe:1:1: error: see limits/b.limits [some-code]
            1 | mix
              | ^^^
         note: limit written at feeds/limits/b.limits:1:1
         help: look at c.premix
        """;
    PrintedPaths paths = new PrintedPaths("feeds/");
    assertEquals(text, FindingText.of(finding, paths));
    assertEquals(text + "\n" + text, FindingText.of(List.of(finding, finding), paths));
    assertEquals(text.replace("feeds/", ""), FindingText.of(finding));
  }

  private static String shown(String text, String marked) {
    SourceFile file = new SourceFile("a.recipe", text);
    int start = text.indexOf(marked);
    return FindingText.of(
        Finding.error(CODE, file.span(start, start + marked.length()), "here").labelled("it"));
  }
}
