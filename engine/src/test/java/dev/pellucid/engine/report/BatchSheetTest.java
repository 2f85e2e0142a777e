package dev.pellucid.engine.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.plan.Provenance;
import java.util.Locale;
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
          .forEach(line -> assertTrue(text.contains(line.title()), path + " " + line.title()));
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
      assertEquals(3, sheet.split(STAMP, -1).length);
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
    assertTrue(html.contains("&lt;b&gt;A &amp; B&#39;s&lt;/b&gt;"));
    assertTrue(BatchSheetText.of(plan).contains("<b>A & B's</b>"));
  }

  @Test
  void theTraysAndTheWaterStandOnTheSheet() {
    String text = BatchSheetText.of(EXAMPLE.plan(GROWER));
    assertTrue(text.contains("A tray loaded with 2000 g net"));
    assertTrue(text.contains("g at 9 % (aim)"));
    assertTrue(text.contains("2 of 25 kg and one of"));
    assertTrue(text.contains("2027-01-24"));
    assertTrue(text.contains("commit 1a2b3c4"));
  }
}
