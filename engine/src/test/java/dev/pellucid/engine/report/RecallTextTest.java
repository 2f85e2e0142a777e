package dev.pellucid.engine.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.RecallList;
import java.util.List;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person reads of a recall, of answers that were put together by hand. */
class RecallTextTest {
  @ParameterizedTest
  @ValueSource(strings = {"txt", "html"})
  void aLotWithAllThatThereCanBe(String form) {
    RecallList told = Recalls.lot();
    verify(form, form.equals("txt") ? RecallText.text(told) : withoutStyle(RecallText.html(told)));
  }

  @Test
  void aBatchThatWentNowhere() {
    Approvals.verify(RecallText.text(Recalls.batch()));
  }

  @Test
  void aLotThatNothingWasMadeOf() {
    Approvals.verify(RecallText.text(Recalls.nothing()));
  }

  /**
   * Whoever is to be called or stopped is told by name, however many there are, and never folded.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 60, 200})
  void ofManyEachIsTold(int feeds) {
    RecallList told = Recalls.many(feeds);
    String text = RecallText.text(told);
    String html = RecallText.html(told);
    for (Affected one : told.answer().batches()) {
      assertTrue(text.contains(one.batch().number() + "  "), one.batch().number());
      assertTrue(html.contains(one.batch().number()), one.batch().number());
    }
    String unfolded = html.replaceAll("(?s)<details>.*?</details>", "");
    for (Call call : told.answer().calls()) {
      assertTrue(text.contains("\n" + call.party() + ": "), call.party());
      call.sent().forEach(sent -> assertTrue(unfolded.contains(sent.moved().note())));
    }
    told.answer().stop().hold().forEach(one -> assertTrue(unfolded.contains(one.thing().number())));
    assertEquals(feeds > 20, html.contains("<details>"));
  }

  @Test
  void whatComesFirstIsEnoughToBeginWith() {
    List<String> lines = RecallText.text(Recalls.lot()).lines().limit(40).toList();
    List<String> parts =
        lines.stream().filter(line -> line.matches("[A-Z]{4,}.*|\\*\\*\\*.*")).toList();
    assertEquals("*** THIS LIST MAY NOT BE WHOLE ***", parts.get(0));
    assertTrue(parts.get(1).startsWith("STOP: "), parts.toString());
  }

  @Test
  void aListThatIsWholeHasNoStamp() {
    assertFalse(RecallText.text(Recalls.batch()).contains("MAY NOT BE WHOLE"));
    assertTrue(RecallText.text(Recalls.batch()).contains("\nNothing was left out.\n"));
  }

  private static String withoutStyle(String html) {
    return html.replaceFirst("(?s)<style>.*?</style>", "<style></style>");
  }

  private static void verify(String form, String text) {
    Approvals.verify(
        text, Approvals.NAMES.withParameters(form).forFile().withExtension("." + form));
  }
}
