package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several plants in one folder, their dryers, and what they also make. */
class PlantRulesTest {
  private static final String RECIPE = "catfish/CG-36.recipe";
  private static final String SHED = "plant/farm-shed.yaml";
  private static final String MILL = "plant/river-mill.yaml";
  private static final String ROWS = "practice/sequence.yaml";

  @TempDir Path copy = Path.of("");

  private void says(SlippedFolder folder, String code, String words) throws IOException {
    assertEquals(List.of(code), folder.codes(), folder.text());
    assertTrue(folder.text().contains(words), folder.text());
  }

  private SlippedFolder slip(String path, String from, String to) throws IOException {
    return new SlippedFolder(copy).with(path, from, to);
  }

  @Test
  void aPlantOfAnotherNameIsUnknown() throws IOException {
    says(
        slip(RECIPE, "farm-shed", "farm-shet"),
        "unknown-plant",
        "CG-36.recipe:7:13: error: farm-shet is not a plant of this folder");
  }

  @Test
  void aPlantThatIsGoneIsToldOnce() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    Files.delete(copy.resolve(SHED));
    says(folder, "unknown-plant", "error: farm-shed is not a plant of this folder");
  }

  @Test
  void twoPlantsInOneHead() throws IOException {
    says(
        slip(RECIPE, "  plant     farm-shed\n", "  plant     farm-shed\n  plant     river-mill\n"),
        "head-line-twice",
        "CG-36.recipe:8:3: error: plant stands twice in the head");
  }

  @Test
  void aPremixIsMadeWhereItSays() throws IOException {
    says(
        slip("premixes/MIN-WW.premix", "  dose ", "  plant  the-shed\n  dose "),
        "unknown-plant",
        "MIN-WW.premix:4:10: error: the-shed is not a plant of this folder");
  }

  @Test
  void aLostLineOfThePlantIsToldAtTheDryer() throws IOException {
    says(
        slip(RECIPE, "  plant     farm-shed\n", ""),
        "dryer-not-at-plant",
        "River mill has no dryer for 55 °C, it has Bed dryer at 60 to 110 °C");
  }

  @Test
  void aBedThatTakesTooLongForTheWaterOfAFilling() throws IOException {
    SlippedFolder folder = slip(MILL, "water-per-hour: 120 kg", "water-per-hour: 30 kg");
    assertEquals(Set.of("dryer-too-slow"), new HashSet<>(folder.codes()), folder.text());
    assertTrue(
        folder
            .text()
            .contains(
                "the Bed dryer needs 2.5 h to take 75 kg of water off a filling, dry time is 1 to 2 h"),
        folder.text());
  }

  @Test
  void aBedOfDoubtedFiguresIsToldAtThePlantAlone() throws IOException {
    says(
        slip(MILL, "water-per-hour: 120 kg", "water-per-hour: 12 kg"),
        "data-off-practice",
        "12 kg of water in an hour is far from practice beside the 500 kg of wet feed");
  }

  @Test
  void whatAPlantAlsoMakesMustBeRuled() throws IOException {
    SlippedFolder folder =
        slip(ROWS, "  - after: {made: medicated}", "  - after: {made: ruminant}");
    assertEquals(List.of("made-at-no-plant", "also-made-unruled"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("river-mill.yaml:21:14: error: River mill also makes"));
  }

  @Test
  void aRowForSomeSpeciesRulesTheseAlone() throws IOException {
    SlippedFolder folder =
        slip(
            ROWS,
            "  - after: {made: medicated}\n",
            "  - after: {made: medicated}\n    before: [salmonids, african-catfish]\n");
    assertEquals(List.of("also-made-unruled", "also-made-unruled"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("what must be done between it and feed for Common carp"));
  }

  @Test
  void draftsAndOtherPlantsWaitForNoRow() throws IOException {
    SlippedFolder folder =
        slip(MILL, "also-makes: [medicated]", "bags: []")
            .with(MILL, "bags: [5 kg, 10 kg, 20 kg, 25 kg]\n", "");
    folder.with(ROWS, "{made: medicated}", "{made: coccidiostats}");
    folder.with(SHED, "bags:", "also-makes: [coccidiostats]\nbags:");
    assertTrue(!folder.codes().contains("also-made-unruled"), folder.text());
  }
}
