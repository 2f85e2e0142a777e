package dev.pellucid.engine.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page of the language leaves no word of it out: each stands in an example that is run. */
class LanguagePageTest {
  private static final Path PAGE = Path.of("docs", "language.md");
  private static final Pattern SPACE = Pattern.compile("\\s+");

  private static final Pattern LITERAL = Pattern.compile("'[a-z]+'");

  /** Words that stand for one of a few: the page has a row for each. */
  private static final List<String> CHOICES =
      List.of(
          "draft",
          "approved",
          "retired",
          "floating",
          "sinking",
          "slow-sinking",
          "weighed",
          "finished",
          "need",
          "practice",
          "law",
          "guidance",
          "handling",
          "stability",
          "vacuum",
          "drum",
          "hand");

  @Test
  void everyWordOfTheGrammarIsInAnExample() throws IOException {
    Set<String> shown = wordsOfExamples();
    Set<String> missing = languageWords();
    assertTrue(missing.size() > 45, missing::toString);
    missing.removeAll(shown);
    assertEquals(Set.of(), missing);
  }

  @Test
  void everySectionOfEachKindOfFileIsInAnExample() throws IOException {
    for (FileKind kind : FileKind.values()) {
      List<String> lines = lines(kind.extension().substring(1));
      for (SectionWord section : kind.sections()) {
        assertTrue(lines.contains(section.word()), kind + " " + section);
      }
      for (String word : kind.headWords()) {
        assertTrue(
            lines.stream().anyMatch(line -> line.startsWith("  " + word + " ")), kind + " " + word);
      }
    }
  }

  @Test
  void everyPropertyOfEachStepIsInAnExample() throws IOException {
    List<String> lines =
        lines("recipe").stream().map(line -> SPACE.matcher(line.strip()).replaceAll(" ")).toList();
    List<String> missing = new ArrayList<>();
    for (Step step : Step.values()) {
      for (Property property : step.properties()) {
        String shown = step.word() + " " + property.word() + " ";
        if (lines.stream().noneMatch(line -> line.startsWith(shown))) {
          missing.add(shown);
        }
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void everyChoiceIsTold() throws IOException {
    String page = Files.readString(PAGE);
    CHOICES.forEach(
        word ->
            assertTrue(
                Pattern.compile("`[^`]*\\b" + word + "\\b[^`]*`").matcher(page).find(), word));
  }

  /** A file of the page is a whole file by itself: no line of it is passed over. */
  @Test
  void everyWholeFileReadsWithoutASlip() throws IOException {
    int read = 0;
    for (DocBlock block : DocPage.of(PAGE).blocks("recipe", "premix", "limits")) {
      if (block.says("file") && !block.says("part")) {
        SourceFile file = new SourceFile(block.setting("file").orElseThrow(), block.text());
        assertEquals(List.of(), FeedParser.parse(file).findings(), block.text());
        read++;
      }
    }
    assertTrue(read >= 5);
  }

  private static Set<String> languageWords() {
    Set<String> words = new TreeSet<>();
    for (int type = 1; type <= FeedTokens.VOCABULARY.getMaxTokenType(); type++) {
      String literal = FeedTokens.VOCABULARY.getLiteralName(type);
      if (literal != null && LITERAL.matcher(literal).matches()) {
        words.add(literal.substring(1, literal.length() - 1));
      }
    }
    return words;
  }

  private static Set<String> wordsOfExamples() throws IOException {
    return lines("recipe", "premix", "limits", "diff").stream()
        .flatMap(SPACE::splitAsStream)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> lines(String... kinds) throws IOException {
    List<String> lines = new ArrayList<>();
    DocPage.of(PAGE).blocks(kinds).forEach(block -> lines.addAll(block.lines()));
    return lines;
  }
}
