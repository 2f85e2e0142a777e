package dev.pellucid.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class CodeTest {
  @Test
  void wordsInKebabCaseAreACode() {
    for (String text : List.of("tab", "below-minimum", "not-utf-8", "utf-16", "a1-2b")) {
      assertEquals(text, new Code(text).text());
    }
  }

  @Test
  void anythingElseIsNone() {
    for (String text :
        List.of(
            "", "-", "1st", "-tab", "tab-", "below--minimum", "Tab", "two words", "tab\u00E9")) {
      assertThrows(IllegalArgumentException.class, () -> new Code(text), text);
    }
  }
}
