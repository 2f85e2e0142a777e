package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cannot be of records together, each told once, and what can be, which is let pass. */
class RecordsTogetherTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
  private static final String ONE = "F-1-2026-11-18-1";
  private static final String TWO = "F-1-2026-11-19-1";
  private static final String FILLED =
      """
      size: 60 kg
      bags: {full: 2, of: 25 kg, rest: 7.5 kg}
      release: {decision: released, by: shift lead, day: 2026-11-19}
      """;

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void store() throws IOException {
    text("ingredients/meal.yaml", "name: Meal\n");
    text("ingredients/maize.yaml", "name: Maize\n");
    lots("");
  }

  private void lots(String bins) throws IOException {
    text(
        "lots/all.yaml",
        """
        lots:
          - {number: ML-1, ingredient: meal, received: 2026-11-03, quantity: 900 kg, bin: B3}
          - {number: MZ-1, ingredient: maize, received: 2026-11-19, quantity: 900 kg}
        """
            + bins);
  }

  private void text(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private void one(String more) throws IOException {
    text("batches/" + ONE + ".yaml", FILLED + more);
  }

  private void two(String text) throws IOException {
    text("batches/" + TWO + ".yaml", "size: 60 kg\n" + text);
  }

  private List<Finding> found() throws IOException {
    ReadFolder read = ReadFolder.of(Texts.at(folder));
    assertEquals(
        List.of(),
        read.findings().stream()
            .filter(one -> one.span().file().path().matches("(lots|batches)/.*"))
            .toList());
    List<Finding> found = new ArrayList<>();
    RecordsTogether.look(read.tables(), DAY, found::add);
    return found;
  }

  /** Each as {@code line of its file: severity code}. */
  private void are(String... wanted) throws IOException {
    List<String> told = new ArrayList<>();
    for (Finding one : found()) {
      String line = one.span().file().stem() + ":" + one.span().from().line();
      told.add(
          line.replace(ONE, "one").replace(TWO, "two")
              + " "
              + one.severity().name().toLowerCase(Locale.ROOT)
              + " "
              + one.code().text());
      assertTrue(!one.helps().isEmpty(), one.headline());
    }
    assertEquals(List.of(wanted), told);
  }

  private static String delivered(String day, String amount) {
    return "  - {day: 2026-11-%s, by: store, to: Withybeck Fish Farm, %s}\n".formatted(day, amount);
  }

  private static String gone(String day, String amount) {
    return "  - {day: 2026-11-%s, by: store, because: wet, %s}\n".formatted(day, amount);
  }

  @Test
  void nothingIsSaidOfWhatCanBe() throws IOException {
    one(
        "delivered:\n"
            + delivered("19", "bags: 2")
            + delivered("22", "bags: 1")
            + "returned:\n  - {day: 2026-11-21, by: store, from: withybeck  fish farm, bags: 1,"
            + " because: wet}\n"
            + "counted:\n  - {day: 2026-11-23, by: store, weight: 7.5 kg}\n"
            + "samples:\n  - {weight: 500 g, place: shelf 4}\n");
    are();
  }

  @Test
  @DisplayName("a bag in part can be handed over as a bag, and no more")
  void asManyBagsAsWereFilled() throws IOException {
    one("delivered:\n" + delivered("20", "bags: 2, weight: 7.5 kg"));
    are();
    one("delivered:\n" + delivered("20", "bags: 2, weight: 8.5 kg"));
    are("one:5 error more-out-than-filled");
    one("delivered:\n" + delivered("20", "bags: 4"));
    are("one:5 error more-out-than-filled");
  }

  @Test
  void theOneThatGoesTooFarIsTold() throws IOException {
    one("delivered:\n" + delivered("23", "bags: 1") + delivered("20", "bags: 2"));
    are("one:5 error more-out-than-filled");
    one("delivered:\n" + delivered("20", "bags: 2") + "disposed:\n" + gone("23", "bags: 1"));
    are("one:7 error more-out-than-filled");
  }

  @Test
  @DisplayName("what another batch took of it is no longer there")
  void aBatchThatTookOfItCounts() throws IOException {
    one("delivered:\n" + delivered("19", "bags: 2"));
    two("weighed:\n  - {line: rework F-1, lot: " + ONE + ", weight: 7.5 kg}\n");
    are();
    two("weighed:\n  - {line: rework F-1, lot: " + ONE + ", weight: 9 kg}\n");
    are("two:3 error more-out-than-filled");
  }

  @Test
  @DisplayName("fines were never in the bags")
  void finesAreLetPass() throws IOException {
    one("fines: {weight: 3 kg, to: " + TWO + "}\ndelivered:\n" + delivered("19", "bags: 2"));
    two("weighed:\n  - {line: rework F-1, lot: " + ONE + ", weight: 10.5 kg}\n");
    are();
  }

  @ParameterizedTest(name = "released {0}, decided {1}, delivered on the 22nd: {2}")
  @CsvSource({
    "'', '', warning",
    "'decision: released, by: x', '', ",
    "'decision: released, by: x, day: 2026-11-22', '', ",
    "'decision: released, by: x, day: 2026-11-23', '', warning",
    "'decision: held, by: x', '', error",
    "'decision: rejected, by: x', '', error",
    "'decision: held, by: x', '21 released', ",
    "'decision: released, by: x', '21 on-hold', error",
    "'decision: released, by: x', '22 withdrawn', error",
    "'decision: released, by: x', '23 withdrawn', ",
    "'decision: released, by: x', '20 on-hold;21 released', ",
  })
  void onlyWhatIsReleasedLeaves(String release, String later, String severity) throws IOException {
    StringBuilder text = new StringBuilder("size: 60 kg\nbags: {full: 2, of: 25 kg}\n");
    text.append("delivered:\n").append(delivered("22", "bags: 1"));
    text.append(release.isEmpty() ? "" : "release: {" + release + "}\n");
    text.append(later.isEmpty() ? "" : "decided-later:\n");
    for (String one : later.isEmpty() ? List.<String>of() : List.of(later.split(";", -1))) {
      text.append(
          "  - {day: 2026-11-%s, by: x, decision: %s, because: y}\n"
              .formatted(one.substring(0, 2), one.substring(3)));
    }
    text("batches/" + ONE + ".yaml", text.toString());
    if (severity == null) {
      are();
    } else {
      are("one:4 " + severity + " delivered-not-released");
    }
  }

  @Test
  void nothingIsDoneBeforeABatchIsMadeOrInTheFuture() throws IOException {
    one("delivered:\n" + delivered("17", "bags: 1"));
    are("one:5 error feed-moved-on-wrong-day");
    one("disposed:\n" + gone("29", "bags: 1"));
    are("one:5 warning feed-moved-on-wrong-day");
    one("complaints:\n  - {day: 2026-10-20, by: x, from: y, about: dust}\n");
    are("one:5 error feed-moved-on-wrong-day");
    one("samples:\n  - {weight: 100 g, place: shelf 4, until: 2026-05-18}\n");
    are("one:5 error feed-moved-on-wrong-day");
    text("batches/" + ONE + ".yaml", FILLED.replace("day: 2026-11-19", "day: 2026-11-09"));
    are("one:3 error feed-moved-on-wrong-day");
  }

  @Test
  void aDeliveryThatStandsTwiceIsTold() throws IOException {
    one(
        "delivered:\n"
            + delivered("20", "bags: 1, note: D1")
            + delivered("20", "bags: 1, note: D1"));
    are("one:6 warning delivered-twice");
    one(
        "delivered:\n"
            + delivered("20", "bags: 1, note: D1")
            + delivered("20", "bags: 1, note: D2"));
    are();
  }

  @Test
  void nobodySendsBackMoreThanTheyGot() throws IOException {
    String back = "returned:\n  - {day: 2026-11-%s, by: x, from: %s, bags: %s, because: wet}\n";
    String out = "delivered:\n" + delivered("20", "bags: 1");
    one(out + back.formatted("21", "Withybeck Fish Farm", "2"));
    are("one:7 error returned-not-delivered");
    one(out + back.formatted("19", "Withybeck Fish Farm", "1"));
    are("one:7 error returned-not-delivered");
    one(out + back.formatted("21", "Withybek Fish Farm", "1"));
    are("one:7 error returned-not-delivered");
    assertTrue(found().get(0).helps().get(0).contains("Withybeck Fish Farm"), "a near name");
  }

  @Test
  void noMoreIsCountedThanCanBeThere() throws IOException {
    String count = "counted:\n  - {day: 2026-11-21, by: x, weight: %s kg}\n";
    one("delivered:\n" + delivered("20", "bags: 1") + count.formatted("32.5"));
    are();
    one("delivered:\n" + delivered("20", "bags: 1") + count.formatted("40"));
    are("one:7 warning feed-count-off");
    one("delivered:\n" + delivered("22", "bags: 1") + count.formatted("57"));
    are();
  }

  @Test
  void muchLessThanTheBooksSayIsTold() throws IOException {
    String count = "counted:\n  - {day: 2026-11-21, by: x, weight: %s kg}\n";
    one("delivered:\n" + delivered("20", "bags: 1") + count.formatted("3.25"));
    are("one:7 warning feed-count-off");
    assertTrue(found().get(0).headline().endsWith("by the books there are 32.5 kg"));
    one("samples:\n  - {weight: 4 kg, place: x}\n");
    are("one:5 warning record-figure-off");
  }

  @Test
  void aBatchWithoutBagsGivesNoMoreThanWasWeighed() throws IOException {
    String made = "size: 60 kg\nweighed: [{line: meal, lot: ML-1, weight: 60 kg}]\n";
    text("batches/" + ONE + ".yaml", made);
    String takes = "weighed: [{line: rework F-1, lot: " + ONE + ", weight: %s kg}]\n";
    two(takes.formatted("62"));
    are();
    two(takes.formatted("64"));
    are("two:2 error more-out-than-filled");
  }

  @Test
  void samplesAreLessThanTheBatch() throws IOException {
    one("samples:\n  - {weight: 40 kg, place: x}\n  - {weight: 20 kg, place: x}\n");
    are("one:5 error sample-larger-than-batch");
  }

  @ParameterizedTest(name = "fines to {0}: {1}")
  @CsvSource({
    "the pigs, ",
    "the bin of 2026-11-18, ",
    "F-1-2026-11-19-1, ",
    "f-1-2026-11-19-1, ",
    "F-1-2026-11-19-2, none",
    "F-1-2026-1-19-1, none",
    "F-1-2026-11-17-1, before",
    "F-1-2026-11-18-1, itself",
  })
  void finesGoIntoABatchThatIsThere(String to, String wrong) throws IOException {
    one("fines: {weight: 3 kg, to: " + to + "}\n");
    two("");
    text("batches/F-1-2026-11-17-1.yaml", "size: 60 kg\n");
    if (wrong == null) {
      are();
    } else {
      are("one:4 error goes-to-no-batch");
    }
  }

  @ParameterizedTest(name = "a flush with {0} of {1} on the 18th: {2}")
  @CsvSource({"meal, ML-1, ", "maize, ML-1, of meal", "maize, MZ-1, came on"})
  void aFlushIsOfItsLot(String with, String lot, String wrong) throws IOException {
    one("flushed: {quantity: 5 kg, with: %s, lot: %s, to: %s}\n".formatted(with, lot, ONE));
    if (wrong == null) {
      are();
    } else {
      are("one:4 error flush-lot-off");
      assertTrue(found().get(0).headline().contains(wrong), found().get(0).headline());
    }
  }

  @Test
  void aPartBagIsFilledUpOnce() throws IOException {
    String begun = "bags: {full: 1, of: 25 kg, begun-with: {batch: %s, weight: %s kg}}\n";
    one("");
    two(begun.formatted(ONE, "7.5"));
    are();
    text("batches/F-1-2026-11-20-1.yaml", "size: 60 kg\n" + begun.formatted(ONE, "7.5"));
    are("F-1-2026-11-20-1:2 error part-bag-off");
    Files.delete(folder.resolve("batches/F-1-2026-11-20-1.yaml"));
    two(begun.formatted(ONE, "8.5"));
    are("two:2 error part-bag-off");
    text("batches/" + ONE + ".yaml", "size: 60 kg\n");
    are("two:2 error part-bag-off");
    text("batches/" + ONE + ".yaml", "size: 60 kg\nbags: {full: 2, of: 25 kg}\n");
    are("two:2 error part-bag-off");
  }

  @Test
  void aPartBagOfAnotherRecipeIsAWarning() throws IOException {
    one("");
    text(
        "batches/F-2-2026-11-19-1.yaml",
        "size: 60 kg\nbags: {full: 1, of: 25 kg, begun-with: {batch: "
            + ONE
            + ", weight: 5 kg}}\n");
    are("F-2-2026-11-19-1:2 warning part-bag-off");
  }

  @Test
  @DisplayName("a ring of batches is one finding, at what was made last")
  void noBatchIsInItself() throws IOException {
    String takes =
        """
        size: 60 kg
        weighed:
          - {line: rework F-1, lot: %s, weight: 2 kg}
          - {line: meal, lot: ML-1, weight: 58 kg}
        """;
    String three = "F-1-2026-11-20-1";
    text("batches/" + ONE + ".yaml", takes.formatted(three));
    text("batches/" + TWO + ".yaml", takes.formatted(ONE));
    text("batches/" + three + ".yaml", takes.formatted(TWO));
    are("one:3 error batch-in-itself");
    text("batches/" + three + ".yaml", takes.formatted(three));
    are(three + ":3 error batch-in-itself");
  }

  @ParameterizedTest(name = "bins: {0}; taken of {1} from {2}: {3}")
  @CsvSource({
    "'', meal, B3, ",
    "'', meal, b3, ",
    "'', meal, B4, bin-empty",
    "'', maize, B3, bin-empty",
    "B3 2026-11-10, meal, B3, bin-empty",
    "B3 2026-11-18, meal, B3, ",
    "B3 2026-11-02, meal, B3, ",
    "B3 2026-12-02, meal, B3, bin-emptied-off",
    "B33 2026-11-02, meal, B3, bin-emptied-off",
    "b-3 2026-11-10, meal, B3, bin-empty",
    "'', meal, B-3, ",
    "'', meal, Bin 3, bin-empty",
  })
  void aBinHoldsWhatIsTakenFromIt(String bins, String line, String bin, String code)
      throws IOException {
    lots(
        bins.isEmpty()
            ? ""
            : "bins:\n  - {bin: %s, emptied: %s}\n".formatted((Object[]) bins.split(" ", -1)));
    one("weighed:\n  - {line: %s, bin: %s, weight: 5 kg}\n".formatted(line, bin));
    List<String> codes = found().stream().map(it -> it.code().text()).toList();
    assertEquals(code == null ? List.of() : List.of(code), codes);
  }
}
