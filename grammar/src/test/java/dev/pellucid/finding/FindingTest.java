package dev.pellucid.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.pellucid.text.SourceFile;
import org.junit.jupiter.api.Test;

/** A headline is one line, whatever names it tells. */
class FindingTest {
  private static final Code CODE = new Code("die-not-at-plant");

  @Test
  void aLineEndInANameBecomesASpace() {
    assertEquals(
        "River mill has no die of 4 mm", headline("River\r\nmill\u2028has no\tdie of 4 mm"));
  }

  @Test
  void aSentenceWithoutWordsOrWithAFullStopIsNone() {
    assertThrows(IllegalArgumentException.class, () -> headline(""));
    assertThrows(IllegalArgumentException.class, () -> headline("it is broken."));
  }

  private static String headline(String words) {
    return Finding.error(CODE, new SourceFile("A-1.recipe", "").beginning(), words).headline();
  }
}
