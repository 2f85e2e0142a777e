package dev.pellucid.engine.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Inlined;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.quantity.Figures;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;

class BatchSheetTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final String STAMP = "DRAFT, NOT TO BE MADE";

  @Test
  void coldExtrudedAsText() {
    Approvals.verify(BatchSheetText.of(EXAMPLE.plan(GROWER)));
  }

  @Test
  void vacuumCoatedAsText() {
    Approvals.verify(BatchSheetText.of(EXAMPLE.plan("trout/TG-44.recipe")));
  }

  @Test
  void premixAsText() {
    Approvals.verify(BatchSheetText.of(premix("VIT-WW")));
  }

  @Test
  void coldExtrudedAsHtml() throws IOException {
    Approvals.verify(Inlined.byName(BatchSheetHtml.of(EXAMPLE.plan(GROWER))));
  }

  @Test
  void aFeedThatNoRowConcernsHasNoWordOfFlushing() {
    for (String path : EXAMPLE.recipes()) {
      String text = BatchSheetText.of(EXAMPLE.plan(path));
      boolean mill = !text.contains("Farm shed");
      assertEquals(mill, text.contains("\nMedicated feed "), path);
      assertEquals(path.startsWith("catfish/"), text.contains("! Never right after"), path);
    }
    assertFalse(BatchSheetText.of(premix("MIN-WW")).contains("Right after a batch of copper"));
    assertTrue(BatchSheetText.of(premix("VIT-WW")).contains("Right after a batch"));
  }

  @Test
  void noLineOfATextIsWiderThanAPage() {
    List<BatchPlan> plans = new ArrayList<>(EXAMPLE.premixes().values());
    String title = "A very long title that goes on and on ".repeat(8).strip();
    for (String path : EXAMPLE.recipes()) {
      for (String size : new String[] {"0.5 kg weighed", "60 kg finished", "20 t weighed"}) {
        plans.add(
            EXAMPLE.plan(
                path,
                ExamplePlans.CLEAN,
                text ->
                    text.replaceAll("batch +\\S+ \\S+ \\S+", "batch " + size)
                        .replaceFirst("\"[^\"]*\"", '"' + title + '"')));
      }
    }
    for (BatchPlan plan : plans) {
      BatchSheetText.of(plan)
          .lines()
          .forEach(l -> assertTrue(l.codePointCount(0, l.length()) <= 100, plan.code() + l));
    }
  }

  @Test
  void aWaiverShowsItsLastDayInTheHeadAndBesideTheLimit() {
    BatchPlan plan =
        EXAMPLE.plan(
            GROWER,
            ExamplePlans.CLEAN,
            text ->
                text.replace(
                    "process\n",
                    "waivers\n  crude-fibre max 7 % until 2027-03-31 by \"quality manager\""
                        + " because \"bran season\"\n\nprocess\n"));
    String text = BatchSheetText.of(plan);
    assertTrue(text.contains("Not to be made after        2027-03-31"), text);
    String html = BatchSheetHtml.of(plan);
    assertTrue(html.contains("waived until 2027-03-31"));
    assertTrue(html.contains("max 7 % in place of max 6 %, by quality manager, because: bran"));
    assertFalse(BatchSheetText.of(EXAMPLE.plan(GROWER)).contains("Not to be made after"));
  }

  @Test
  void aNarrowMissIsShownWithEnoughDigits() {
    assertEquals("34.998", Figures.plainBeside(34.998, 35));
    assertEquals("35.00004", Figures.plainBeside(35.00004, 35));
    assertEquals("35", Figures.plainBeside(35, 35));
    assertEquals("12345", Figures.plainBeside(12345, 12345.6));
    assertEquals("36.22", Figures.plainBeside(36.219, 34));
    assertEquals("0", Figures.plainBeside(0, 0));
  }

  @Test
  void eachCautionStandsOnce() {
    for (String path : EXAMPLE.recipes()) {
      String text = BatchSheetText.of(EXAMPLE.plan(path)).replaceAll("\\s+", " ");
      for (String words : new String[] {"Vitamin dust harms when breathed", "Smell the oil"}) {
        assertTrue(text.split(words, -1).length <= 2, path + " " + words);
      }
    }
  }

  @Test
  void aSecondPassPointsBackToTheCautionsOfTheFirst() {
    BatchPlan plan =
        EXAMPLE.plan(
            GROWER,
            ExamplePlans.CLEAN,
            text -> text.replace("  add-water ", "  grind screen 0.8 mm\n  add-water "));
    String text = BatchSheetText.of(plan);
    assertEquals(2, text.split("Guards shut", -1).length);
    assertTrue(text.contains("! As above at: Grind."));
  }

  /** No hand can weigh a total for a load: totals stand after the release, and say so. */
  @Test
  void totalsStandAtTheBackAndOnlyWhereThereAreLoads() {
    for (String path : EXAMPLE.recipes()) {
      BatchPlan plan = EXAMPLE.plan(path);
      String text = BatchSheetText.of(plan);
      int total = text.indexOf("Batch total, do not weigh");
      boolean several = plan.loads() > 1 || plan.scales().orElseThrow().coatRounds() > 1;
      assertEquals(several, total > text.indexOf(". Release"), path);
      assertEquals(several, total >= 0, path);
      boolean onOneSheet = plan.loads() == 2 || plan.loads() == 3;
      assertEquals(onOneSheet, text.contains("Load 2 of " + plan.loads()), path);
      String each = "One sheet for each of the " + plan.loads() + " loads";
      assertEquals(plan.loads() > 3, text.contains(each), path);
    }
  }

  @Test
  void noSheetOfTheExampleAsksOrShowsADigitTooMany() {
    List<BatchPlan> plans = new ArrayList<>(EXAMPLE.premixes().values());
    EXAMPLE.recipes().forEach(path -> plans.add(EXAMPLE.plan(path)));
    for (BatchPlan plan : plans) {
      String text = BatchSheetText.of(plan);
      String work = text.substring(0, text.indexOf("For the laboratory"));
      assertFalse(work.matches("(?s).*\\.\\d{6}.*"), plan.code());
      assertFalse(text.contains("none can, ask"), plan.code());
      assertFalse(text.contains("Ask before you mix"), plan.code());
      assertFalse(text.matches("(?s).*≥ 0 \\w.*"), plan.code());
    }
  }

  @Test
  void theMillIsToldWhatGoesThroughWhichScreens() {
    String text = BatchSheetText.of(EXAMPLE.plan(GROWER)).replaceAll("\\s+", " ");
    assertTrue(text.contains("26.4 kg 0.8 mm") || text.contains("once more through 26.4 kg 0.8"));
    assertTrue(text.contains("Fish meal, 65 % protein 9 kg 1.0 mm ___"), text);
    String alone =
        BatchSheetText.of(
                EXAMPLE.plan(
                    GROWER,
                    ExamplePlans.CLEAN,
                    words -> words.replace("  grind      screen            1.0 mm\n", "")))
            .replaceAll("\\s+", " ");
    assertTrue(alone.contains("Soybean meal, dehulled, toasted 26.4 kg 0.8 mm ___"), alone);
    assertFalse(alone.contains("protein 9 kg"), alone);
  }

  @Test
  void theShortListOfTheLaboratoryHoldsNothingThatCannotBeFound() {
    String text = BatchSheetText.of(EXAMPLE.plan(GROWER));
    int first = text.indexOf("Analyse these of each batch");
    int more = text.indexOf("Analyse these only");
    int reckoned = text.indexOf("Computed only, no analysis");
    assertTrue(first > 0 && more > first && reckoned > more);
    String found = text.substring(first, reckoned);
    assertFalse(
        found.contains("Digestible") || found.contains("Available") || found.contains(" : "));
    assertTrue(text.substring(first, more).contains("Crude fibre"));
  }

  @Test
  void aCommitIsNeverMarkup() {
    Provenance odd = new Provenance("a\"}</style><b>", true, ExamplePlans.DAY);
    String html = BatchSheetHtml.of(EXAMPLE.plan(GROWER, odd, text -> text));
    assertFalse(html.contains("<b>"));
    assertEquals(2, html.split("</style>", -1).length);
  }

  private static BatchPlan premix(String code) {
    return Optional.ofNullable(EXAMPLE.premixes().get(code)).orElseThrow();
  }

  @Test
  void theSameBytesInAnotherLocaleAndTimeZone() {
    BatchPlan plan = EXAMPLE.plan(GROWER);
    String text = BatchSheetText.of(plan);
    String html = BatchSheetHtml.of(plan);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertEquals(text, BatchSheetText.of(EXAMPLE.plan(GROWER)));
      assertEquals(html, BatchSheetHtml.of(EXAMPLE.plan(GROWER)));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void everyRecipeHasASheetWithoutAPrice() {
    for (String path : EXAMPLE.recipes()) {
      BatchPlan plan = EXAMPLE.plan(path);
      String text = BatchSheetText.of(plan);
      String html = BatchSheetHtml.of(plan);
      assertFalse((text + html).contains("EUR"), path);
      assertFalse((text + html).contains("NaN"), path);
      assertFalse((text + html).contains("\r"), path);
      assertTrue(text.endsWith("\n"), path);
      plan.weighing()
          .forEach(
              line ->
                  assertTrue(
                      html.contains(line.title().replace("'", "&#x27;")),
                      path + " " + line.title()));
      if (plan.status().equals("approved")) {
        assertFalse(text.contains(STAMP), path);
      } else {
        assertTrue(text.contains(STAMP), path);
      }
    }
  }

  @Test
  void anUncleanTreeIsStampedOnBothPages() {
    Provenance unclean = new Provenance("1a2b3c4", false, ExamplePlans.DAY);
    BatchPlan plan = EXAMPLE.plan(GROWER, unclean, text -> text);
    for (String sheet : new String[] {BatchSheetText.of(plan), BatchSheetHtml.of(plan)}) {
      assertEquals(4, sheet.split(STAMP, -1).length);
      assertTrue(sheet.contains("changes that are not committed"));
    }
  }

  @Test
  void whatARecipeSaysIsNeverMarkup() {
    BatchPlan plan =
        EXAMPLE.plan(
            GROWER,
            ExamplePlans.CLEAN,
            text -> text.replace("African catfish grower, 4 mm", "<b>A & B's</b>"));
    String html = BatchSheetHtml.of(plan);
    assertFalse(html.contains("<b>"));
    assertTrue(html.contains("&lt;b&gt;A &amp; B&#x27;s&lt;/b&gt;"));
    assertTrue(BatchSheetText.of(plan).contains("<b>A & B's</b>"));
  }

  @Test
  void theTraysAndTheWaterStandOnTheSheet() {
    String text = BatchSheetText.of(EXAMPLE.plan(GROWER));
    assertTrue(text.contains("A tray loaded with 2000 g net"));
    assertTrue(BatchSheetHtml.of(EXAMPLE.plan(GROWER)).contains("g at 9 % (aim)"));
    assertTrue(text.contains("2 of 25 kg and a part bag of 7.761 kg"));
    assertTrue(text.contains("2027-01-24"));
    assertTrue(text.contains("commit 1a2b3c4"));
  }
}
