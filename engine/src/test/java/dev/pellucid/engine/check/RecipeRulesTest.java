package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slips in what a recipe meets, how far its lines may move, and what its premixes supply. */
class RecipeRulesTest {
  private static final String RECIPE = "catfish/CG-36.recipe";
  private static final String VITAMINS = "premixes/VIT-WW.premix";
  private static final String MINERALS = "premixes/MIN-WW.premix";

  @TempDir Path copy = Path.of("");

  @Test
  void fishOutsideTheProfile() throws IOException {
    assertEquals(
        """
        catfish/CG-36.recipe:5:13: warning: this feed is for fish of 50 to 500 g, catfish-grower is for 20 to 250 g [fish-outside-profile]
            5 |   fish      50 to 500 g
              |             ^^^^^^^^^^^
         note: size written at limits/catfish-grower.limits:4:13
         note: for the other fish nobody has written what the feed must hold
         help: narrow fish to 50 to 250 g, or meet a profile for the rest too
        """,
        slip(RECIPE, "50 to 250 g", "50 to 500 g").text());
  }

  @Test
  void twoProfilesCoverTogether() throws IOException {
    SlippedFolder folder =
        slip(RECIPE, "fish      50 to 250 g", "fish      50 g to 500 g")
            .with(RECIPE, "50 g to 500 g", "50 to 500 g")
            .with(RECIPE, "  meets     house-practice", "  meets     catfish-finisher");
    assertEquals(List.of(), of("fish-outside-profile", folder));
    folder.with(RECIPE, "50 to 500 g", "50 to 2000 g");
    assertEquals(
        List.of(
            "this feed is for fish of 50 to 2000 g, catfish-grower and catfish-finisher are for"
                + " 20 to 250 g and 250 to 1500 g"),
        of("fish-outside-profile", folder));
  }

  @Test
  void fishOfTheWholeProfileAreCoveredAndOneGramMoreIsNot() throws IOException {
    SlippedFolder folder = slip(RECIPE, "50 to 250 g", "20 to 250 g");
    assertEquals(List.of(), of("fish-outside-profile", folder));
    folder.with(RECIPE, "20 to 250 g", "19 to 250 g");
    assertEquals(1, of("fish-outside-profile", folder).size());
  }

  @Test
  void aProfileOfAnotherSpeciesIsNamedAndItsSizesAreNot() throws IOException {
    SlippedFolder folder = slip(RECIPE, "  meets     catfish-grower", "  meets     trout-starter");
    assertEquals(
        List.of("trout-starter is for rainbow-trout, this feed is for african-catfish"),
        of("species-outside-profile", folder));
    assertEquals(List.of(), of("fish-outside-profile", folder));
  }

  @Test
  void floorsAboveTheWholeAreSaidOnceAndInPlaceOfTheLines() throws IOException {
    SlippedFolder folder =
        slip(RECIPE, "within 30 to 48 %", "within 44 to 48 %")
            .with(RECIPE, "within 10 to 20 %", "within 15 to 20 %")
            .with(RECIPE, "within 10 to 30 %", "within 28 to 30 %");
    assertEquals(List.of("within-leaves-no-feed"), folder.codes(), folder.text());
    assertTrue(
        folder
            .text()
            .contains("14:52: error: the lines add up to at least 102.8 %, a feed is 100.0 %"),
        folder.text());
    folder.with(RECIPE, "within 15 to 20 %", "within 5 to 20 %");
    assertEquals(List.of("outside-within"), folder.codes(), folder.text());
  }

  @Test
  void ceilingsBelowTheWhole() throws IOException {
    SlippedFolder folder =
        slip(RECIPE, "within 30 to 48 %", "within 30 to 40 %")
            .with(RECIPE, "within 10 to 25 %", "within 10 to 15 %")
            .with(RECIPE, "within 10 to 30 %", "within 10 to 18 %");
    assertEquals(List.of("within-leaves-no-feed"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("the lines add up to at most 98.8 %"), folder.text());
  }

  @Test
  void aPremixAtAnotherShareThanItsDose() throws IOException {
    SlippedFolder folder =
        slip(RECIPE, "VIT-WW                       0.50 %", "VIT-WW                       0.45 %");
    assertEquals(
        """
        catfish/CG-36.recipe:20:32: warning: VIT-WW is at 0.45 %, its dose is 0.5 % [premix-off-dose]
           20 |   VIT-WW                       0.45 %
              |                                ^^^^^^
         note: premix written at premixes/VIT-WW.premix:3:8
         note: it supplies vitamin-a 6750 IU/kg instead of 7500 IU/kg, vitamin-d3 1350 IU/kg instead of 1500 IU/kg, vitamin-e 144 mg/kg instead of 160 mg/kg and so on
         help: bring it to 0.5 %, or make a premix with dose 4.5 g/kg
        """,
        folder.text());
  }

  @Test
  void twoPremixesThatSupplyTheSame() throws IOException {
    SlippedFolder folder =
        slip(MINERALS, "supply\n", "supply\n  vitamin-c  30 mg/kg from ascorbyl-phosphate-35\n");
    String said =
        "VIT-WW and MIN-WW both supply vitamin-c: 120 mg/kg and 30 mg/kg, together 150 mg/kg";
    assertEquals(List.of(said), of("supplied-by-two-premixes", folder, RECIPE));
    assertEquals(List.of(), of("supplied-by-two-premixes", folder, "trout/"));
  }

  @Test
  void manyNutrientsSuppliedTwiceAreOneFinding() throws IOException {
    SlippedFolder folder =
        slip(
            RECIPE,
            "  MIN-WW                       0.20 %\n",
            "  MIN-WW                       0.20 %\n  MIN-TS                       0.20 %\n");
    assertEquals(
        List.of(
            "MIN-WW and MIN-TS both supply zinc and 3 more: 35 mg/kg and 40 mg/kg, together"
                + " 75 mg/kg"),
        of("supplied-by-two-premixes", folder));
  }

  @Test
  void aZeroTooManyInAPremixIsSaidOnceForAllRecipes() throws IOException {
    SlippedFolder folder =
        slip(VITAMINS, "vitamin-e                    160 mg/kg", "vitamin-e   1600 mg/kg");
    assertEquals(
        List.of(
            "VIT-WW: vitamin-e 1600 mg/kg is 7.3 times the 220 mg/kg of VIT-SH, and no like premix"
                + " comes nearer"),
        of("supply-ten-times-off", folder));
    assertEquals(List.of(), of("tenfold-slip", folder));
    assertTrue(folder.text().contains("help: did you mean 160 mg/kg?"), folder.text());
  }

  @Test
  void aZeroTooManyBesideNoLikePremixIsSaidOnceForAllRecipes() throws IOException {
    SlippedFolder folder =
        slip(VITAMINS, "vitamin-e                    160 mg/kg", "vitamin-e   1000 mg/kg");
    assertEquals(
        List.of("VIT-WW supplies vitamin-e 1000 mg/kg, 10 times the minimum of 100 mg/kg"),
        of("tenfold-slip", folder));
    assertTrue(folder.text().contains("note: so it is beside 5 other minima"), folder.text());
    assertTrue(
        folder.findings().stream()
            .filter(f -> f.code().text().equals("tenfold-slip"))
            .allMatch(f -> f.span().place().startsWith(VITAMINS + ":9:")));
  }

  @Test
  void fiveTimesIsNoSlipAndAHigherMinimumSaysThatMoreIsMeant() throws IOException {
    SlippedFolder folder =
        slip(VITAMINS, "vitamin-e                    160 mg/kg", "vitamin-e   250 mg/kg");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(VITAMINS, "vitamin-e   250 mg/kg", "vitamin-e   251 mg/kg");
    assertTrue(!of("tenfold-slip", folder).isEmpty());
    for (String size : List.of("starter", "grower", "finisher")) {
      folder.with(
          "limits/catfish-" + size + ".limits", "vitamin-e   ", "vitamin-e  min 60 mg/kg\n  # ");
    }
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void aZeroTooFewIsToldAtTheSupplyAndTheBrokenMinimaTogether() throws IOException {
    SlippedFolder folder =
        slip(VITAMINS, "vitamin-c                    120 mg/kg", "vitamin-c   12 mg/kg");
    String told = folder.text();
    assertEquals(List.of("supply-ten-times-off", "broken-because-of"), folder.codes(), told);
    assertTrue(
        told.startsWith("premixes/VIT-WW.premix:11:15: warning: VIT-WW: vitamin-c 12 "), told);
    assertTrue(told.contains("note: the cause at premixes/VIT-WW.premix:11:15"), told);
  }

  @Test
  void theWeightOfASaltInPlaceOfItsElement() throws IOException {
    SlippedFolder folder =
        slip(MINERALS, "zinc                         35 mg/kg", "zinc  58.8 mg/kg");
    assertTrue(
        of("salt-for-element", folder)
            .contains("zinc 58.8 mg/kg is just what 20 mg/kg of it weighs as zinc-sulphate"),
        folder.text());
    folder.with(MINERALS, "zinc  58.8 mg/kg", "zinc  57 mg/kg");
    assertEquals(List.of(), of("salt-for-element", folder), folder.text());
  }

  @Test
  void thePurityOfASaltInPlaceOfWhatItHolds() throws IOException {
    SlippedFolder folder = slip("ingredients/zinc-sulphate.yaml", "zinc: 34.0 %", "zinc: 98.0 %");
    assertEquals(
        List.of("zinc-sulphate tells 98.0 % of zinc, no salt or oxide holds more than 81 %"),
        of("salt-for-element", folder),
        folder.text());
  }

  @Test
  void saltAtTheFigureOfItsSodiumIsNamedWithTheBrokenMinimum() throws IOException {
    SlippedFolder folder = slip(RECIPE, "limits\n", "limits\n  sodium  min 0.30 %\n");
    String told = folder.text();
    assertEquals(List.of("below-minimum"), folder.codes(), told);
    assertTrue(
        told.contains(
            "note: salt is at 0.3 %, the figure of the limit, and only 39 % of it is sodium"),
        told);
    folder.with(RECIPE, "sodium  min 0.30 %", "sodium  min 0.31 %");
    assertTrue(!folder.text().contains("the figure of the limit"), folder.text());
  }

  private SlippedFolder slip(String path, String from, String to) throws IOException {
    return new SlippedFolder(copy).with(path, from, to);
  }

  private static List<String> of(String code, SlippedFolder folder) throws IOException {
    return of(code, folder, "");
  }

  private static List<String> of(String code, SlippedFolder folder, String path)
      throws IOException {
    return folder.findings().stream()
        .filter(f -> f.code().text().equals(code) && f.span().place().contains(path))
        .map(f -> f.headline())
        .toList();
  }
}
