package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Left;
import dev.pellucid.syntax.Numeral;
import dev.pellucid.syntax.Quoted;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The stretch of text of each node is what the node says, no more and no less. */
class SpansTest {
  @Test
  void everyNodeStandsWhereItSays() {
    int seen = 0;
    for (SourceFile file : GoodFiles.all()) {
      Parsed parsed = FeedParser.parse(file);
      assertEquals(List.of(), parsed.findings());
      for (Object node : TreeText.nodes(parsed.file())) {
        assertStands(node);
        assertHoldsItsParts(node);
        seen++;
      }
    }
    assertTrue(seen > 500, "too few nodes were looked at: " + seen);
  }

  private static void assertStands(Object node) {
    if (node instanceof Word word) {
      assertEquals(word.text(), word.span().text());
    } else if (node instanceof Numeral number) {
      assertEquals(number.text(), number.span().text());
    } else if (node instanceof Quoted quoted) {
      assertEquals('"' + quoted.text() + '"', quoted.span().text());
    } else if (node instanceof Amount amount) {
      assertEquals(amount.asWritten(), oneSpaced(amount.span()));
    } else if (node instanceof Range range) {
      assertEquals(range.asWritten(), oneSpaced(range.span()));
    } else if (node instanceof Left left) {
      assertEquals(left.text(), oneSpaced(left.span()));
    }
  }

  private static void assertHoldsItsParts(Object node) {
    if (!TreeText.hasSpan(node)) {
      return;
    }
    Span whole = TreeText.span(node);
    assertEquals(whole.text().strip(), whole.text());
    for (Object part : TreeText.nodes(node)) {
      if (TreeText.hasSpan(part)) {
        Span span = TreeText.span(part);
        assertTrue(whole.start() <= span.start() && span.end() <= whole.end(), part::toString);
      }
    }
  }

  private static String oneSpaced(Span span) {
    return span.text().replaceAll("\\s+", " ");
  }
}
