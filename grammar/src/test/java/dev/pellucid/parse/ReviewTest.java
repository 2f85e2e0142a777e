package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.text.SourceFile;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who reviewed a recipe, behind its status. */
class ReviewTest {
  private static Parsed parsed(String line) {
    return FeedParser.parse(
        new SourceFile(
            "CG-36.recipe", "recipe CG-36 \"Grower\"\n  " + line + "\n\nmix\n  maize  100 %\n"));
  }

  private static List<String> reviews(String line) {
    RecipeFile file = (RecipeFile) parsed(line).file();
    return file.head().stream()
        .flatMap(ReviewTest::review)
        .map(one -> one.by().text() + ", " + one.day().text())
        .toList();
  }

  private static Stream<HeadLine.Review> review(HeadLine line) {
    return Stream.of(line)
        .filter(HeadLine.Status.class::isInstance)
        .map(HeadLine.Status.class::cast)
        .flatMap(status -> status.review().stream());
  }

  @Test
  void nameAndDayAreRead() {
    String line = "status  %s  reviewed by  \"A. Marsh\" on 2026-11-20  # all of it";
    for (String status : List.of("approved", "draft", "retired")) {
      assertEquals(List.of("A. Marsh, 2026-11-20"), reviews(line.formatted(status)));
      assertEquals(List.of(), parsed(line.formatted(status)).findings());
    }
    assertEquals(List.of(), reviews("status  approved"));
  }

  /** Each slip is found once, and where it is, and leaves no review. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      textBlock =
          """
          status approved reviewed | phrase-incomplete | 19
          status approved reviewed by | phrase-incomplete | 19
          status approved reviewed by A on 2026-11-20 | phrase-incomplete | 19
          status approved reviewed by "A" | phrase-incomplete | 19
          status approved reviewed by "A" 2026-11-20 | phrase-incomplete | 19
          status approved reviewed on 2026-11-20 by "A" | phrase-incomplete | 19
          status approved reviewd by "A" on 2026-11-20 | phrase-unknown | 19
          status approved reviewed by "A" on 2026-11-20 reviewed by "B" on 2026-11-21 | text-extra | 49
          status approved reviewed by "A" on 1026-11-20 | figure-out-of-bounds | 38
          reviewed by "A" on 2026-11-20 | head-line-unknown | 3
          """)
  void aSlipIsToldWhereItIs(String line, String code, int column) {
    List<Finding> findings = parsed(line).findings();
    assertEquals(1, findings.size(), findings::toString);
    assertEquals(code, findings.get(0).code().toString());
    assertEquals("CG-36.recipe:2:" + column, findings.get(0).span().place());
    assertEquals(1, findings.get(0).helps().size());
    assertEquals(List.of(), reviews(line));
  }

  @Test
  void aDayOfAnotherFormIsFoundAndItsLineStays() {
    List<Finding> findings = parsed("status approved reviewed by \"A\" on 20.11.2026").findings();
    assertEquals(1, findings.size());
    assertEquals("2026-11-20", findings.get(0).edits().get(0).replacement());
    assertEquals(
        List.of("A, 20.11.2026"), reviews("status approved reviewed by \"A\" on 20.11.2026"));
  }

  @Test
  void onlyARecipeHasOne() {
    SourceFile profile =
        new SourceFile(
            "p.limits",
            """
            profile p "P"
              kind need
              source s
              status draft reviewed by "A" on 2026-11-20

            limits
              ash max 9 %
            """);
    List<Finding> findings = FeedParser.parse(profile).findings();
    assertEquals(1, findings.size(), findings::toString);
    assertTrue(findings.get(0).headline().contains("does not tell who reviewed it"));
  }
}
