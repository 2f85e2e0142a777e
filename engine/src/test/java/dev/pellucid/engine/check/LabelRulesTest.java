package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Labels of the example folder, true until a word is changed. */
class LabelRulesTest {
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final String TROUT = "trout/TG-44.recipe";
  private static final String PROTEIN = "crude-protein                35.5 %";
  private static final String VITAMIN_C = "vitamin-c                    125 mg/kg";

  @TempDir Path copy = Path.of("");

  @Test
  void aDeclarationBeyondItsToleranceIsToldWhole() throws IOException {
    assertEquals(
        """
        catfish/CG-36.recipe:57:32: error: crude-protein is 36.2 %, the label says 39.5 % and its tolerance ends at 36.5 % [label-beyond-tolerance]
           57 |   crude-protein                39.5 %
              |                                ^^^^^^
         note: tolerance written at label/eu-767-2009.yaml:15:5
         note: a tolerance is for sampling and the laboratory, not for formulating
         help: write 36.2 % on the label, or change the recipe
        """,
        slip(GROWER, PROTEIN, "crude-protein                39.5 %").text());
  }

  @Test
  void bothSidesOfADeclarationCountAndEachHasItsOwnTolerance() throws IOException {
    SlippedFolder folder = slip(GROWER, PROTEIN, "crude-protein                33 %");
    assertEquals(List.of("label-beyond-tolerance"), folder.codes(), folder.text());
    folder.with(GROWER, "crude-protein                33 %", "crude-protein                34 %");
    assertEquals(List.of("label-spends-tolerance"), folder.codes(), folder.text());
    folder.with(GROWER, "crude-protein                34 %", "crude-protein                36.5 %");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(GROWER, "crude-protein                36.5 %", "crude-protein                37 %");
    assertEquals(List.of("label-spends-tolerance"), folder.codes(), folder.text());
  }

  @Test
  void aGuaranteeIsOneSidedAndHasNoRounding() throws IOException {
    SlippedFolder folder = slip(GROWER, PROTEIN, "crude-protein                min 30 %");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(GROWER, "min 30 %", "min 36.5 %");
    assertEquals(List.of("label-spends-tolerance"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("the label says at least 36.5 %"), folder.text());
    assertTrue(folder.text().contains("help: write min 36.2 % on the label"), folder.text());
    folder.with(GROWER, "min 36.5 %", "max 36.5 %");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(GROWER, "max 36.5 %", "max 30 %");
    assertEquals(List.of("label-beyond-tolerance"), folder.codes(), folder.text());
  }

  @Test
  void aVitaminIsJudgedAtTheEndOfItsShelfLife() throws IOException {
    SlippedFolder folder = slip(TROUT, VITAMIN_C, "vitamin-c                    165 mg/kg");
    assertEquals(List.of("label-beyond-tolerance"), folder.codes(), folder.text());
    assertTrue(
        folder.text().contains("vitamin-c is 127.0 mg/kg at the end of its shelf life"),
        folder.text());
    folder.with(TROUT, "shelf-life        120 d", "shelf-life        1 d");
    assertFalse(folder.codes().contains("label-beyond-tolerance"), folder.text());
  }

  @Test
  void whatIsPutInSoThatItLastsSpendsNothing() throws IOException {
    // Fresh it lies well above the label, at the end just on it.
    SlippedFolder folder = new SlippedFolder(copy);
    assertEquals(List.of(), folder.codes());
    folder.with(TROUT, VITAMIN_C, "vitamin-c                    100 mg/kg");
    assertEquals(List.of("label-spends-tolerance"), folder.codes(), folder.text());
  }

  @Test
  void moistureBelowTheLabelHasNoLimit() throws IOException {
    SlippedFolder folder = slip(GROWER, "label\n", "label\n  moisture                     13 %\n");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(GROWER, "moisture                     13 %", "moisture                     6 %");
    assertEquals(List.of("label-beyond-tolerance"), folder.codes(), folder.text());
  }

  @Test
  void whatMustBeDeclaredIsAskedForByName() throws IOException {
    String told = slip(GROWER, "  phosphorus                   1.1 %\n", "").text();
    assertTrue(
        told.startsWith(
            "catfish/CG-36.recipe:56:1: error: the label does not declare phosphorus"
                + " [constituent-not-declared]"),
        told);
    assertTrue(told.contains("help: add the line: phosphorus  1.1 %"), told);
  }

  @Test
  void aRecipeWithoutALabelIsAskedForOneAlone() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    String recipe = java.nio.file.Files.readString(copy.resolve(GROWER));
    String label = recipe.substring(recipe.indexOf("\nlabel\n"));
    assertEquals(List.of("section-lost"), folder.with(GROWER, label, "\n").codes());
  }

  @Test
  void aFigureThatNoIngredientTellsCannotStandOnTheLabel() throws IOException {
    SlippedFolder folder = slip(GROWER, "label\n", "label\n  sugar                        4 %\n");
    assertEquals(List.of("label-cannot-be-told"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("note: not given by soybean-meal-48, "), folder.text());
  }

  @Test
  void aLabelMayNotSayMoreThanTheLawAllows() throws IOException {
    SlippedFolder folder =
        slip(GROWER, "label\n", "label\n  zinc                         max 170 mg/kg\n");
    assertEquals(List.of("label-above-maximum"), folder.codes(), folder.text());
    folder.with(GROWER, "max 170 mg/kg", "max 150 mg/kg");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void aPremixWithTooMuchVitaminD3ForTheSpeciesFails() throws IOException {
    SlippedFolder folder =
        slip(
            GROWER,
            "  VIT-WW                       0.50 %",
            "  VIT-TR                       0.50 %");
    String told = folder.text();
    assertTrue(told.contains("error: vitamin-d3 is "), told);
    assertTrue(told.contains("the legal maximum (EU) is 3000"), told);
    assertTrue(told.contains("law/eu-other-fish.limits"), told);
    // The same premix is within the maximum of salmonids.
    assertFalse(told.contains("trout/"), told);
  }

  @Test
  void otherRulesJudgeTheSameLabelInAnotherWay() throws IOException {
    SlippedFolder folder = slip("pellucid.yaml", "label: eu-767-2009", "label: us-variations");
    assertTrue(
        folder.findings().stream()
            .noneMatch(finding -> finding.code().text().equals("constituent-not-declared")),
        folder.text());
    folder.with(GROWER, PROTEIN, "crude-protein                min 37.2 %");
    // 20 / 37.2 + 2 % of 37.2 is 0.944 points, and the feed holds 36.2.
    assertTrue(folder.text().contains("its tolerance ends at 36.3 %"), folder.text());
  }

  @Test
  void anUnknownNutrientAndAWrongUnitAreNamed() throws IOException {
    SlippedFolder folder = slip(GROWER, PROTEIN, "crude-protien                35.5 %");
    assertEquals(List.of("unknown-nutrient"), folder.codes(), folder.text());
    folder.with(
        GROWER, "crude-protien                35.5 %", "crude-protein                35.5 MJ/kg");
    assertTrue(folder.codes().contains("unit-of-another-kind"), folder.text());
  }

  @Test
  void anAdditiveThatDoesNotSaySoIsNamedOnceARecipe() throws IOException {
    String additive =
        """
        additive:
          functional-group: Vitamins
          number: 3a672a
          nutrient: vitamin-a
          source: eu-additive-numbers
        """;
    SlippedFolder folder = slip("ingredients/retinyl-acetate-500.yaml", additive, "");
    assertEquals(17, folder.codes().stream().filter("additive-not-told"::equals).count());
    assertEquals(17, folder.codes().size(), folder.text());
  }

  @Test
  void aNameForTheBagIsAskedOncePerIngredient() throws IOException {
    SlippedFolder folder =
        slip("ingredients/fish-meal-65.yaml", "label-name: Fish meal\n", "")
            .with("ingredients/zinc-sulphate.yaml", "label-name: Zinc sulphate, monohydrate\n", "");
    assertEquals(
        List.of("label-name-missing", "label-name-missing"), folder.codes(), folder.text());
    assertTrue(
        folder
            .text()
            .startsWith(
                "ingredients/fish-meal-65.yaml:3:7: warning: fish-meal-65 has no label-name, so the"
                    + " bag calls it \"Fish meal, 65 % protein\" [label-name-missing]\n"),
        folder.text());
    assertTrue(folder.text().contains("what the act that allows the additive calls it"));
    // No recipe uses ascorbic acid.
    folder
        .with(
            "ingredients/fish-meal-65.yaml",
            "name: Fish meal, 65",
            "label-name: Fish meal\nname: Fish meal, 65")
        .with("ingredients/zinc-sulphate.yaml", "form: ", "label-name: Zinc sulphate\nform: ")
        .with("ingredients/ascorbic-acid.yaml", "label-name: Ascorbic acid\n", "");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void whetherItIsGeneticallyModifiedIsAskedOfWhatCommonlyIs() throws IOException {
    SlippedFolder folder =
        slip("ingredients/soybean-meal-48.yaml", "genetically-modified: yes\n", "");
    assertEquals(List.of("genetically-modified-not-told"), folder.codes(), folder.text());
    folder.with(
        "ingredients/soybean-meal-48.yaml", "form: ", "genetically-modified: not-known\nform: ");
    assertEquals(List.of("genetically-modified-not-told"), folder.codes(), folder.text());
    folder.with("ingredients/soybean-meal-48.yaml", "not-known", "no");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with("ingredients/wheat.yaml", "form: ", "genetically-modified: yes\nform: ");
    assertEquals(List.of("genetically-modified-without-words"), folder.codes(), folder.text());
  }

  @Test
  void aLotThatSaysMoreThanItsIngredientIsNamed() throws IOException {
    SlippedFolder folder = SlippedFolder.withRecords(copy);
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.with(
        "lots/2026-11.yaml",
        "    ingredient: maize\n",
        "    ingredient: maize\n    genetically-modified: yes\n");
    assertEquals(List.of("lot-genetically-modified"), folder.codes(), folder.text());
    folder.with("ingredients/maize.yaml", "genetically-modified: no", "genetically-modified: yes");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void theMakerIsAskedOnceOfTheFolder() throws IOException {
    String block =
        """
        maker:
          name: Sallowmere Mill
          address: 3 Weir Lane, Sallowmere
          approval-number: XX-0417-F
        """;
    SlippedFolder folder = slip("pellucid.yaml", block, "");
    assertEquals(List.of("maker-not-told"), folder.codes(), folder.text());
    folder.with("pellucid.yaml", "label: eu-767-2009\n", "label: eu-767-2009\n" + block);
    folder.with("pellucid.yaml", "  approval-number: XX-0417-F\n", "");
    assertEquals(List.of("maker-not-told"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("the maker has no approval-number"), folder.text());
    folder.with("pellucid.yaml", "Sallowmere\n", "Sallowmere\n  approval-number: none\n");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void howTheFeedIsUsedIsAskedOfTheSpecies() throws IOException {
    String path = "species/whiteleg-shrimp.yaml";
    SlippedFolder folder = new SlippedFolder(copy);
    String text = java.nio.file.Files.readString(copy.resolve(path));
    folder.with(path, text.substring(text.indexOf("feeding:")), "");
    assertEquals(List.of("feeding-not-told"), folder.codes(), folder.text());
  }

  @Test
  void anAdditiveThatMustBeToldNeedsItsNumber() throws IOException {
    SlippedFolder folder = slip("ingredients/retinyl-acetate-500.yaml", "  number: 3a672a\n", "");
    assertEquals(List.of("additive-number-missing"), folder.codes(), folder.text());
    // Biotin has no maximum for any animal.
    folder
        .with(
            "ingredients/retinyl-acetate-500.yaml",
            "  nutrient: vitamin-a",
            "  number: 3a672a\n  nutrient: vitamin-a")
        .with("ingredients/biotin-2.yaml", "  number: 3a880\n", "");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void aDraftIsAskedNothingForItsBag() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                "ingredients/insect-meal-52.yaml",
                "label-name: Processed animal protein, insects (Hermetia illucens)\n",
                "");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void aWordOfALabelRowMustBeAGroupOrAnIngredient() throws IOException {
    SlippedFolder folder =
        slip(
            "label/eu-767-2009.yaml",
            "holds: [fish-meals, marine-meals]",
            "holds: [fish-meal, marine-meals]");
    assertEquals(List.of("data-unknown-ingredient"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("fish-meals"), folder.text());
  }

  private SlippedFolder slip(String path, String from, String to) throws IOException {
    return new SlippedFolder(copy).with(path, from, to);
  }
}
