package dev.pellucid.engine.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.leastcost.Week;
import java.util.Collections;
import java.util.List;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person reads of least cost, of advices that were put together by hand. */
class LeastCostTextTest {
  private final Advices advices = new Advices();
  private final LeastCostText words = new LeastCostText("EUR");

  @ParameterizedTest
  @ValueSource(strings = {"txt", "md", "html"})
  void aCheaperRecipe(String form) {
    LeastCostTold told = advices.cheaper();
    verify(
        form,
        switch (form) {
          case "txt" -> words.text(told);
          case "md" -> words.markdown(List.of(told), Week.of(List.of()));
          default -> withoutStyle(words.html(told));
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {"txt", "md", "html", "brief"})
  void allFeedsOfTheWeek(String form) {
    List<LeastCostTold> all = advices.all();
    verify(
        form,
        switch (form) {
          case "txt" -> words.text(all, advices.week());
          case "md" -> words.markdown(all, advices.week());
          case "html" -> withoutStyle(words.html(all, advices.week()));
          default -> words.brief(all, advices.week());
        });
  }

  @Test
  void oneThatIsNotWorthAChange() {
    Approvals.verify(words.text(advices.notWorth()));
  }

  @Test
  void oneThatCannotBeMet() {
    Approvals.verify(words.text(advices.unmet()));
  }

  @Test
  void oneThatTheLawKeepsFromBeingMet() {
    Approvals.verify(words.text(advices.unmetByLaw()));
  }

  @Test
  void oneInWhichSomethingIsHeldBack() {
    Approvals.verify(words.text(advices.refused()));
  }

  @Test
  void oneThatWasNotAskedIsOneSentence() {
    assertEquals(
        "CG-36 not asked: catfish/CG-36.recipe:14:3: soybean-meal-48 has no price on 2026-11-25.",
        words.text(advices.notAsked()).lines().skip(2).findFirst().orElse(""));
  }

  @Test
  void aReviewOfManyStaysShort() {
    List<LeastCostTold> many = Collections.nCopies(60, advices.cheaper());
    String markdown = words.markdown(many, advices.week());
    assertTrue(markdown.length() < 60_000, () -> markdown.length() + " characters");
    assertTrue(markdown.contains(" more, which save less."), markdown);
  }

  private static void verify(String form, String text) {
    String extension = form.equals("brief") ? "txt" : form;
    Approvals.verify(
        text, Approvals.NAMES.withParameters(form).forFile().withExtension("." + extension));
  }

  private static String withoutStyle(String html) {
    return html.replaceAll("(?s)<style>.*?</style>", "<style></style>");
  }
}
