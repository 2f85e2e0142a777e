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
 * A waiver stands for the limit of its own basis only: 8 % as fed is not 8 % on dry matter. Here
 * the feed holds 7.2 % fibre as fed, which is 8.0 % on dry matter.
 */
class WaiverBasisTest {
  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void aFibrousFeed() throws IOException {
    folder = new SmallFolder(root).ingredient("meal", "moisture: 10 %, crude-fibre: 7.2 %");
  }

  @Test
  void onTheSameBasisItReplacesTheLimit() throws IOException {
    folder.recipe(recipe("max 6 % on dry matter", "max 8.5 % on dry matter"));
    assertEquals(List.of(), folder.codes());
  }

  @Test
  void theBasisMayBeWrittenWithOtherDigits() throws IOException {
    folder.recipe(recipe("max 6 % at 12 % moisture", "max 8.5 % at 12.0 % moisture"));
    assertEquals(List.of(), folder.codes());
  }

  @Test
  void aWaiverAsFedDoesNotLoosenALimitOnDryMatter() throws IOException {
    folder.recipe(recipe("max 6 % on dry matter", "max 8.5 %"));
    assertEquals(List.of("above-maximum", "waiver-unused"), folder.codes());
    assertTrue(
        folder
            .text()
            .contains(
                "the waiver for crude-fibre max replaces nothing, the limit stands on dry matter"),
        folder.text());
  }

  @Test
  void aWaiverOnDryMatterDoesNotLoosenALimitAsFed() throws IOException {
    folder.recipe(recipe("max 6 %", "max 8.5 % on dry matter"));
    assertEquals(List.of("above-maximum", "waiver-unused"), folder.codes());
    assertTrue(folder.text().contains("the limit stands as fed"), folder.text());
  }

  private static String recipe(String limit, String waiver) {
    return """
    mix
      meal  100 %

    limits
      crude-fibre  LIMIT

    waivers
      crude-fibre  WAIVER  until 2027-01-01  by "quality manager"  because "trial"
    """
        .replace("LIMIT", limit)
        .replace("WAIVER", waiver);
  }
}
