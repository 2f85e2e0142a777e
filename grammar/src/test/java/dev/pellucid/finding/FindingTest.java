package dev.pellucid.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.pellucid.text.SourceFile;
import org.junit.jupiter.api.Test;

/** A headline is one line, whatever names it tells. */
class FindingTest {
  private static final Code CODE = new Code("die-not-at-plant");

  @Test
  void aLineEndInANameIsShown() {
    assertEquals("River<U+000A>mill<U+2028>has no die", headline("River\nmill\u2028has no die"));
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
