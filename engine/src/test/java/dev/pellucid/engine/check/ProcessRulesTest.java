package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rules of process, practice and ingredients, each on one slip in CG-36 of the example folder. */
class ProcessRulesTest {
  private static final String RECIPE = "catfish/CG-36.recipe";

  @TempDir Path copy = Path.of("");

  @Test
  void dryingTooCold() throws IOException {
    says(
        slip("practice/bounds.yaml", "from: 50 °C, to: 85", "from: 60 °C, to: 85"),
        "process-outside-practice",
        "CG-36.recipe:46:3: warning: dry temperature is 55 °C, practice is 60 °C to 85 °C");
  }

  @Test
  void aHeatThatTheFolderKnowsNothingOfIsSaidOnce() throws IOException {
    SlippedFolder folder =
        slip(RECIPE, "dry        temperature       55 °C", "dry        temperature       85 °C");
    says(folder, "unknown-retention", "error: what dry at 85 °C leaves of biotin and ");
    assertEquals(List.of("dryer-not-at-plant", "unknown-retention"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("note: not judged: vitamin-a, "), folder.text());
  }

  @Test
  void aCoolerThatIsToDryTooMuch() throws IOException {
    says(
        slip(
            "carp/KG-33.recipe",
            "moisture          11 %         accept 10 to 12 %",
            "moisture          8 %          accept 7 to 9 %"),
        "cooler-cannot-dry",
        "error: cool is to take ");
  }

  @Test
  void aDieWithoutItsUnitIsNoReasonToMissTheOthers() throws IOException {
    SlippedFolder folder = slip("plant/river-mill.yaml", "dies: [1.5 mm", "dies: [1.5");
    folder.with("plant/farm-shed.yaml", "dies: [1.5 mm", "dies: [1.5");
    assertTrue(folder.text().contains("1.5"), folder.text());
    assertTrue(!folder.codes().contains("die-not-at-plant"), folder.text());
  }

  @Test
  void dryingTooShort() throws IOException {
    says(
        slip(RECIPE, "6 to 12 h", "0.5 to 12 h"),
        "process-outside-practice",
        "dry time is 0.5 h, practice is 1 h to 12 h");
  }

  @Test
  void blendingTooShort() throws IOException {
    says(
        slip(RECIPE, "time              12 min", "time              2 min"),
        "blend-time",
        "error: blend time is 2 min, the Paddle mixer mixes in 10 to 15 min");
  }

  @Test
  void waterTooLittleWithoutSteam() throws IOException {
    says(
        slip(RECIPE, "on-mix            18 %", "on-mix            9 %"),
        "process-outside-practice",
        "add-water on-mix is 9 %, practice is 10 % to 20 %");
  }

  @Test
  void aScreenTooCoarseForTheDie() throws IOException {
    says(
        slip(RECIPE, "screen            1.0 mm", "screen            2.0 mm"),
        "process-outside-practice",
        "the screen of 2.0 mm as a part of the die of 4 mm is 50 %, practice is 5 % to 34 %");
  }

  @Test
  void aFeedTooMoist() throws IOException {
    says(
        slip(RECIPE, "9 %          accept 8 to 10 %", "14 %"),
        "feed-outside-practice",
        "the moisture of the finished feed is 13.47 %, practice is 6 % to 12 %");
  }

  @Test
  void tooMuchOilByHand() throws IOException {
    says(
        slip("practice/bounds.yaml", "oil-by-hand: {to: 5 %", "oil-by-hand: {to: 4 %"),
        "feed-outside-practice",
        "oil on the kernel, put on by hand, is 4.");
  }

  @Test
  void tooMuchOilUnderVacuumAndFatBeforeTheDie() throws IOException {
    SlippedFolder folder =
        slip("practice/bounds.yaml", "oil-under-vacuum: {to: 30 %", "oil-under-vacuum: {to: 12 %")
            .with(
                "practice/bounds.yaml",
                "fat-before-extruding: {to: 12 %",
                "fat-before-extruding: {to: 4 %")
            .with(
                "practice/bounds.yaml",
                "fat-before-pelleting: {to: 8 %",
                "fat-before-pelleting: {to: 3 %");
    says(folder, "feed-outside-practice", "oil on the kernel, put on under vacuum, is ");
    assertTrue(of("feed-outside-practice", folder, "trout/TG-44").size() == 2, folder.text());
    assertTrue(!of("feed-outside-practice", folder, "carp/KG-33").isEmpty(), folder.text());
  }

  @Test
  void oilThatNobodySaysHowToPutOnIsHeldToWhatVacuumTakes() throws IOException {
    SlippedFolder folder = slip(RECIPE, "  coat       method            hand\n", "");
    for (String plant : List.of("farm-shed", "river-mill")) {
      folder.with("plant/" + plant + ".yaml", "\ncoater: ", "\n# coater: ");
    }
    assertEquals(List.of(), of("feed-outside-practice", folder, RECIPE), folder.text());
    folder.with(
        "practice/bounds.yaml", "oil-under-vacuum: {to: 30 %", "oil-under-vacuum: {to: 3 %");
    says(folder, "feed-outside-practice", "oil on the kernel, however it is put on, is 4.");
  }

  @Test
  void tooLittleStarchToFloat() throws IOException {
    says(
        slip(RECIPE, "habit     sinking", "habit     floating")
            .with(RECIPE, "temperature       40 °C", "temperature       120 °C"),
        "feed-outside-practice",
        "starch in the mix of a floating feed is ");
  }

  @Test
  void aDieTooCoarseForTheFish() throws IOException {
    says(
        slip(RECIPE, "die               4.0 mm", "die               6.0 mm"),
        "die-for-fish",
        "the die is 6 mm, african-catfish of 50 to 250 g takes 3 to 4.5 mm");
  }

  @Test
  void aDieOnTheEdgeIsTaken() throws IOException {
    silent(
        slip(RECIPE, "die               4.0 mm", "die               4.5 mm")
            .with("plant/farm-shed.yaml", "4.0 mm, 5.0 mm", "4.0 mm, 4.5 mm, 5.0 mm"));
  }

  @Test
  void anIngredientAboveItsCap() throws IOException {
    says(
        slip("ingredients/wheat-middlings.yaml", "    max: 30 %", "    max: 20 %"),
        "above-cap",
        "wheat-middlings is at 21.5 %, the cap for african-catfish is 20.0 %");
  }

  @Test
  void aCapOfAnotherSpeciesIsNoCap() throws IOException {
    silent(
        slip(
            "ingredients/wheat-middlings.yaml",
            "  - species: other-fish\n    max: 30 %",
            "  - species: salmonids\n    max: 5 %"));
  }

  @Test
  void marineOilNeedsAnAntioxidant() throws IOException {
    says(
        slip(RECIPE, "  mixed-tocopherols            0.02 %\n", "")
            .with(RECIPE, "soybean-oil                  3.00 %", "soybean-oil   3.02 %"),
        "marine-oil-without-antioxidant",
        "fish-oil is in the feed without an antioxidant");
  }

  @Test
  void rawLegumesNeedHeatAndTheColdExtruderGivesNone() throws IOException {
    SlippedFolder folder = trait("maize", "raw-legume");
    says(folder, "raw-needs-heat", "warning: maize is raw and never heated to 70 °C");
    assertEquals(List.of(), of("raw-needs-heat", folder, "CF-32"), folder.text());
  }

  @Test
  void rawAnimalMatterWithoutHeatIsAnError() throws IOException {
    says(
        trait("fish-meal-65", "raw-animal"),
        "raw-needs-heat",
        "error: fish-meal-65 is raw and never heated to 70 °C");
  }

  @Test
  void aMedicatedIngredientIsAnError() throws IOException {
    says(
        trait("maize", "medicated"),
        "medicated-ingredient",
        "error: maize is medicated, no recipe here may hold it");
  }

  @Test
  void proteinOfTheFarmedSpeciesIsAnErrorForThatSpeciesOnly() throws IOException {
    SlippedFolder folder =
        slip("ingredients/fish-meal-65.yaml", "form: ", "protein: [african-catfish]\nform: ");
    says(folder, "own-species-protein", "fish-meal-65 is protein of african-catfish");
    assertEquals(List.of(), of("own-species-protein", folder, "trout/"), folder.text());
  }

  @Test
  void tracesBesideVitaminsInAKeptPremix() throws IOException {
    says(
        slip("ingredients/inositol.yaml", "traits: [vitamin]", "traits: [vitamin, trace-salt]"),
        "choline-beside-vitamins",
        "lies beside vitamins in VIT-");
  }

  @Test
  void anUnprotectedVitaminInAHeatedMixOnly() throws IOException {
    SlippedFolder folder =
        slip(
            "practice/retention.yaml",
            "vitamin-c-phosphate:\n",
            "vitamin-c-phosphate:\n  unprotected: yes\n");
    assertEquals(List.of(), of("unprotected-vitamin", folder, "CG-36.recipe"), folder.text());
    assertTrue(!of("unprotected-vitamin", folder, "CF-32").isEmpty(), folder.text());
  }

  @Test
  void anIngredientWithoutPriceIsANote() throws IOException {
    says(
        slip("prices/2026-11.yaml", "maize:", "# maize:")
            .with("prices/2026-08.yaml", "maize:", "# maize:"),
        "unpriced",
        "maize has no price on this day and counts as free in ");
  }

  @Test
  void aLimitOfCostWithoutAPriceIsAWarning() throws IOException {
    SlippedFolder folder =
        slip("prices/2026-11.yaml", "maize:", "# maize:")
            .with("prices/2026-08.yaml", "maize:", "# maize:")
            .with(RECIPE, "limits\n", "limits\n  cost  max 9 EUR/kg\n");
    says(folder, "unpriced", ", so limits of cost cannot be judged");
  }

  private void says(SlippedFolder folder, String code, String words) throws IOException {
    String told = folder.text();
    assertTrue(told.contains(words), told);
    assertTrue(!of(code, folder, "").isEmpty(), told);
    folder.findings().forEach(f -> assertTrue(!f.helps().isEmpty(), f.headline()));
  }

  private void silent(SlippedFolder folder) throws IOException {
    assertEquals("", folder.text());
  }

  private static List<String> of(String code, SlippedFolder folder, String path)
      throws IOException {
    return folder.findings().stream()
        .filter(f -> f.code().text().equals(code) && f.span().place().contains(path))
        .map(f -> f.headline())
        .toList();
  }

  private SlippedFolder trait(String ingredient, String trait) throws IOException {
    return slip("ingredients/" + ingredient + ".yaml", "form: ", "traits: [" + trait + "]\nform: ");
  }

  private SlippedFolder slip(String path, String from, String to) throws IOException {
    return new SlippedFolder(copy).with(path, from, to);
  }
}
