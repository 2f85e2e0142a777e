package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Between;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Left;
import dev.pellucid.engine.trace.Recall.Store;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is left and out is never told as less than it can be, reckoned by hand. */
class RecallBooksTest {
  private static final double GRAM = 1e-6;
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String ONE = "F-1-2026-11-03-1";
  private static final String OTHER = "F-1-2026-11-04-1";

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void ingredient() throws IOException {
    text("ingredients/maize.yaml", "name: Maize\n");
  }

  private void text(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** 120 kg of maize in a bin that others were put into as well. */
  private void lots(String moves, String bins) throws IOException {
    text(
        "lots/all.yaml",
        """
        lots:
          - number: MZ-1
            ingredient: maize
            received: 2026-11-01
            quantity: 120 kg
            bin: B1
        %s  - {number: MZ-2, ingredient: maize, received: 2026-11-01, quantity: 900 kg, bin: B1}
        %s"""
            .formatted(moves, bins));
  }

  private void made(String number, String line, String more) throws IOException {
    text(
        "batches/" + number + ".yaml",
        "size: 100 kg\nweighed:\n  - {line: maize, %s}\n%s".formatted(line, more));
  }

  /** 100 kg of lot MZ-1 in 4 bags of 25 kg. */
  private void bagged(String number, String more) throws IOException {
    lots("", "");
    made(number, "lot: MZ-1, weight: 100 kg", "bags: {full: 4, of: 25 kg}\n" + more);
  }

  private Answer recall(String number) throws IOException {
    ReadFolder read = ReadFolder.of(Texts.at(folder));
    assertEquals(
        List.of(),
        read.findings().stream()
            .filter(one -> one.span().file().path().matches("(lots|batches)/.*"))
            .map(Finding::headline)
            .filter(one -> !one.equals("to has no value"))
            .toList());
    MadeBy made = MadeBy.atOnePlant(Map.of("F-1", List.of("maize")));
    return new Tracer(read.tables(), made, made, none -> Optional.empty(), DAY).recall(number);
  }

  private Store store(String number) throws IOException {
    return recall(number).balance().store().orElseThrow();
  }

  private static void are(double least, double most, Between kg) {
    assertEquals(least, kg.least(), GRAM, kg.toString());
    assertEquals(most, kg.most(), GRAM, kg.toString());
  }

  @Test
  @DisplayName("what a batch took from the bin, its lot not named, may be of it or not")
  void fromItsBin() throws IOException {
    lots("", "");
    made(ONE, "bin: B1, weight: 70 kg", "");
    are(50, 120, store("MZ-1").kg());
    made(OTHER, "bin: B1, weight: 70 kg", "");
    are(0, 120, store("MZ-1").kg());
  }

  @Test
  @DisplayName("a lot that is named out of a bin with others may be it or another")
  void namedOutOfABin() throws IOException {
    lots("", "");
    made(ONE, "lot: MZ-1, weight: 120 kg", "");
    are(0, 120, store("MZ-1").kg());
    are(780, 900, store("MZ-2").kg());
    assertEquals(0, recall("MZ-1").balance().used().told(), GRAM);
    assertEquals(120, recall("MZ-1").balance().unnamed().told(), GRAM);
  }

  @Test
  @DisplayName("of a bin of several lots no more can come than all of them had")
  void shortOfSeveralLots() throws IOException {
    lots("", "");
    apart("2026-11-01", "");
    made(ONE, "bin: B1, weight: 500 kg", "");
    made(OTHER, "bin: B1, weight: 520 kg", "");
    assertEquals(List.of(), recall("MZ-3").batches());
    made(OTHER, "bin: B1, weight: 521 kg", "");
    List<Affected> may = recall("MZ-3").batches();
    assertEquals(List.of(OTHER), may.stream().map(one -> one.batch().number()).toList());
    // What names one of the lots was of them as well.
    made(ONE, "lot: MZ-1, weight: 500 kg", "");
    assertEquals(1, recall("MZ-3").batches().size());
    // A count after the first found as much as there was before it.
    lots("    counted: [{day: 2026-11-03, by: store, weight: 120 kg}]\n", "");
    assertEquals(0, recall("MZ-3").batches().size());
  }

  /** A lot in no bin. */
  private void apart(String day, String moves) throws IOException {
    text(
        "lots/apart.yaml",
        """
        lots:
          - number: MZ-3
            ingredient: maize
            received: %s
            quantity: 1000 kg
        %s"""
            .formatted(day, moves));
  }

  @Test
  @DisplayName("what is of a day to come, or was counted before there was any, does not count")
  void ofAnotherDay() throws IOException {
    for (String move :
        List.of(
            "disposed: [{day: 2026-11-26, by: a, weight: 900 kg, because: old}]",
            "returned: [{day: 2026-11-26, by: a, weight: 900 kg, because: old}]",
            "corrections: [{day: 2026-11-26, by: a, less: 900 kg, because: old}]",
            "counted: [{day: 2026-12-24, by: a, weight: 0 kg}]")) {
      apart("2026-11-01", "    " + move + "\n");
      Answer answer = recall("MZ-3");
      are(1000, 1000, answer.balance().store().orElseThrow().kg());
      assertEquals(Recall.Limit.MOVED_AHEAD, answer.notFollowed().get(0).limit(), move);
    }
    apart("2026-11-01", "    counted: [{day: 2026-10-20, by: a, weight: 0 kg}]\n");
    are(1000, 1000, store("MZ-3").kg());
    bagged(ONE, out("counted", "day: 2026-11-02, by: a, weight: 0 kg"));
    assertEquals(new Amount(4, 100), store(ONE).amount());
    bagged(ONE, out("delivered", "day: 2026-11-26, by: a, to: Pond, bags: 3"));
    Answer answer = recall(ONE);
    assertEquals(new Amount(4, 100), answer.balance().store().orElseThrow().amount());
    assertEquals(List.of(), answer.calls());
    assertEquals(
        "to be delivered to Pond on 2026-11-26, 75 kg", answer.notFollowed().get(0).words());
    bagged(ONE, out("delivered", "day: 2026-11-25, by: a, to: Pond, bags: 3"));
    assertEquals(new Amount(1, 25), store(ONE).amount());
    assertEquals(1, recall(ONE).calls().size());
    assertEquals(List.of(), recall(ONE).notFollowed());
  }

  @Test
  @DisplayName("water that was added may be in it where no bags are told")
  void water() throws IOException {
    String sent = out("delivered", "day: 2026-11-05, by: a, to: Pond, weight: %s kg");
    lots("", "");
    String wet = "water: 20 kg\n";
    made(ONE, "lot: MZ-1, weight: 100 kg", wet + sent.formatted(90));
    are(10, 30, store(ONE).kg());
    made(ONE, "lot: MZ-1, weight: 100 kg", wet + sent.formatted(110));
    are(0, 10, store(ONE).kg());
    assertEquals(Optional.empty(), recall(ONE).balance().gap());
    made(ONE, "lot: MZ-1, weight: 100 kg", wet + sent.formatted(125));
    are(0, 0, store(ONE).kg());
    are(-25, -5, recall(ONE).balance().gap().orElseThrow());
    String counted = out("counted", "day: 2026-11-06, by: a, weight: 15 kg");
    made(ONE, "lot: MZ-1, weight: 100 kg", wet + sent.formatted(90) + counted);
    are(15, 15, store(ONE).kg());
    are(-5, 15, recall(ONE).balance().gap().orElseThrow());
    // Of what was bagged all is told.
    bagged(ONE, wet);
    assertEquals(new Amount(4, 100), store(ONE).amount());
  }

  @Test
  @DisplayName("that no bag is left can be counted")
  void noBagIsLeft() throws IOException {
    bagged(ONE, out("counted", "day: 2026-11-06, by: a, bags: 0"));
    are(0, 0, store(ONE).kg());
    are(100, 100, recall(ONE).balance().gap().orElseThrow());
  }

  @Test
  @DisplayName("a line that tells neither lot nor bin may be of every lot of its kind")
  void ofNoLot() throws IOException {
    lots("", "");
    made(ONE, "weight: 70 kg", "");
    are(50, 120, store("MZ-1").kg());
    assertEquals(70, recall("MZ-1").balance().unnamed().told(), GRAM);
  }

  @Test
  void aGapIsNotExactWhereUnnamedKgLeftBeforeTheCount() throws IOException {
    lots("    counted: [{day: 2026-11-10, by: store, weight: 40 kg}]\n", "");
    made(ONE, "bin: B1, weight: 70 kg", "");
    Answer answer = recall("MZ-1");
    are(40, 40, answer.balance().store().orElseThrow().kg());
    are(10, 80, answer.balance().gap().orElseThrow());
    // After the count it tells less of the store, and nothing of the gap.
    made("F-1-2026-11-11-1", "bin: B1, weight: 5 kg", "");
    answer = recall("MZ-1");
    are(35, 40, answer.balance().store().orElseThrow().kg());
    are(10, 80, answer.balance().gap().orElseThrow());
  }

  @Test
  void ofABinThatWasEmptiedNothingIsLeft() throws IOException {
    lots("", "bins:\n  - {bin: B1, emptied: 2026-11-20}\n");
    made(ONE, "lot: MZ-1, weight: 70 kg", "");
    Answer answer = recall("MZ-1");
    Store store = answer.balance().store().orElseThrow();
    are(0, 0, store.kg());
    assertEquals(Optional.of(LocalDate.of(2026, 11, 20)), store.emptied());
    // The other may have been in it then.
    are(50, 120, answer.balance().gap().orElseThrow());
    assertEquals(
        List.of(ONE), answer.stop().hold().stream().map(it -> it.thing().number()).toList());
    // Somebody found some later.
    lots(
        "    counted: [{day: 2026-11-21, by: store, weight: 12 kg}]\n",
        "bins:\n  - {bin: B1, emptied: 2026-11-20}\n");
    answer = recall("MZ-1");
    are(12, 12, answer.balance().store().orElseThrow().kg());
    are(38, 108, answer.balance().gap().orElseThrow());
  }

  @Test
  @DisplayName("a bin that is to be emptied later is told now, and one emptied before is not")
  void aBinThatIsEmptiedLater() throws IOException {
    lots("", "bins:\n  - {bin: B1, emptied: 2026-12-20}\n");
    assertEquals(
        List.of("MZ-1", "MZ-2"), recall("MZ-1").stop().bins().stream().findFirst().get().lots());
    assertEquals(Optional.empty(), recall("MZ-1").stop().bins().get(0).emptied());
    are(120, 120, store("MZ-1").kg());
    lots("", "bins:\n  - {bin: B1, emptied: 2026-11-20}\n");
    assertEquals(List.of(), recall("MZ-1").stop().bins());
  }

  private static String out(String of, String... moves) {
    return of + ":\n  - {" + String.join("}\n  - {", moves) + "}\n";
  }

  @Test
  @DisplayName("loose feed and samples come out of bags that are opened for them")
  void bags() throws IOException {
    bagged(ONE, "");
    assertEquals(new Amount(4, 100), store(ONE).amount());
    bagged(ONE, "samples:\n  - {weight: 500 g, place: shelf}\n");
    assertEquals(new Amount(3, 99.5), store(ONE).amount());
    lots("", "");
    String loose =
        out(
            "delivered",
            "day: 2026-11-05, by: store, to: Withybeck, weight: 15 kg",
            "day: 2026-11-06, by: store, to: Withybeck, weight: 15 kg");
    // Each is in the part bag of 20 kg, both are not.
    made(ONE, "lot: MZ-1, weight: 100 kg", "bags: {full: 4, of: 20 kg, rest: 20 kg}\n" + loose);
    assertEquals(new Amount(3, 70), store(ONE).amount());
    bagged(ONE, out("counted", "day: 2026-11-08, by: store, weight: 60 kg"));
    assertEquals(new Amount(0, 60), store(ONE).amount());
    String back =
        "day: 2026-11-09, by: store, from: Withybeck, bags: 1, weight: 30 kg, because: wet";
    bagged(
        ONE,
        out("delivered", "day: 2026-11-05, by: store, to: Withybeck, bags: 4")
            + out("returned", back));
    assertEquals(new Amount(1, 55), store(ONE).amount());
  }

  @Test
  @DisplayName("what came back of one batch takes nothing off what they have of another")
  void parties() throws IOException {
    bagged(
        ONE,
        out("delivered", "day: 2026-11-05, by: store, to: Withybeck, bags: 1")
            + out(
                "returned", "day: 2026-11-06, by: store, from: Withybeck, bags: 2, because: wet"));
    bagged(OTHER, out("delivered", "day: 2026-11-05, by: store, to: Withybeck, bags: 2"));
    lots("", "");
    List<Call> calls = recall("MZ-1").calls();
    assertEquals(1, calls.size());
    Call call = calls.get(0);
    assertEquals(new Amount(2, 50), call.certain().plus(call.possible()));
    assertEquals(List.of(ONE), call.tooMuchBack());
  }

  @Test
  @DisplayName("what nobody is told for is out all the same")
  void toNobody() throws IOException {
    bagged(ONE, out("delivered", "day: 2026-11-05, by: store, to: ' ', bags: 2"));
    RecallTally.Part part = RecallTally.of(recall(ONE)).certain();
    assertEquals(new Amount(2, 50), part.out());
    assertEquals(50, part.toNobody(), GRAM);
    assertEquals(0, part.parties());
  }

  @Test
  @DisplayName("what came back on the day of a count is in it, or is there besides")
  void cameBackOnTheDayOfTheCount() throws IOException {
    String sent = out("delivered", "day: 2026-11-05, by: store, to: Withybeck, bags: 2");
    String back = "day: %s, by: store, from: Withybeck, bags: 1, because: wet";
    String counted = out("counted", "day: 2026-11-10, by: store, bags: 2");
    bagged(ONE, sent + out("returned", back.formatted("2026-11-10")) + counted);
    Answer answer = recall(ONE);
    are(50, 75, answer.balance().store().orElseThrow().kg());
    are(0, 25, answer.balance().gap().orElseThrow());
    assertTrue(answer.balance().store().orElseThrow().moved());
    assertEquals(75, RecallTally.of(answer).certain().store().kg(), GRAM);
    assertEquals(50, RecallTally.of(answer).certain().least(), GRAM);
    // Of the day after it surely is besides.
    bagged(ONE, sent + out("returned", back.formatted("2026-11-11")) + counted);
    are(75, 75, store(ONE).kg());
    assertTrue(store(ONE).moved());
    bagged(ONE, sent + out("returned", back.formatted("2026-11-09")) + counted);
    are(50, 50, store(ONE).kg());
    assertFalse(store(ONE).moved());
  }

  @Test
  @DisplayName(
      "a correction after a count puts the books right, and takes nothing out of the store")
  void corrected() throws IOException {
    String counted = "    counted: [{day: 2026-11-10, by: store, weight: 100 kg}]\n";
    lots(
        counted + "    corrections: [{day: 2026-11-11, by: store, less: 20 kg, because: so}]\n",
        "");
    are(100, 100, store("MZ-1").kg());
    are(0, 0, recall("MZ-1").balance().gap().orElseThrow());
    lots(
        counted + "    corrections: [{day: 2026-11-10, by: store, more: 5 kg, because: so}]\n", "");
    are(100, 105, store("MZ-1").kg());
    are(20, 25, recall("MZ-1").balance().gap().orElseThrow());
  }

  @Test
  @DisplayName("a closed record of which something may be left is told apart, till it is counted")
  void closed() throws IOException {
    bagged(ONE, "closed: yes\n" + out("delivered", "day: 2026-11-05, by: a, to: b, bags: 3"));
    Recall.Stop stop = recall(ONE).stop();
    assertEquals(List.of(), stop.hold());
    Left left = stop.closed().get(0);
    assertEquals(25, left.store().orElseThrow().amount().kg(), GRAM);
    assertEquals(25, RecallTally.of(recall(ONE)).certain().store().kg(), GRAM);
    bagged(ONE, "closed: yes\n" + out("delivered", "day: 2026-11-05, by: a, to: b, bags: 4"));
    assertEquals(List.of(), recall(ONE).stop().closed());
    bagged(ONE, "closed: yes\n" + out("counted", "day: 2026-11-05, by: a, bags: 1"));
    assertEquals(1, recall(ONE).stop().hold().size());
    assertEquals(List.of(), recall(ONE).stop().closed());
  }

  @Test
  @DisplayName("a batch that should be made by now may have taken of its lot or of its bin")
  void overdue() throws IOException {
    lots("", "");
    text("batches/" + ONE + ".yaml", "size: 60 kg\nweighed:\n  - {line: maize, bin: B1}\n");
    Answer answer = recall("MZ-1");
    assertEquals(
        List.of(ONE), answer.stop().planned().stream().map(it -> it.batch().number()).toList());
    are(0, 120, answer.balance().store().orElseThrow().kg());
    text("batches/" + ONE + ".yaml", "size: 60 kg\nweighed:\n  - {line: maize, lot: MZ-1}\n");
    answer = recall("MZ-1");
    assertEquals(
        List.of(ONE),
        answer.stop().planned().stream().map(Affected::batch).map(Trace.Batch::number).toList());
    are(0, 120, answer.balance().store().orElseThrow().kg());
    // One whose day is to come has taken nothing.
    Files.delete(folder.resolve("batches/" + ONE + ".yaml"));
    text("batches/F-1-2026-12-01-1.yaml", "size: 60 kg\nweighed:\n  - {line: maize, bin: B1}\n");
    are(120, 120, store("MZ-1").kg());
  }
}
