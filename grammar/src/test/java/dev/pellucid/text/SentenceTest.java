package dev.pellucid.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a person wrote, inside a sentence of ours. */
class SentenceTest {
  @Test
  void aShortOneStays() {
    String sentence = "crude-protein is 33.1 %, the minimum is 35.0 %";
    assertEquals(sentence, Sentence.of(sentence));
    String path = "recipes/" + "a".repeat(72);
    assertEquals(
        path + " is the name of the second one too",
        Sentence.of(path + " is the name of the second one too"));
  }

  @Test
  void aLongWordKeepsItsEnds() {
    assertEquals(
        "1" + "0".repeat(47) + "…" + "0".repeat(23) + "7 has more digits than a number may have",
        Sentence.of("1" + "0".repeat(200) + "7 has more digits than a number may have"));
    assertEquals(
        "there is no ingredient " + "x".repeat(48) + "…" + "x".repeat(24),
        Sentence.of("there is no ingredient " + "x".repeat(1 << 20)));
  }

  @Test
  void aLongTitleInQuotesKeepsItsEnds() {
    String title = "A feed for carp ".repeat(20);
    assertEquals(
        "\"" + title.substring(0, 48) + "…" + title.substring(296) + "\" is the title of two",
        Sentence.of("\"" + title + "\" is the title of two"));
  }

  @Test
  void ourOwnWordsBetweenTwoQuotesStay() {
    String ours =
        " is the first of many names that a folder holds; this sentence of ours goes on for more"
            + " than eighty letters before ";
    String sentence = "\"A\"" + ours + "\"B\"";
    assertEquals(sentence, Sentence.of(sentence));
    String title = "A feed for carp ".repeat(20);
    assertEquals(
        "\"A\"" + ours + "\"" + title.substring(0, 48) + "…" + title.substring(296) + "\"",
        Sentence.of("\"A\"" + ours + "\"" + title + "\""));
  }

  @Test
  void aSentenceOfAMillionShortWordsIsCut() {
    String cut = Sentence.of("is it " + "so or ".repeat(200_000) + "not");
    assertTrue(cut.startsWith("is it so or") && cut.endsWith("so or not"), cut);
    assertEquals(751, cut.length());
  }

  @Test
  void pairsStayWhole() {
    for (String word :
        new String[] {"\uD83D\uDC1F".repeat(100), "x" + "\uD83D\uDC1F".repeat(100)}) {
      String cut = Sentence.of(word + " is no name");
      assertTrue(cut.length() < 90, cut);
      assertEquals(-1, Unseen.find(cut, 0), cut);
    }
  }

  @Test
  void oneLineAndNothingUnseenWhateverComes() {
    Random random = new Random(11);
    for (int trial = 0; trial < 20_000; trial++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(300); n >= 0; n--) {
        text.append((char) (random.nextInt(4) == 0 ? random.nextInt(0x10000) : 'a' + n % 3));
      }
      String sentence = Sentence.of(text.toString());
      assertEquals(-1, Unseen.find(sentence, 0), sentence);
      assertFalse(sentence.contains("\n") || sentence.contains("\r"), sentence);
      assertEquals(sentence, Sentence.of(sentence));
    }
  }
}
