package dev.pellucid.engine.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A limit of the recipe that is tighter than the law stands in its place; a waiver of that limit
 * brings the law back. 50 mg/kg as fed with 10 % moisture are 48.9 mg/kg at 12 %.
 */
class LawStandsTest {
  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void aFeedAboveTheLegalMaximum() throws IOException {
    folder =
        new SmallFolder(root)
            .with(
                "pellucid.yaml",
                "format: 1\nname: x\ncurrency: EUR\njurisdiction: EU\nplant: shed\n")
            .with(
                "zinc.limits",
                """
                profile zinc
                  species      other-fish
                  species      salmonids
                  kind         law
                  jurisdiction EU
                  source       eu-zinc

                limits
                  zinc  max 40 mg/kg  at 12 % moisture
                """)
            .ingredient("meal", "moisture: 10 %, crude-protein: 40 %, zinc: 50 mg/kg");
  }

  @Test
  void aWaiverOfTheTighterLimitDoesNotWaiveTheLawBehindIt() throws IOException {
    folder.recipe(recipe("35", "500"));
    assertEquals(List.of("above-maximum"), folder.codes());
    assertTrue(
        folder
            .text()
            .contains("zinc is 48.9 mg/kg at 12 % moisture, the legal maximum (EU) is 40.0 mg/kg"),
        folder.text());
  }

  @Test
  void aWaiverThatStaysWithinTheLawIsTheOneThatIsTold() throws IOException {
    folder.recipe(recipe("35", "38"));
    assertEquals(List.of("above-maximum"), folder.codes());
    assertTrue(folder.text().contains("the maximum under its waiver is 38"), folder.text());
  }

  private static String recipe(String own, String waived) {
    return """
    mix
      meal  100 %

    limits
      zinc  max OWN mg/kg  at 12 % moisture

    waivers
      zinc  max WAIVED mg/kg  at 12 % moisture  until 2027-01-01  by "quality manager"  because "trial"
    """
        .replace("OWN", own)
        .replace("WAIVED", waived);
  }
}
