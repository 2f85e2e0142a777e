package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.TextEdit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is offered for broken limits, and what is said where nothing can be. */
class FixTest {
  private static final String RECIPE = "catfish/CG-36.recipe";
  private static final String PROFILE = "limits/catfish-grower.limits";

  @TempDir Path copy;

  @Test
  void twoLinesDoWhatOneCannot() throws IOException {
    SlippedFolder folder = narrow().with(RECIPE, "min 34 %     in", "min 34.6 %   in");
    String help = helps(folder, "crude-protein").get(0);
    assertTrue(help.contains(" more soybean-meal-48"), help);
    assertTrue(help.contains(" more fish-meal-65"), help);
    assertTrue(help.contains(" in place of wheat-middlings would meet it"), help);
  }

  @Test
  void whereNothingHelpsItSaysWhatStandsInTheWay() throws IOException {
    SlippedFolder folder = narrow().with(RECIPE, "min 34 %     in", "min 36 %     in");
    String told = folder.text();
    assertTrue(
        told.contains(
            "note: against it stand fish-meal-65 at most 15 % (its within), soybean-meal-48 at most"
                + " 44 % (its within) and wheat-middlings at most 30 % (its within)"),
        told);
    assertTrue(
        told.contains("help: no change of shares within their bounds meets it and keeps all else"),
        told);
  }

  @Test
  void manyLinesDoWhatTwoCannot() throws IOException {
    SlippedFolder folder =
        narrow()
            .with(RECIPE, "14.00 %      within 10 to 15", "14.00 %      within 10 to 14.5")
            .with(RECIPE, "14.00 %      within 10 to 25", "14.00 %      within 12 to 25")
            .with(RECIPE, "41.00 %      within 30 to 44", "41.00 %      within 30 to 43")
            .with(RECIPE, "rest         within 10 to 30", "rest         within 24 to 30")
            .with(RECIPE, "  3.00 %", "  3.00 %       within 2.9 to 3.1 %")
            .with(RECIPE, "  1.00 %", "  1.00 %       within 0.9 to 1.1 %")
            .with(RECIPE, "min 34 %     in", "min 34.3 %   in");
    Finding finding = finding(folder, "crude-protein");
    String help = finding.helps().get(0);
    assertTrue(
        help.matches(
            "[0-9.]+ points more soybean-meal-48, [0-9.]+ more fish-meal-65, .* would meet it"),
        help);
    assertTrue(finding.edits().size() >= 3, () -> finding.edits().toString());
    List<TextEdit> lastFirst = new ArrayList<>(finding.edits());
    lastFirst.sort(Comparator.comparingInt((TextEdit edit) -> edit.span().start()).reversed());
    String text = Files.readString(copy.resolve(RECIPE));
    for (TextEdit edit : lastFirst) {
      text =
          text.substring(0, edit.span().start())
              + edit.replacement()
              + text.substring(edit.span().end());
    }
    Files.writeString(copy.resolve(RECIPE), text);
    String after = folder.text();
    assertFalse(after.contains("error"), after);
  }

  @Test
  void aMovedDryerIsTheFixOfAllThatItMoves() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(RECIPE, "9 %          accept 8 to 10 %", "15 %         accept 14 to 16 %");
    List<String> protein = helps(folder, "crude-protein");
    assertEquals(protein, helps(folder, "moisture"));
    assertTrue(
        protein.get(0).endsWith("in the line dry would meet both broken limits"), protein.get(0));
  }

  @Test
  void aVitaminIsPutRightByOverageShelfLifeOrSupply() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                PROFILE,
                "vitamin-c                    min 30",
                "vitamin-c                    min 123");
    List<String> helps = helps(folder, "vitamin-c");
    assertEquals(3, helps.size(), () -> String.join("\n", helps));
    assertTrue(
        helps.get(0).matches("an overage of [0-9]+ % for stability on VIT-WW would meet it"));
    assertTrue(helps.get(1).matches("a shelf life of [0-9]+ d in place of 60 d would meet it"));
    assertTrue(helps.get(2).contains(" in the supply of VIT-WW would meet it"));
  }

  @Test
  void aTraceMineralIsPutRightByItsSupply() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(
                PROFILE,
                "iodine                       min 1.1",
                "iodine                       min 1.7");
    List<String> helps = helps(folder, "iodine");
    assertEquals(1, helps.size(), () -> String.join("\n", helps));
    assertTrue(helps.get(0).contains(" mg/kg in place of 1.0 mg/kg in the supply of MIN-WW"));
  }

  @Test
  void aPremixOffItsDoseIsBroughtThere() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(RECIPE, "MIN-WW                       0.20", "MIN-WW                       0.10");
    String told = folder.text();
    assertTrue(told.contains("help: MIN-WW at its dose of 0.2 % would meet it"), told);
    assertFalse(told.contains("did you mean 10 mg/kg"), told);
  }

  private SlippedFolder narrow() throws IOException {
    return new SlippedFolder(copy)
        .with(RECIPE, "44.00 %      within 30 to 48", "41.00 %      within 30 to 44")
        .with(RECIPE, "15.00 %      within 10 to 20", "14.00 %      within 10 to 15");
  }

  /** Of the error about a nutrient in the recipe that was changed. */
  private static List<String> helps(SlippedFolder folder, String nutrient) throws IOException {
    return finding(folder, nutrient).helps();
  }

  private static Finding finding(SlippedFolder folder, String nutrient) throws IOException {
    for (Finding finding : folder.findings()) {
      boolean here = finding.span().file().path().equals(RECIPE);
      if (here && finding.headline().contains(nutrient + " is ")) {
        return finding;
      }
    }
    throw new AssertionError("no finding about " + nutrient + "\n" + folder.text());
  }
}
