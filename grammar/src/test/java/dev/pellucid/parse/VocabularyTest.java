package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.measure.Unit;
import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The words of the grammar and the words of the tree are the same, and each may be a name. */
class VocabularyTest {
  @Test
  void everyWordOfTheLanguageMayBeAName() {
    Set<String> words = languageWords();
    assertTrue(words.size() > 45, "too few words were found: " + words);
    for (String word : words) {
      assertReads(
          "A-1.recipe", "recipe A-1\nmix\n  " + word + " 40 % within 1 to 50 %\n  maize rest\n");
      assertReads("A-1.recipe", "recipe A-1\nmix\n  " + word + " rest\n");
      String limit = word.equals("cost") ? " max 2 EUR/kg\n" : " max 2 %\n";
      assertReads("a.limits", "profile a\n  species " + word + "\nlimits\n  " + word + limit);
      assertReads(
          "a.limits", "profile a\nlimits\n  inclusion " + word + " + " + word + " max 2 %\n");
      assertReads(
          "A-1.premix",
          "premix A-1\n  dose 1 %\nsupply\n  " + word + " 1 g/kg from " + word + "\n");
      assertReads(
          "A-1.recipe",
          "recipe A-1\nmix\n  maize 1 %\nprocess\n  grind "
              + word
              + " screen 1 mm\noverage\n  "
              + word
              + " 1 % for handling\n");
    }
  }

  @Test
  void namesThatLookLikeUnitsAreNames() {
    for (String name : List.of("d", "g", "min", "t", "C", "L", "months", "kg", "lime")) {
      assertReads("A-1.recipe", "recipe A-1\nmix\n  " + name + " 100 %\n");
    }
  }

  @Test
  void theGrammarKnowsEveryUnit() {
    Set<String> units = new TreeSet<>(Unit.symbols());
    units.add("EUR/kg");
    units.add("EUR/t");
    for (String unit : units) {
      List<Lexeme> lexemes = Lexing.lexemes(new SourceFile("x", "1 " + unit));
      assertEquals(Lexeme.Kind.UNIT, lexemes.get(1).kind(), unit);
    }
  }

  @Test
  void theGrammarKnowsEverySectionAndKindOfFile() {
    Set<String> words = languageWords();
    for (SectionWord section : SectionWord.values()) {
      assertTrue(words.contains(section.word()), section.word());
    }
    for (FileKind kind : FileKind.values()) {
      assertTrue(words.contains(kind.word()), kind.word());
      assertTrue(words.containsAll(kind.headWords()), kind.word());
    }
  }

  @Test
  void everyStepTakesEachOfItsProperties() {
    for (Step step : Step.values()) {
      for (Property property : step.properties()) {
        String example = ProcessLines.expected(property).example();
        assertReads(
            "A-1.recipe",
            "recipe A-1\nmix\n  maize 100 %\nprocess\n  "
                + step.word()
                + " "
                + example
                + "\n  "
                + step.word()
                + " maize "
                + example
                + "\n");
      }
    }
  }

  private static Set<String> languageWords() {
    Set<String> words = new TreeSet<>();
    for (int type = 1; type <= FeedTokens.VOCABULARY.getMaxTokenType(); type++) {
      String literal = FeedTokens.VOCABULARY.getLiteralName(type);
      if (literal != null && literal.matches("'[a-z]+'")) {
        words.add(literal.substring(1, literal.length() - 1));
      }
    }
    return words;
  }

  private static void assertReads(String path, String text) {
    List<String> said = new ArrayList<>();
    FeedParser.parse(new SourceFile(path, text)).findings().forEach(f -> said.add(f.headline()));
    assertEquals(List.of(), said, text);
  }
}
