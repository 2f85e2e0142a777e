package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Whatever the bytes are, there is a tree and a finding, never an exception. */
class AnyBytesTest {
  private static final List<String> NAMES = List.of("A-1.recipe", "VM-1.premix", "a.limits");
  private static final String[] PIECES = {
    "recipe ",
    "mix",
    "limits",
    "process",
    "\n",
    "\n  ",
    "\r",
    " ",
    "\t",
    "maize ",
    "14.00 ",
    "% ",
    "within ",
    "min ",
    "max ",
    "to ",
    "\"",
    "#",
    ":",
    "+",
    "A-1 ",
    "\uFEFF",
    "\u0000",
    "é",
    "rest ",
    "inclusion ",
    "cost ",
    "1,5 ",
    "\uD83D\uDC1F",
    "\uD800",
    "of ",
    "batches ",
    "kg ",
    "supply"
  };

  private final Random random = new Random(4_711);

  @Test
  @DisplayName("20,000 rows of random bytes")
  void randomBytes() {
    for (int i = 0; i < 20_000; i++) {
      byte[] bytes = new byte[random.nextInt(200)];
      random.nextBytes(bytes);
      Parsed parsed = FeedParser.parse(NAMES.get(i % 3), bytes);
      assertFalse(parsed.findings().isEmpty());
      assertFalse(FindingText.of(parsed.findings()).isEmpty());
    }
  }

  @Test
  @DisplayName("20,000 rows of random words of the language")
  void randomWords() {
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(40); n >= 0; n--) {
        text.append(PIECES[random.nextInt(PIECES.length)]);
      }
      SourceFile file = new SourceFile(NAMES.get(i % 3), text.toString());
      Parsed parsed = FeedParser.parse(file);
      parsed.findings().forEach(AnyBytesTest::assertOurs);
      FindingText.of(parsed.findings());
    }
  }

  private static void assertOurs(Finding finding) {
    assertTrue(SyntaxCodes.all().contains(finding.code()), finding.code()::text);
    assertFalse(finding.helps().isEmpty(), finding.code() + " has no help");
    String said = finding.headline();
    assertFalse(said.contains("token") || said.contains("invalid") || said.contains("EOF"), said);
  }

  @Test
  void anotherEncodingIsNamed() {
    for (Charset other : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16)) {
      byte[] bytes = "recipe A-1\nmix\n  maize 100 %\n".getBytes(other);
      List<Finding> findings = FeedParser.parse("A-1.recipe", bytes).findings();
      assertEquals(1, findings.size());
      assertEquals(
          "A-1.recipe:1:1: error: the file is saved as UTF-16, not as UTF-8 [utf-16]",
          FindingText.firstLine(findings.get(0)));
    }
  }

  @Test
  void aLostByteCostsItsLineOnly() {
    String text =
        """
        recipe A-1
        mix
          maize 100 %
        process
          dry temperature 55 °C
          dry time 6 h
        """;
    Parsed parsed = FeedParser.parse("A-1.recipe", text.getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(
        """
        A-1.recipe:5:22: error: the byte B0 is not UTF-8, the file was saved in another encoding [not-utf-8]
            5 |   dry temperature 55 \uFFFDC
              |                      ^
         help: save it again from your editor with the encoding UTF-8
        """,
        FindingText.of(parsed.findings()));
    assertEquals(Set.of(1, 3, 6), TreeText.byLine(parsed.file()).keySet());
  }
}
