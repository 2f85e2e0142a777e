package dev.pellucid.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Severity;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Lexing;
import dev.pellucid.text.Blanks;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every pair is run five ways: once, twice, and with line ends of three kinds. */
class FormatterTest {
  private static final Path GOOD = Path.of("src", "test", "resources", "good");
  private static final Formatter FORMATTER = new Formatter(Lexing::lexemes);

  /** Every blank that a text can have. */
  private static final List<String> BLANKS =
      IntStream.range(0, 0x10000).filter(Blanks::isBlank).mapToObj(Character::toString).toList();

  static List<Path> goodFiles() throws IOException {
    try (Stream<Path> files = Files.list(GOOD)) {
      return files.sorted().toList();
    }
  }

  @Test
  void reworkAndItsRecipeStandTogether() {
    assertLaidOut(
        """
        recipe A-1
        mix
         rework   A-1 3 % within 0 to 5 %
         rework 1 %
         rework rest
        """,
        """
        recipe A-1

        mix
          rework A-1                   3 %          within 0 to 5 %
          rework                       1 %
          rework                       rest
        """);
  }

  @Test
  void orNoneStaysWithItsRangeAndAStepIsAPhraseOfItsOwn() {
    assertLaidOut(
        """
        recipe A-1
        mix
         maize 10 % within 2 to  10 %  or  none step 0.5   % # bags
         wheat 10 %   step 1 % within 2 to 10 %   or none
         step rest
         none 10 % step   1 %
        """,
        """
        recipe A-1

        mix
          maize                        10 %         within 2 to 10 % or none  step 0.5 %  # bags
          wheat                        10 %         step 1 %  within 2 to 10 % or none
          step                         rest
          none                         10 %         step 1 %
        """);
  }

  @Test
  void piecesGoToTheirStops() {
    assertLaidOut(
        """
        recipe   A-1    "A feed,  as  quoted"   # why
         status draft
           batch   60   kg   weighed
        mix
        \tmaize 100 % within 5  to 100 %   #   all of it
        limits
          crude-protein max 40 % min 30 %  in 95 % of batches
          methionine + cystine : crude-protein min 3 %
        process
         grind  maize screen 0.8 mm
         dry moisture 9 % accept 8 to 10 %
         coat method hand
        """,
        """
        recipe A-1 "A feed,  as  quoted"  # why
          status    draft
          batch     60 kg weighed

        mix
          maize                        100 %        within 5 to 100 %  #   all of it

        limits
          crude-protein                max 40 %     min 30 %  in 95 % of batches
          methionine + cystine : crude-protein  min 3 %

        process
          grind      maize screen      0.8 mm
          dry        moisture          9 %          accept 8 to 10 %
          coat       method            hand
        """);
  }

  @Test
  void commentsAreKeptAndStandWithTheirSection() {
    assertLaidOut(
        """


        # first
        recipe A-1
            # of the head


            # of the head too
        # of the mix
        mix

          maize  rest
        # set apart

        coat
          fish-oil 1 %
        """,
        """
        # first
        recipe A-1
          # of the head

          # of the head too

        # of the mix
        mix
          maize                        rest
        # set apart

        coat
          fish-oil                     1 %
        """);
  }

  @Test
  void wordsThatOpenPhrasesMayBeNames() {
    assertLaidOut(
        """
        recipe A-1
        mix
          in  100 %
        limits
          min min 5 %  source at  in 90 % of batches
        """,
        """
        recipe A-1

        mix
          in                           100 %

        limits
          min                          min 5 %      source at  in 90 % of batches
        """);
  }

  @ParameterizedTest
  @MethodSource("goodFiles")
  void whiteSpaceOfAnyKindComesToOneLayout(Path file) throws IOException {
    String laidOut = format(file.getFileName().toString(), Files.readString(file));
    Random random = new Random(20261125);
    for (int trial = 0; trial < 500; trial++) {
      String messy = messy(laidOut, random);
      assertEquals(laidOut, format(file.getFileName().toString(), messy), messy);
    }
  }

  @Test
  void aByteOrderMarkAndAMissingLastLineEndAreKeptAndMended() {
    assertEquals("\uFEFFrecipe A-1\n", format("A-1.recipe", "\uFEFFrecipe   A-1"));
    assertEquals("", format("A-1.recipe", ""));
  }

  @Test
  void refusesWhatWouldChangeMoreThanWhiteSpace() {
    SourceFile source = new SourceFile("A-1.recipe", "recipe A-1\n");
    Formatter forgetful =
        new Formatter(
            text -> text == source ? Lexing.lexemes(text) : Lexing.lexemes(text).subList(0, 1));
    assertEquals(Optional.empty(), forgetful.format(source));
  }

  /** Other white space between words and around lines, but never what makes a line a line. */
  private static String messy(String laidOut, Random random) {
    StringBuilder out = new StringBuilder();
    for (String line : laidOut.split("\n", -1)) {
      boolean margin = !line.startsWith(" ");
      String rest = line.strip();
      if (rest.isEmpty()) {
        out.append("\n".repeat(1 + random.nextInt(3)));
        continue;
      }
      out.append(margin ? "" : space(random));
      out.append(rest.contains("#") || rest.contains("\"") ? rest : spaced(rest, random));
      out.append(random.nextInt(4) == 0 ? "  \t" : "").append('\n');
    }
    return out.toString();
  }

  private static String spaced(String line, Random random) {
    StringBuilder out = new StringBuilder();
    for (String word : line.split(" +", -1)) {
      out.append(out.isEmpty() ? "" : space(random)).append(word);
    }
    return out.toString();
  }

  private static String space(Random random) {
    StringBuilder space = new StringBuilder();
    for (int n = random.nextInt(3); n >= 0; n--) {
      space.append(BLANKS.get(random.nextInt(BLANKS.size())));
    }
    return space.toString();
  }

  private static void assertLaidOut(String from, String to) {
    assertNotEquals(from, to);
    assertTrue(
        FeedParser.parse(new SourceFile("A-1.recipe", from)).findings().stream()
            .allMatch(finding -> finding.severity() == Severity.NOTE),
        from);
    assertEquals(to, format("A-1.recipe", from));
    assertEquals(to, format("A-1.recipe", to));
    for (String end : List.of("\r\n", "\r")) {
      assertEquals(to.replace("\n", end), format("A-1.recipe", from.replace("\n", end)));
    }
  }

  private static String format(String name, String text) {
    return FORMATTER.format(new SourceFile(name, text)).orElseThrow();
  }
}
