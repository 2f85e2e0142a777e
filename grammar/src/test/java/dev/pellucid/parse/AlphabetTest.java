package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.text.Blanks;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Unseen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.Token;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Stand-ins make the lexer quick in every script and change no token. */
class AlphabetTest {
  private static final Path GRAMMAR =
      Path.of("src/main/antlr4/dev/pellucid/parse/generated/FeedTokens.g4");
  private static final Pattern ESCAPE = Pattern.compile("\\\\u([0-9A-F]{4})");

  /** Letters of many scripts, blanks, quotes, controls, marks, whole and broken pairs. */
  private static final String STRANGE =
      "абвЖщ кукурузаéüñßøčłΑβγμµ°℃³²½٣۴३１２％水分玉米とうもろこし옥수수ไทยहिन्दीفارسی‌عربי"
          + "\u00A0\u1680\u2000\u2003\u2007\u2009\u202F\u205F\u3000\u200B\u2028\u2029\u0085"
          + "\u201C\u201D\u201E\u00AB\u2019\uFF02\uFF03\u0000\u0001\u0007\u001B\u007F\u202E\u2066"
          + "\uFEFF\uFFFD\uFFFE\uD83D\uDC1F\uD800\uDC00\uDB40\uDC41";

  private static final List<String> WORDS =
      List.of(
          "recipe ",
          "mix",
          "maize ",
          "14.00 ",
          "% ",
          "min ",
          "within ",
          "VM-CAT ",
          "2027-03-31 ",
          "\n",
          "\r\n",
          "\r",
          "\n  ",
          "  ",
          "\t",
          "\"",
          "#",
          " # ",
          ":",
          "+",
          "µg/kg ",
          "μg/kg ",
          "µm ",
          "°C ",
          "℃ ",
          "kg/m³ ",
          "µ",
          "°",
          "³",
          "g/kg",
          "EUR/kg ",
          "C ",
          "\"Корм 4 мм\" ",
          "# кукуруза",
          "# 水分",
          "1 µg/kg",
          "1.5 °C",
          "g",
          "/kg",
          "m",
          "0",
          "A",
          "-");

  @Test
  @DisplayName("30,000 texts of many scripts give the same tokens with stand-ins and without")
  void noTokenChanges() {
    Random random = new Random(20_261_128);
    for (int trial = 0; trial < 30_000; trial++) {
      String text = text(random);
      assertEquals(plain(text), withStandIns(text), () -> escaped(text));
    }
  }

  @Test
  void everyCharacterByItselfGivesTheSameTokens() {
    for (int c = 0; c <= Character.MAX_VALUE; c++) {
      for (String text : List.of("" + (char) c, "a" + (char) c + "b 1 " + (char) c + "g/kg\n")) {
        assertEquals(plain(text), withStandIns(text), () -> escaped(text));
      }
    }
  }

  @Test
  void antlrRemembersEveryStandIn() {
    for (int c = 0; c <= Character.MAX_VALUE; c++) {
      int standIn = standIn((char) c);
      assertTrue(standIn >= 0 && standIn < Alphabet.REMEMBERED, Integer.toHexString(c));
    }
  }

  @Test
  void eachCharacterThatTheGrammarNamesHasItsOwn() throws IOException {
    String grammar = Files.readString(GRAMMAR);
    assertTrue(grammar.chars().allMatch(c -> c < 0x80), "the grammar names them by their numbers");
    Set<Integer> named = new TreeSet<>();
    Matcher escape = ESCAPE.matcher(grammar);
    while (escape.find()) {
      named.add(Integer.parseInt(escape.group(1), 16));
    }
    assertTrue(named.containsAll(Set.of(0xB0, 0xB5, 0x3BC, 0x2103, 0xB3)), named::toString);
    for (int c : named) {
      assertNotEquals(standIn('я'), standIn((char) c), Integer.toHexString(c));
      assertNotEquals(standIn('a'), standIn((char) c), Integer.toHexString(c));
    }
  }

  @Test
  void lettersThatTheGrammarDoesNotNameAreOne() {
    int letter = standIn('я');
    for (char c : "éß水옥\uD83D\uDC1F\u0007\u202E".toCharArray()) {
      assertEquals(letter, standIn(c), Integer.toHexString(c));
    }
    assertNotEquals(letter, standIn(' '));
    assertEquals(standIn('\u00A0'), standIn('\u3000'));
  }

  @Test
  void whatCannotBeSeenStandsOnlyWhereAnythingMayStand() {
    for (int c = 0; c <= Character.MAX_VALUE; c++) {
      String text =
          "\"a" + (char) c + "\" " + (char) c + " a" + (char) c + "b # " + (char) c + "\n";
      if (c == 0xFFFD || Unseen.find(text, 0) >= 0) {
        Tokens tokens = new Tokens(new SourceFile("x", text));
        for (int i = 0; i < tokens.count(); i++) {
          boolean holdsIt = tokens.text(i).indexOf(c) >= 0;
          assertTrue(!holdsIt || tokens.mayHoldAnything(i), escaped(text));
        }
      }
    }
  }

  @Test
  void theBlanksOfTheLexerAreTheBlanksOfEverythingElse() {
    int blank = standIn(' ');
    int tab = standIn('\t');
    for (int c = 0; c <= Character.MAX_VALUE; c++) {
      int standIn = standIn((char) c);
      assertEquals(standIn == blank || standIn == tab, Blanks.isBlank(c), Integer.toHexString(c));
    }
  }

  private static int standIn(char c) {
    return Automaton.ofTheGrammar().alphabet().standIns()[c];
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    for (int n = random.nextInt(24); n >= 0; n--) {
      switch (random.nextInt(4)) {
        case 0 -> text.append(STRANGE.charAt(random.nextInt(STRANGE.length())));
        case 1 -> text.append((char) random.nextInt(0x10000));
        default -> text.append(WORDS.get(random.nextInt(WORDS.size())));
      }
    }
    return text.toString();
  }

  private static List<String> withStandIns(String text) {
    Tokens tokens = new Tokens(new SourceFile("x", text));
    List<String> told = new ArrayList<>();
    for (int i = 0; i < tokens.count(); i++) {
      told.add(told(tokens.kind(i), tokens.start(i), tokens.end(i), tokens.text(i)));
    }
    return told;
  }

  /** The same by the lexer as ANTLR made it, which sees each character itself. */
  private static List<String> plain(String text) {
    FeedTokens lexer = new FeedTokens(new PlainLetters(text));
    lexer.removeErrorListeners();
    List<String> told = new ArrayList<>();
    for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken()) {
      int end = token.getStopIndex() + 1;
      told.add(told(token.getType(), token.getStartIndex(), end, token.getText()));
    }
    return told;
  }

  private static String told(int kind, int start, int end, String text) {
    return FeedTokens.VOCABULARY.getSymbolicName(kind) + " " + start + ".." + end + " " + text;
  }

  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.chars().forEach(c -> out.append(c < 0x7F && c >= ' ' ? (char) c : "<" + c + ">"));
    return out.toString();
  }
}
