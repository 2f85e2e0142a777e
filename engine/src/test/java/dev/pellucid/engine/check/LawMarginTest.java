package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A feed of two meals of which one brings lead. At 50 % with 8 ± 1 mg/kg it holds 4 mg/kg with a
 * deviation of 0.5; of batches of a normal distribution 2.28 % are two deviations off, 15.87 % one.
 */
class LawMarginTest {
  private static final String LAW =
      """
      profile eu-fish "Fish"
        species       other-fish
        kind          law
        jurisdiction  EU
        source        eu-zinc

      limits
        selenium  %s
      """;

  private static final String RECIPE =
      """
        status    approved
        species   african-catfish
        fish      50 to 250 g
        habit     sinking
      mix
        rich      50 %
        poor      rest
      """;

  @TempDir Path root = Path.of("");

  private SmallFolder folder(String limit, String selenium) throws IOException {
    SmallFolder folder = new SmallFolder(root);
    folder.with("pellucid.yaml", "format: 1\nname: A\ncurrency: EUR\njurisdiction: EU\n");
    folder.with("law/eu-fish.limits", LAW.formatted(limit));
    folder.ingredient("rich", "moisture: 10 %, selenium: " + selenium);
    folder.ingredient("poor", "moisture: 10 %, selenium: none");
    return folder.recipe(RECIPE);
  }

  private static List<String> margins(SmallFolder folder) throws IOException {
    return folder.findings().stream()
        .filter(finding -> finding.code().text().startsWith("law-"))
        .map(finding -> finding.code() + ": " + finding.headline())
        .toList();
  }

  @Test
  void theShareOfBatchesOverTheMaximumIsTold() throws IOException {
    SmallFolder folder = folder("max 4.5 mg/kg", "8 ± 1 mg/kg");
    assertEquals(
        List.of(
            "law-without-margin: 16 % of batches would be over the 4.5 mg/kg of selenium that the"
                + " law (EU) allows; on average it is 4.0 mg/kg"),
        margins(folder),
        folder.text());
    assertTrue(
        folder
            .text()
            .contains(
                "the spread of selenium in rich is ± 1 mg/kg by ingredients/rich.yaml, source"
                    + " workshop (common practice), number of analyses not given"),
        folder.text());
    assertTrue(folder.text().contains("95 % of batches stay at or below 4.8 mg/kg"), folder.text());
    assertTrue(
        folder.text().contains("points less rich, made up by poor, would meet it"), folder.text());
  }

  @Test
  void withEnoughRoomNothingIsSaid() throws IOException {
    assertEquals(List.of(), margins(folder("max 5 mg/kg", "8 ± 1 mg/kg")));
    assertEquals(List.of(), margins(folder("max 4.5 mg/kg", "8 ± 0.5 mg/kg")));
  }

  @Test
  void theFolderSaysInHowManyBatches() throws IOException {
    SmallFolder folder = folder("max 4.5 mg/kg", "8 ± 1 mg/kg");
    String settings = "format: 1\nname: A\ncurrency: EUR\njurisdiction: EU\nlaw-kept-in: %s\n";
    assertEquals(List.of(), margins(folder.with("pellucid.yaml", settings.formatted("80 %"))));
    assertEquals(1, margins(folder.with("pellucid.yaml", settings.formatted("99.9 %"))).size());
    for (String wrong : List.of("40 %", "100 %")) {
      folder.with("pellucid.yaml", settings.formatted(wrong));
      assertTrue(folder.codes().contains("data-setting"), folder.text());
    }
  }

  @Test
  void beyondTheMaximumOnAverageItIsAnErrorAlone() throws IOException {
    SmallFolder folder = folder("max 3.9 mg/kg", "8 ± 1 mg/kg");
    assertEquals(List.of(), margins(folder));
    assertTrue(folder.codes().contains("above-maximum"), folder.text());
  }

  @Test
  void lawThatSaysItselfInHowManyBatchesIsLeftAsItIs() throws IOException {
    assertEquals(List.of(), margins(folder("max 4.5 mg/kg  in 80 % of batches", "8 ± 1 mg/kg")));
  }

  @Test
  void aLegalMinimumIsKeptInBatchesToo() throws IOException {
    List<String> said = margins(folder("min 3.5 mg/kg", "8 ± 1 mg/kg"));
    assertEquals(
        List.of(
            "law-without-margin: 16 % of batches would be below the 3.5 mg/kg of selenium that the"
                + " law (EU) asks; on average it is 4.0 mg/kg"),
        said);
  }

  @Test
  void aSpreadThatNobodyTellsIsOneNote() throws IOException {
    SmallFolder folder = folder("max 6 mg/kg", "8 mg/kg");
    folder.with("practice/spreads.yaml", "source: workshop\ncrude-protein: 3 %\n");
    assertEquals(
        List.of(
            "law-spread-unsure: selenium is at 67 % of the legal maximum of 6 mg/kg, and no"
                + " analysis tells how it differs from lot to lot"),
        margins(folder));
    assertTrue(
        folder.text().contains("the spread of selenium in rich is not given, and counts as none"),
        folder.text());
  }

  @Test
  void farFromTheMaximumAndForDraftsThereIsNoNote() throws IOException {
    SmallFolder folder = folder("max 13 mg/kg", "8 mg/kg");
    folder.with("practice/spreads.yaml", "source: workshop\ncrude-protein: 3 %\n");
    assertEquals(List.of(), margins(folder));
    SmallFolder near = folder("max 6 mg/kg", "8 mg/kg");
    near.with("practice/spreads.yaml", "source: workshop\ncrude-protein: 3 %\n");
    near.recipe(RECIPE.replace("approved", "draft"));
    assertEquals(List.of(), margins(near));
  }

  @Test
  void whatIsFromMemoryIsUnsureAndWhatIsMeasuredIsNot() throws IOException {
    SmallFolder folder = folder("max 6 mg/kg", "8 mg/kg");
    folder.with("practice/spreads.yaml", "source: pantry\nselenium: 10 %\n");
    assertEquals(1, margins(folder).size());
    folder.with(
        "practice/spreads.yaml",
        "source: pantry\nmeasured:\n  - source: workshop\n    analyses: 12\n    selenium: 10 %\n");
    assertEquals(List.of(), margins(folder), folder.text());
    assertFalse(folder.codes().contains("data-count"), folder.text());
  }

  @Test
  void oneAnalysisTellsNoSpread() throws IOException {
    SmallFolder folder = folder("max 6 mg/kg", "8 mg/kg");
    folder.with("practice/spreads.yaml", "source: workshop\nanalyses: 1\nselenium: 10 %\n");
    assertTrue(folder.text().contains("1 is one analysis, and one cannot show how lots differ"));
    folder.with(
        "practice/spreads.yaml",
        "source: workshop\nselenium: 10 %\nmeasured:\n  - source: workshop\n    selenium: 12 %\n");
    assertTrue(folder.text().contains("selenium is given twice among the spreads"), folder.text());
  }
}
