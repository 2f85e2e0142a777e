package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.syntax.Lexeme;
import dev.pellucid.text.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every letter that is not white space lies in exactly one lexeme. */
class LexingTest {
  @Test
  void nothingIsLostAndNothingTwice() {
    for (SourceFile file : GoodFiles.all()) {
      StringBuilder rest = new StringBuilder(file.text());
      int last = 0;
      for (Lexeme lexeme : Lexing.lexemes(file)) {
        assertTrue(lexeme.span().start() >= last, lexeme::toString);
        last = lexeme.span().end();
        for (int i = lexeme.span().start(); i < last; i++) {
          rest.setCharAt(i, ' ');
        }
        assertTrue(lexeme.kind() != Lexeme.Kind.UNREADABLE, lexeme::toString);
      }
      assertEquals("", rest.toString().strip());
    }
  }

  @Test
  void kindsDependOnThePlaceOnlyForUnits() {
    assertEquals("WORD NUMBER UNIT", kinds("min 12 min"));
    assertEquals("WORD NUMBER WORD NUMBER", kinds("max 6 min 5.1"));
    assertEquals("WORD NUMBER UNIT COMMENT", kinds("d 12 d  # d"));
    assertEquals("WORD SYMBOL WORD", kinds("a : b"));
    assertEquals("UNREADABLE UNIT QUOTED DAY", kinds("1.0.2 % \"x y\" 2027-03-31"));
    assertEquals("COMMENT WORD COMMENT COMMENT", kinds("# a\nmix # b\n\n  # c"));
  }

  private static String kinds(String text) {
    List<String> kinds =
        Lexing.lexemes(new SourceFile("x", text)).stream().map(l -> l.kind().name()).toList();
    return String.join(" ", kinds);
  }
}
