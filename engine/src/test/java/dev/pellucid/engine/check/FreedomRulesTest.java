package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Steps of shares and lines that may be left out, as rules and helps keep to them. */
class FreedomRulesTest {
  private static final String RECIPE = "catfish/CG-36.recipe";
  private static final String MAIZE = "maize                        14.00 %      within 10 to 25 %";

  @TempDir Path copy;
  private int copies;

  @Test
  void aShareOffItsStepIsToldWithBothNeighbours() throws IOException {
    assertEquals(
        """
        catfish/CG-36.recipe:15:32: warning: maize is at 14 %, which is no whole multiple of its step of 0.3 % [step-not-kept]
           15 |   maize                        14.00 %      within 10 to 25 %  step 0.3 %
              |                                ^^^^^^^
         note: step written at catfish/CG-36.recipe:15:69
         help: write 13.8 % or 14.1 %, or change the step
        """,
        maize(MAIZE + "  step 0.3 %").text());
  }

  @Test
  void ofTheNeighboursOnlyThoseInItsBoundsAreOffered() throws IOException {
    assertEquals(
        List.of("write 15 %, or change the step"),
        helps("step-not-kept", maize(MAIZE.replace("10 to", "13 to") + "  step 5 %")));
  }

  @Test
  void aMultipleInAnotherUnitAndOneThatNoDoubleHoldsAreKept() throws IOException {
    assertEquals(List.of(), maize(MAIZE + "  step 5 g/kg").codes());
    assertEquals(List.of(), maize(MAIZE.replace("14.00", "14.3") + "  step 0.1 %").codes());
  }

  @Test
  void aStepThatFitsNowhereIsToldInPlaceOfTheShare() throws IOException {
    assertEquals(
        List.of("step-fits-nowhere"),
        maize(MAIZE.replace("10 to 25", "13 to 15") + "  step 8 %").codes());
  }

  /** 60 kg on the bench scale of the shed. */
  @Test
  void aStepThatTheScaleDoesNotShowIsTold() throws IOException {
    SlippedFolder folder = maize(MAIZE + "  step 0.002 %");
    assertEquals(List.of("step-too-fine"), folder.codes(), folder.text());
    assertEquals(List.of(), maize(MAIZE + "  step 0.1 %").codes());
  }

  @Test
  void theRestHasNoStepAndIsNotLeftOut() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy).with(RECIPE, "within 10 to 30 %", "within 10 to 30 % or none");
    assertEquals(List.of("rest-is-what-is-left"), folder.codes(), folder.text());
    folder.with(RECIPE, "within 10 to 30 % or none", "within 10 to 30 %  step 1 %");
    assertEquals(List.of("rest-is-what-is-left"), folder.codes(), folder.text());
  }

  @Test
  void aLowEndOfZeroHoldsNoneAlready() throws IOException {
    SlippedFolder folder = maize(MAIZE.replace("10 to", "0 to") + " or none");
    assertEquals(List.of("none-says-nothing"), folder.codes(), folder.text());
  }

  @Test
  void theLeastThatIsWorthTakingMayBeLow() throws IOException {
    assertEquals(List.of("within-far-apart"), maize(MAIZE.replace("10 to", "2 to")).codes());
    SlippedFolder orNone = maize(MAIZE.replace("10 to", "2 to") + " or none");
    assertEquals(List.of(), orNone.codes());
    assertEquals(
        List.of("within-far-apart"), maize(MAIZE.replace("10 to", "0.2 to") + " or none").codes());
  }

  @Test
  void aLineThatMayBeLeftOutNeedsNoRoom() throws IOException {
    SlippedFolder folder =
        maize(MAIZE.replace("10 to", "14 to"))
            .with(RECIPE, "within 30 to 48 %", "within 44 to 48 %")
            .with(RECIPE, "within 10 to 20 %", "within 15 to 20 %")
            .with(RECIPE, "within 10 to 30 %", "within 22 to 30 %");
    assertTrue(folder.codes().contains("within-leaves-no-feed"), folder.text());
    folder.with(RECIPE, "within 14 to 25 %", "within 14 to 25 % or none");
    assertFalse(folder.codes().contains("within-leaves-no-feed"), folder.text());
  }

  @Test
  void aHelpMovesLinesByWholeSteps() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(RECIPE, "within 10 to 20 %", "within 10 to 20 %  step 0.7 %")
            .with(RECIPE, "fish-meal-65                 15.00", "fish-meal-65                 14.7")
            .with(RECIPE, "within 30 to 48 %", "within 30 to 48 %  step 0.4 %")
            .with(RECIPE, MAIZE, MAIZE + "  step 0.5 %")
            .with(RECIPE, "min 34 %     in", "min 35.3 %   in");
    List<String> helps = helps("below-minimum", folder);
    assertTrue(String.join("\n", helps).contains(" would meet it"), folder.text());
    assertSteps(String.join("\n", helps), "fish-meal-65", "0.7");
    assertSteps(String.join("\n", helps), "soybean-meal-48", "0.4");
    assertSteps(String.join("\n", helps), "maize", "0.5");
  }

  @Test
  void whatStandsInTheWayIsToldOfWholeSteps() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(RECIPE, "within 10 to 20 %", "within 10 to 15 %  step 5 %")
            .with(RECIPE, "within 30 to 48 %", "within 30 to 44 %  step 4 %")
            .with(RECIPE, "min 34 %     in", "min 36 %     in");
    assertTrue(
        folder
            .text()
            .contains(
                "against it stand fish-meal-65 at most 15 % (its within), soybean-meal-48 at most"
                    + " 44 % (its within)"),
        folder.text());
  }

  /** A line that was left out is taken up by a person. */
  @Test
  void noHelpTakesUpWhatWasLeftOut() throws IOException {
    SlippedFolder folder =
        new SlippedFolder(copy)
            .with(RECIPE, "\nmix\n", "\nmix\n  wheat-gluten  0.00 %  within 2 to 6 % or none\n")
            .with(RECIPE, "min 34 %     in", "min 35 %     in");
    List<String> helps = helps("below-minimum", folder);
    assertTrue(String.join("\n", helps).contains(" would meet it"), folder.text());
    assertFalse(folder.text().contains("more wheat-gluten"), folder.text());
  }

  private static void assertSteps(String helps, String line, String step) {
    Matcher moved =
        Pattern.compile("([0-9.]+) points (?:more |less )?(?:[a-z0-9-]+ )?" + line).matcher(helps);
    while (moved.find()) {
      BigDecimal points = new BigDecimal(moved.group(1));
      assertEquals(0, points.remainder(new BigDecimal(step)).signum(), helps);
    }
  }

  private SlippedFolder maize(String line) throws IOException {
    return new SlippedFolder(copy.resolve(String.valueOf(copies++))).with(RECIPE, MAIZE, line);
  }

  private static List<String> helps(String code, SlippedFolder folder) throws IOException {
    return folder.findings().stream()
        .filter(finding -> finding.code().text().equals(code))
        .map(Finding::helps)
        .flatMap(List::stream)
        .toList();
  }
}
