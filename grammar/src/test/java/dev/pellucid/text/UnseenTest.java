package dev.pellucid.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may not stand in a text, and what languages need of it. */
class UnseenTest {
  @ParameterizedTest
  @CsvSource({
    "0000, 'U+0000, null'",
    "0007, 'U+0007, bel'",
    "001B, 'U+001B, escape'",
    "007F, 'U+007F, delete'",
    "0085, 'U+0085, next line (nel)'",
    "00AD, 'U+00AD, soft hyphen'",
    "034F, 'U+034F, combining grapheme joiner'",
    "061C, 'U+061C, arabic letter mark'",
    "115F, 'U+115F, hangul choseong filler'",
    "200B, 'U+200B, zero width space'",
    "200D, 'U+200D, zero width joiner'",
    "200E, 'U+200E, left-to-right mark'",
    "200F, 'U+200F, right-to-left mark'",
    "2028, 'U+2028, line separator'",
    "202A, 'U+202A, left-to-right embedding'",
    "202E, 'U+202E, right-to-left override'",
    "2060, 'U+2060, word joiner'",
    "2066, 'U+2066, left-to-right isolate'",
    "2069, 'U+2069, pop directional isolate'",
    "2800, 'U+2800, braille pattern blank'",
    "3164, 'U+3164, hangul filler'",
    "FE0F, 'U+FE0F, variation selector-16'",
    "FEFF, 'U+FEFF, zero width no-break space'",
    "FFF9, 'U+FFF9, interlinear annotation anchor'",
    "D800, 'U+D800, half of a pair'",
    "DC41, 'U+DC41, half of a pair'",
    "FFFE, U+FFFE",
    "E0001, 'U+E0001, language tag'",
    "E0041, 'U+E0041, tag latin capital letter a'",
    "E01EF, 'U+E01EF, variation selector-256'",
    "E0FFF, U+E0FFF"
  })
  void isFoundAndNamed(String hex, String name) {
    int c = Integer.parseInt(hex, 16);
    String text = "Maize " + Character.toString(c) + "x";
    assertEquals(6, Unseen.find(text, 0));
    assertEquals(Character.charCount(c), Unseen.length(text, 6));
    assertEquals(-1, Unseen.find(text, 6 + Character.charCount(c)));
    assertEquals(name, Unseen.named(c));
    assertEquals("Maize <U+" + hex + ">x", Unseen.shown(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plain text, 4 mm\twith a tab\r\nand a line end\n",
        "Корм для карпа",
        "草鱼饲料　水分",
        "とうもろこし",
        "옥수수",
        "ปลายข้าว",
        "علف السمك ٪",
        "مزرعة ۝",
        "می\u200Cخواهم",
        "ہے۔ اُس\u200Cکا",
        "क्\u200Dष और क्\u200Cष",
        "ශ්\u200Dරී",
        "ന്\u200D", // an old spelling that ends a word
        "ចំណី\u200Bត្រី",
        "อาหาร\u200Bปลา",
        "葛\uDB40\uDD00城",
        "ᠭᠠᠷ\u180Eᠠ",
        "\u26A0\uFE0F look",
        "\uD83D\uDC1F",
        "1\u00A0kg\u3000x\u2009y"
      })
  void whatLanguagesNeedMayStand(String text) {
    assertEquals(-1, Unseen.find(text, 0));
    assertEquals(text, Unseen.shown(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ma\u200Cize", // letters that do not join
        "ма\u200Dис",
        "\u200Cمی",
        "می\u200C",
        "می\u200Cx", // between two scripts
        "می\u200C\u200Cخواهم",
        "क\u200D", // no silent letter before it
        "fish\u200Bmeal",
        "ចំណី\u200Bx",
        "ចំណី\u200B\u200Bត្រី",
        "a\uFE0F",
        "1\uFE0F",
        "葛\uDB40\uDD00\uDB40\uDD01",
        "\uD83D\uDC1F\uFE0F\uFE0E",
        "\uD83D\uDC68\u200D\uD83D\uDC67", // joined faces
        "\uDC1F\uD83D" // a pair the wrong way round
      })
  void elsewhereTheyMayNot(String text) {
    assertTrue(Unseen.find(text, 0) >= 0, () -> Unseen.shown(text));
    assertEquals(-1, Unseen.find(Unseen.shown(text), 0));
  }

  @Test
  void whatIsShownHoldsNoneAndLosesNothingElse() {
    for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
      String text = "a" + Character.toString(c) + "b";
      String shown = Unseen.shown(text);
      assertEquals(-1, Unseen.find(shown, 0));
      assertTrue(shown.equals(text) || shown.matches("a<U\\+[0-9A-F]{4,6}>b"), shown);
    }
  }

  @Test
  void oneLineStaysOneLine() {
    assertEquals("a b<U+000A>c<U+000D><U+0007>", Unseen.shownOnOneLine("a\tb\nc\r\u0007"));
  }

  @Test
  void blanksAreTheSpacesAndTheTab() {
    for (int c : List.of(0x20, 9, 0xA0, 0x1680, 0x2000, 0x2003, 0x2007, 0x202F, 0x205F, 0x3000)) {
      assertTrue(Blanks.isBlank(c), Integer.toHexString(c));
    }
    for (int c : List.of(0, 0x0A, 0x0D, 0x61, 0x85, 0x180E, 0x200B, 0x2028, 0xFEFF)) {
      assertTrue(!Blanks.isBlank(c), Integer.toHexString(c));
    }
    assertEquals("a b", Blanks.plain("\u3000a\u2003b\t"));
  }
}
