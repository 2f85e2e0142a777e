package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Limits that CG-36 of the example folder breaks once a word of it is changed. */
class NutrientRulesTest {
  private static final String RECIPE = "catfish/CG-36.recipe";

  @TempDir Path copy = Path.of("");

  @Test
  void aBrokenMinimumIsToldWhole() throws IOException {
    String told = slip(RECIPE, "min 34 %     in", "min 36 %     in").text();
    assertEquals(
        """
        catfish/CG-36.recipe:14:3: error: crude-protein is 34.8 % in 95 % of batches, the minimum is 36.0 % [below-minimum]
           14 |   soybean-meal-48              44.00 %      within 30 to 48 %
              |   ^^^^^^^^^^^^^^^ supplies 21.4 of the 35.8 points
         note: limit written at catfish/CG-36.recipe:34:3
         note: most comes from soybean-meal-48 (60 %), fish-meal-65 (27 %), wheat-middlings (9.5 %)
         note: on target and fresh it is 36.2 % on average
         help: 3.8 points more soybean-meal-48 in place of wheat-middlings would meet it; then write crude-protein 37.5 % and crude-fibre 3.5 % on the label
        """,
        told);
  }

  @Test
  void theChangeThatIsHelpedWithMendsAndATenthLessDoesNot() throws IOException {
    SlippedFolder folder = slip(RECIPE, "min 34 %     in", "min 36 %     in");
    Matcher help =
        Pattern.compile("help: ([0-9.]+) points more soybean-meal-48").matcher(folder.text());
    assertTrue(help.find());
    double points = Double.parseDouble(help.group(1));
    folder.with(RECIPE, "44.00 %      within", share(44 + points - 0.1));
    assertTrue(folder.codes().contains("below-minimum"));
    folder.with(RECIPE, share(44 + points - 0.1), share(44 + points));
    assertFalse(folder.codes().contains("below-minimum"));
  }

  @Test
  void noChangeOutsideTheBoundsOfALineIsOffered() throws IOException {
    SlippedFolder folder =
        slip(RECIPE, "min 34 %     in", "min 36 %     in")
            .with(RECIPE, "within 10 to 20 %", "within 10 to 16 %");
    assertFalse(folder.text().contains("more fish-meal-65"), folder.text());
  }

  @Test
  void aFigureOnItsBoundKeepsItAndTheNextDigitDoesNot() throws IOException {
    SlippedFolder folder =
        slip(RECIPE, "crude-fibre                  max 6 %", "inclusion salt  max 0.3 %");
    assertEquals(List.of(), folder.codes());
    folder.with(RECIPE, "inclusion salt  max 0.3 %", "inclusion salt  max 0.29999 %");
    String told = folder.text();
    assertTrue(told.contains("is 0.30000 %, the maximum is 0.29999 %"), told);
  }

  @Test
  void aPremixIsNamedWithTheIngredientToBlame() throws IOException {
    String told = slip("law/eu-other-fish.limits", "max 150 mg/kg", "max 90 mg/kg").text();
    assertTrue(
        told.contains(
            "zinc is 96.2 mg/kg at 12 % moisture, the legal maximum (EU) is 90.0 mg/kg"
                + " [above-maximum]"),
        told);
    assertTrue(told.contains("^^^^^^ with zinc-sulphate supplies 37.6 of the 96.2 mg/kg"), told);
    assertTrue(told.contains("help: law cannot be waived: change the recipe"), told);
  }

  @Test
  void aContentThatIsNotToldIsBlamedAsSuch() throws IOException {
    String told = slip("ingredients/maize.yaml", "    zinc:", "    # zinc:").text();
    assertTrue(
        told.contains(
            "error: maize does not give its zinc, so the maximum of zinc cannot be judged"),
        told);
    assertTrue(told.contains("note: with the most that it can be, zinc is "), told);
    assertTrue(told.contains("help: write in ingredients/maize.yaml how much it holds"), told);
  }

  @Test
  void manyContentsThatAreNotToldAreOneFinding() throws IOException {
    SlippedFolder folder =
        slip("ingredients/maize.yaml", "    zinc:", "    # zinc:")
            .with("ingredients/maize.yaml", "    copper:", "    # copper:")
            .with("ingredients/maize.yaml", "    iron:", "    # iron:");
    String told = folder.text();
    assertTrue(
        told.contains("maize does not give its copper, iron and zinc, so 3 maxima cannot"), told);
    assertFalse(folder.codes().contains("above-maximum"), told);
  }

  @Test
  void overageThatAloneBreaksAMaximumIsSaidOnce() throws IOException {
    SlippedFolder folder =
        slip(RECIPE, "MIN-WW                       10 %", "MIN-WW                       90 %")
            .with(RECIPE, "limits\n", "limits\n  zinc  max 110 mg/kg\n");
    assertEquals(
        1, folder.codes().stream().filter("overage-breaks-maximum"::equals).count(), folder.text());
    assertFalse(folder.codes().contains("above-maximum"), folder.text());
    String told = folder.text();
    assertTrue(told.contains("with its handling overage zinc is "), told);
    assertTrue(told.contains("note: without overage it is "), told);
  }

  @Test
  void overageIsNotBlamedForAMaximumThatIsBrokenWithoutIt() throws IOException {
    SlippedFolder folder = slip(RECIPE, "limits\n", "limits\n  zinc  max 80 mg/kg\n");
    assertEquals(List.of("above-maximum"), folder.codes(), folder.text());
  }

  @Test
  void confidenceWithoutASpreadIsAWarning() throws IOException {
    SlippedFolder folder = slip("practice/spreads.yaml", "crude-protein:", "vitamin-c:");
    assertTrue(folder.codes().contains("unknown-spread"), folder.text());
    assertTrue(
        folder.text().contains("note: retinyl-acetate-500 gives its content without"),
        folder.text());
  }

  @Test
  void moistureIsBlamedOnTheDryer() throws IOException {
    String told = slip(RECIPE, "9 %          accept 8 to 10 %", "14 %").text();
    assertTrue(
        told.contains(
            "catfish/CG-36.recipe:48:3: error: moisture is 13.5 %, the maximum is 12.0 %"),
        told);
    assertTrue(
        told.contains("help: 12.2 % moisture in place of 14 % in the line dry would meet both"),
        told);
  }

  @Test
  void eachObstacleHasItsOwnCode() throws IOException {
    String target = "dry        moisture          9 %          accept 8 to 10 %";
    SlippedFolder folder = slip(RECIPE, target, "dry        moisture          30 %");
    assertTrue(
        folder.text().contains("dry is to reach 30 % moisture, the feed before it has 23.9"));
    assertEquals(List.of("dries-upwards"), folder.codes());
    folder.with(RECIPE, "  dry        moisture          30 %\n", "");
    assertEquals(List.of("moisture-unknown"), folder.codes());
  }

  private SlippedFolder slip(String path, String from, String to) throws IOException {
    return new SlippedFolder(copy).with(path, from, to);
  }

  private static String share(double share) {
    return String.format(java.util.Locale.ROOT, "%.2f %%      within", share);
  }
}
