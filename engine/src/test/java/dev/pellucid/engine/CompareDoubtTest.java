package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.FolderState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be judged, is gone or is told otherwise, in a comparison of the example folder. */
class CompareDoubtTest {
  private static final Path EXAMPLE = Example.whole();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String TROUT = "trout/TG-44.recipe";

  @TempDir Path copy;
  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(copy);
  }

  @Test
  void whatCannotBeJudgedAnyMoreIsNotToldAsBroken() throws IOException {
    folder.with(TROUT, "temperature       115 °C", "temperature       140 °C");
    String text = compared().text();
    assertTrue(
        text.contains("  CANNOT BE JUDGED any more: vitamin-a min 2500 IU/kg, vitamin-d3 "), text);
    assertTrue(
        !text.contains("BROKEN") && !text.contains("LABEL") && !text.contains("  vitamin-a "),
        text);
    assertTrue(text.lines().findFirst().orElse("").endsWith(" cannot be judged any more"), text);
  }

  /** Of a new feed nothing could be judged before. */
  @Test
  void whatCannotBeJudgedOfANewFeedIsNotToldAsOtherwiseBefore() throws IOException {
    Files.writeString(
        copy.resolve("trout/TX-1.recipe"),
        Files.readString(copy.resolve(TROUT))
            .replace("recipe TG-44 ", "recipe TX-1 ")
            .replace("temperature       115 °C", "temperature       140 °C"));
    CompareReport report = compared();
    assertTrue(report.tally().endsWith(" cannot be judged"), report.tally());
    for (String form : List.of(report.text(), report.markdown(), report.html())) {
      assertFalse(form.contains("any more") || form.contains("no longer"), form);
    }
  }

  @Test
  void aRatioOverNothingIsToldInEachForm() throws IOException {
    folder.with(TROUT, "limits\n", "limits\n  calcium : astaxanthin  max 100\n");
    CompareReport report = compared();
    assertTrue(report.text().contains("BROKEN calcium : astaxanthin max 100: ∞"), report.text());
    assertTrue(report.json().contains("\"after\": null"), report.json());
    assertTrue(
        OwnFolder.explain(copy, DAY, "TG-44", "calcium : astaxanthin")
            .text()
            .contains("cannot be computed: the feed holds no astaxanthin"));
  }

  @Test
  void theSameRatioOverNothingIsNoChange() throws IOException {
    folder.with(TROUT, "limits\n", "limits\n  calcium : astaxanthin  max 100\n");
    FolderState state = FolderState.at(copy);
    String text = Pellucid.compare(state, state, DAY, "compare.html").text();
    assertTrue(text.startsWith("no finding is new and none is gone, "), text);
    assertTrue(text.endsWith("stay; no feed changes\n"), text);
  }

  @Test
  void aPriceThatIsGoneIsNoSaving() throws IOException {
    folder.with("prices/2026-11.yaml", "  fish-meal-65:", "  # fish-meal-65:");
    folder.with("prices/2026-08.yaml", "  fish-meal-65:", "  # fish-meal-65:");
    assertTrue(
        compared()
            .text()
            .contains("  PRICE none any more for fish-meal-65, the cost leaves it out"),
        compared().text());
  }

  @Test
  void whatMovesOnlyWhereItIsJudgedIsSeen() throws IOException {
    folder.with("ingredients/fish-meal-65.yaml", "65.0 ± 1.6", "65.0 ± 3.2");
    String text = compared().text();
    assertTrue(text.contains("TG-44  not touched, changed by its data\n"), text);
    assertTrue(text.contains("judged crude-protein min 42 % in 95 % of batches: 42."), text);
    assertTrue(text.contains("because of ingredients/fish-meal-65.yaml\n"), text);
  }

  @Test
  void aWaiverIsNoChangeOfTheLimit() throws IOException {
    folder.with(
        TROUT,
        "process\n",
        "waivers\n  crude-fat  max 30 %  until 2027-03-31  by \"quality manager\"  because"
            + " \"trial\"\n\nprocess\n");
    String text = compared().text();
    assertTrue(text.contains("  waiver new: crude-fat max 30 % until 2027-03-31\n"), text);
    assertTrue(!text.contains("  limit ") && !text.contains("  met "), text);
  }

  @Test
  void aBoundInAnotherUnitIsHeldAgainstNoFigureOfTheOldOne() throws IOException {
    folder.with("limits/trout-grower.limits", "min 2.4 %", "min 28 g/kg");
    String text = compared().text();
    assertTrue(text.contains("BROKEN lysine min 28 g/kg: 27.7"), text);
    assertTrue(!text.contains("2.77 ->") && !text.contains("2.771 ->"), text);
  }

  @Test
  void anIngredientThatIsGoneIsTheReason() throws IOException {
    Files.delete(copy.resolve("ingredients/wheat-gluten.yaml"));
    assertTrue(
        compared()
            .text()
            .contains(
                """
                TG-44  cannot be computed any more
                  cannot be computed: wheat-gluten is\
                """),
        compared().text());
  }

  @Test
  void aBatchThatIsGoneIsNotAWeightOfNothing() throws IOException {
    folder.with(TROUT, "  batch     1000 kg weighed\n", "");
    String text = compared().text();
    assertTrue(
        text.contains("  weigh sheet: 1000 kg in 1 load and 2 rounds of the coater -> none"), text);
    assertTrue(!text.contains("-> 0.000 kg"), text);
  }

  @Test
  void errorsInSharedFilesAndOtherMoneyAreSaidFirst() throws IOException {
    folder.with("pellucid.yaml", "currency: EUR", "currency: USD");
    CompareReport report = compared();
    assertTrue(
        report
            .text()
            .contains(" are new; 17 feeds change, 6 premixes change\nNOT TO BE TRUSTED, now: "),
        report.text());
    assertTrue(report.text().contains("the currency was EUR and is USD"), report.text());
    assertTrue(beyond().startsWith("NOT TO BE TRUSTED, now: "), beyond());
    assertTrue(report.markdown().contains("**NOT TO BE TRUSTED, now: "), report.markdown());
  }

  private String beyond() throws IOException {
    return String.join("; ", compared().beyond(OptionalDouble.of(5), OptionalDouble.of(5)));
  }

  /** A wetter meal moves no price: what it costs more is what the dryer takes out of it. */
  @Test
  void aWetterMealCostsByTheYieldAlone() throws IOException {
    folder.with("ingredients/soybean-meal-48.yaml", "moisture: 10.5 ±", "moisture: 11.5 ±");
    String text = compared().text();
    assertTrue(text.contains("cost 0.6227 -> 0.6258 EUR/kg (+0.0031): yield +0.0031\n"), text);
    assertFalse(text.contains("soybean-meal-48 +0."), text);
  }

  private CompareReport compared() throws IOException {
    return Pellucid.compare(FolderState.at(EXAMPLE), FolderState.at(copy), DAY, "compare.html");
  }
}
