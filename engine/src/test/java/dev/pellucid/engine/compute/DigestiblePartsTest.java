package dev.pellucid.engine.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SmallFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A digestible nutrient follows by the own coefficient, else by the one that stands in for it. */
class DigestiblePartsTest {
  private static final String HEAD = "  species  african-catfish\n";

  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void digestibleAminoAcids() throws IOException {
    folder =
        new SmallFolder(root)
            .with(
                "nutrients/9-digestible.yaml",
                digestible("lysine")
                    + digestible("methionine")
                    + digestible("cystine")
                    + """
                    digestible-methionine-cystine:
                      title: Digestible methionine and cystine
                      unit: "%"
                      analysed: no
                      formula: digestible-methionine + digestible-cystine
                      source: handbook
                    """);
  }

  private static String digestible(String part) {
    return "digestible-"
        + part
        + ":\n  title: Digestible "
        + part
        + "\n  unit: \"%\"\n  digestible-of: "
        + part
        + "\n  stands-in: crude-protein\n";
  }

  private void ingredient(String name, String contents, String digestibility) throws IOException {
    folder.with(
        "ingredients/" + name + ".yaml",
        "name: "
            + name
            + "\ngroups: []\nform: meal\ncontents:\n  - source: workshop\n    moisture: 10 %\n    "
            + contents.replace(", ", "\n    ")
            + "\ndigestibility:\n"
            + digestibility);
  }

  private static String row(String coefficients) {
    return "  - {source: workshop, " + coefficients + "}\n";
  }

  /** One figure of a feed of both in equal parts, by a limit that it just keeps and just breaks. */
  private void is(String nutrient, String figure, String above) throws IOException {
    String mix = HEAD + "mix\n  soya  50 %\n  feather  50 %\nlimits\n  ";
    folder.recipe(mix + nutrient + "  min " + figure + " %\n");
    assertEquals(List.of(), folder.codes(), folder.text());
    folder.recipe(mix + nutrient + "  min " + above + " %\n");
    assertEquals(List.of("below-minimum"), folder.codes(), folder.text());
  }

  /** 3 % × 87 % of the one, 2 % × 60 % of the other: 2.61 and 1.2, together 1.905 %. */
  @Test
  void theOwnCoefficientCountsElseThatOfProtein() throws IOException {
    ingredient("soya", "crude-protein: 48 %, lysine: 3 %", row("crude-protein: 87 %"));
    ingredient(
        "feather", "crude-protein: 84 %, lysine: 2 %", row("crude-protein: 75 %, lysine: 60 %"));
    is("digestible-lysine", "1.905", "1.906");
  }

  /** Methionine 0.6 % × 75 %, cystine 4 % × 50 %: 2.45; soya 0.7 and 0.8 % × 87 %: 1.305. */
  @Test
  void aSumFollowsFromEachOfItsParts() throws IOException {
    ingredient(
        "soya",
        "crude-protein: 48 %, methionine: 0.7 %, cystine: 0.8 %",
        row("crude-protein: 87 %"));
    ingredient(
        "feather",
        "crude-protein: 84 %, methionine: 0.6 %, cystine: 4 %",
        row("crude-protein: 75 %, cystine: 50 %"));
    is("digestible-methionine-cystine", "1.8775", "1.8785");
  }

  /** An own one for any species counts before one of protein for just this one. */
  @Test
  void theOwnOneForAnyoneGoesBeforeTheOtherForTheSpecies() throws IOException {
    ingredient(
        "feather",
        "crude-protein: 84 %, lysine: 2 %",
        row("species: african-catfish, crude-protein: 70 %") + row("lysine: 60 %"));
    ingredient("soya", "crude-protein: none", row("crude-protein: 90 %"));
    is("digestible-lysine", "0.6", "0.601");
  }

  @Test
  void explainSaysWhatStandsIn() throws IOException {
    ingredient("soya", "crude-protein: 48 %, lysine: 3 %", row("crude-protein: 87 %"));
    ingredient(
        "feather", "crude-protein: 84 %, lysine: 2 %", row("crude-protein: 75 %, lysine: 60 %"));
    folder.recipe(HEAD + "mix\n  soya  50 %\n  feather  50 %\n");
    String told =
        OwnFolder.explain(root, LocalDate.of(2026, 11, 25), "A-1", "digestible-lysine")
            .text()
            .replaceAll("\\s+", " ");
    assertTrue(
        told.contains(
            "The coefficient of crude-protein stands in for that of lysine, which is not told:"
                + " soya."),
        told);
    assertTrue(told.contains("workshop (common practice), that of"), told);
  }

  @Test
  void noMoreIsDigestedThanThereIs() throws IOException {
    ingredient(
        "soya", "crude-protein: 48 %, lysine: 3 %, digestible-lysine: 3.1 %", row("lysine: 90 %"));
    folder.recipe(HEAD + "mix\n  soya  100 %\n");
    assertTrue(
        folder.text().contains("digestible-lysine is 3.1 %, more than the 3 % of lysine"),
        folder.text());
  }

  @Test
  void aStandInIsForADigestiblePart() throws IOException {
    folder.with(
        "nutrients/8-slip.yaml",
        "odd:\n  title: Odd\n  unit: \"%\"\n  stability: stable\n  stands-in: crude-protein\n");
    assertEquals(List.of("data-missing-key"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("a nutrient needs the key digestible-of"), folder.text());
  }
}
