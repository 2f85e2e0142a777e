package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What profiles, premixes and shares of the example show together, and when they are silent. */
class FolderTogetherTest {
  private static final String GROWER = "limits/catfish-grower.limits";
  private static final String VITAMINS = "premixes/VIT-WW.premix";

  @TempDir Path copy;

  @Test
  void percentForGramsIsToldOnceAndAsked() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy).with(GROWER, "min 8.0 g/kg", "min 8.0 %");
    assertTrue(folder.text().contains("help: did you mean 8.0 g/kg?"), folder.text());
    assertEquals(1, count(folder, "limit-ten-times-off"));
  }

  @Test
  void aUsualSpanOfTheNutrientCountsAlone() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(GROWER, "crude-fibre                  max 7 %", "crude-fibre  max 45 %");
    assertEquals(List.of("limit-ten-times-off"), folder.codes(), folder.text());
    folder.with(
        "nutrients/1-whole.yaml",
        "  title: Crude fibre\n",
        "  title: Crude fibre\n  usual-maximum: 2 to 60 %\n");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void aLostLimitIsNamedAndTheNumberIsAnAnswer() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                GROWER, "  crude-fibre                  max 7 %      source stage-practice\n", "");
    assertEquals(List.of("limit-lost"), folder.codes(), folder.text());
    assertTrue(
        folder
            .text()
            .contains("crude-fibre stands in catfish-finisher and catfish-starter, not here"),
        folder.text());
    folder.with(GROWER, "holds     45 limits", "holds     44 limits");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(GROWER, "  holds     44 limits\n", "");
    assertEquals(List.of("limit-lost", "limit-lost"), folder.codes(), folder.text());
  }

  @Test
  void lawThatLostItsKindIsOneFinding() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with("law/eu-other-fish.limits", "  kind      law\n", "");
    assertEquals(List.of("profile-incomplete"), folder.codes(), folder.text());
  }

  @Test
  void aLostAntioxidantIsTold() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with("catfish/CS-45.recipe", "  mixed-tocopherols            0.02 %\n", "");
    assertEquals(1, count(folder, "must-hold"));
    assertTrue(folder.text().contains("help: add one of the group: mixed-tocopherols"));
  }

  @Test
  void aDoseTenTimesOffIsSaidOnceAndNotInEachRecipe() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with(VITAMINS, "dose      5 g/kg", "dose      50 g/kg");
    assertEquals(1, count(folder, "dose-ten-times-off"));
    assertEquals(0, count(folder, "premix-off-dose"));
  }

  @Test
  void aSupplyLineThatIsLostIsToldAtThePremix() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(VITAMINS, "  inositol                     540 mg/kg    from inositol\n", "");
    assertTrue(
        folder.text().contains("VIT-WW supplies no inositol; VIT-SH and VIT-TR do, and 6 profiles"),
        folder.text());
  }

  @Test
  void aShareOfAnAminoAcidIsHeldToItsUsualSpan() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                "catfish/CF-31.recipe",
                "dl-methionine                0.10 %",
                "dl-methionine                1.00 %");
    assertEquals(1, count(folder, "share-outside-usual"));
    assertTrue(folder.text().contains("help: did you mean 0.1 %?"), folder.text());
  }

  @Test
  void kilogramsForGramsAreAnError() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with(GROWER, "fish      20 to 250 g", "fish      20 to 250 kg");
    assertTrue(
        folder
            .text()
            .contains("error: fish of 20 to 250 kg, sizes of african-catfish are given up to"),
        folder.text());
    assertEquals(1, count(folder, "fish-beyond-species"));
  }

  private static long count(SlippedFolder folder, String code) throws IOException {
    return folder.codes().stream().filter(code::equals).count();
  }
}
