package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.RecallReport;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.engine.outcome.RecallSchema;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Recalls in the example folder, from the question to what is written and done. */
class RecallTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String LOT = "SE1-9042";
  private static final String PREMIX = "MIN-WW-2026-11-12-1";
  private static final String FEED = "CF-31-2026-11-18-1";
  private static final String LOTS = "lots/2026-11.yaml";

  @TempDir Path copy = Path.of("");

  @Test
  void aLotOfThePremixSaysWhomToCallAndWhatToStop() throws IOException {
    RecallReport report = recall(Example.whole(), LOT, "");
    assertEquals(Optional.empty(), report.problem());
    assertEquals(Optional.empty(), report.notWhole());
    List<String> lines = report.text().lines().toList();
    assertShown(lines, "Out, of those that hold it  3 bags, 75 kg, to 2 parties");
    assertShown(lines, "SE1-9042             selenite-1  certain    4.9875     -  no");
    assertShown(lines, "Withybeck Fish Farm: 2 bags, 50 kg with them by the books");
    assertShown(lines, "CF-31-2026-11-18-1  2026-11-20  delivered     2  50  DN-114");
    assertShown(lines, "- TG-44-2026-12-01-1 of 2026-12-01 may hold it: made next on the line");
    assertEquals(List.of(), RecallSchema.told(report.json()));
    assertTrue(report.html().contains("<svg") && report.html().contains("Withybeck Fish Farm"));
  }

  private static void assertShown(List<String> lines, String start) {
    assertTrue(lines.stream().anyMatch(line -> line.startsWith(start)), () -> start + lines);
  }

  /** Who reads no further than the head, the stop and the calls knows enough to begin. */
  @Test
  void theHeadCountsAsTheTablesDo() throws IOException {
    List<String> lines = recall(Example.whole(), LOT, "").text().lines().toList();
    assertShown(
        lines, "May hold it                 no batch that was made, as far as records tell; and 1");
    assertShown(
        lines, "Out, of those that hold it  3 bags, 75 kg, to 2 parties: Withybeck Fish Farm, Re");
    assertShown(lines.subList(0, 40), "Telephone ____________________ called on ____________ at");
  }

  @Test
  void nobodyIsNotSaidWhereSomebodyMayBe() throws IOException {
    SlippedFolder.withRecords(copy)
        .with("batches/" + FEED + ".yaml", "size: 100 kg", "size: 100 kg\nweighed: [");
    List<String> torn = recall(copy, LOT, "").text().lines().toList();
    assertShown(torn, "Nobody by name, as far as could be searched; see What was searched.");
    assertShown(torn, "Out, of those that hold it  nothing, as far as could be searched");
  }

  @Test
  void whoGotItWithoutAPartyIsNotNobody() throws IOException {
    SlippedFolder.withRecords(copy)
        .with("batches/" + FEED + ".yaml", "to: Withybeck Fish Farm, ", "")
        .with("batches/" + FEED + ".yaml", "to: Reedmere Ponds, ", "");
    RecallReport report = recall(copy, LOT, "");
    List<String> lines = report.text().lines().toList();
    assertShown(lines, "Nobody by name, as far as could be searched");
    assertShown(
        lines, "Out, of those that hold it  3 bags, 75 kg; of 75 kg no record tells to whom");
  }

  /** The fault may have come in with what it was made of, and others have that too. */
  @ParameterizedTest
  @ValueSource(strings = {PREMIX, FEED})
  void aBatchThatIsRecalledLeadsToItsSuppliers(String number) throws IOException {
    RecallReport report = recall(Example.whole(), number, "");
    assertShown(
        report.text().lines().toList(),
        number.equals(PREMIX)
            ? "Brackenlode Minerals  S1-26-031  5530           SE1-9042  selenite-1  certain"
            : "Skerrivane Fish Meal     OIL-97      88240          FO-3301     fish-oil");
    assertTrue(report.json().contains("\"supplierLot\": \"S1-26-031\""), report.json());
    assertEquals(List.of(), RecallSchema.told(report.json()));
    assertFalse(recall(Example.whole(), LOT, "").text().contains("If the fault came in"));
  }

  @Test
  void aBatchTellsWhatIsInItToo() throws IOException {
    RecallReport report = recall(Example.whole(), "", FEED);
    assertTrue(report.text().contains("What is in it\n"), report.text());
    assertTrue(report.text().contains("\nSB-0411 "), report.text());
    assertEquals(List.of(), RecallSchema.told(report.json()));
  }

  @Test
  void capitalsDoNotHideANumber() throws IOException {
    assertEquals(
        recall(Example.whole(), LOT, "").text(), recall(Example.whole(), "se1-9042", "").text());
  }

  /** Whoever writes what the list says to write has stopped all of it. */
  @Test
  void whatItSaysToWriteStopsAllOfIt() throws IOException {
    SlippedFolder folder = SlippedFolder.withRecords(copy);
    String text = recall(copy, LOT, "").text();
    String states = between(text, "in place of its line inspection:\n", "Write this");
    String decided = between(text, FEED + ".yaml\n", "\nIt is only the line");
    folder.with(
        LOTS,
        "quantity: 5 kg\n    inspection: passed\n",
        "quantity: 5 kg\n" + states.replace("____", "quality manager"));
    for (String number : List.of(PREMIX, FEED)) {
      assertTrue(text.contains("- batches/" + number + ".yaml\n"), text);
      Path record = copy.resolve("batches/" + number + ".yaml");
      Files.writeString(
          record, Files.readString(record) + decided.replace("____", "quality manager"));
    }
    assertEquals(List.of(), recall(copy, LOT, "").findings());
    String after = recall(copy, LOT, "").text();
    assertTrue(after.contains("\nAll of it that is left is stopped already.\n"), after);
    assertFalse(after.contains("decided-later"), after);
    assertTrue(after.contains("It stands                   on-hold since 2026-11-25"), after);
  }

  @Test
  void whatWasCountedTellsTheGap() throws IOException {
    SlippedFolder folder = SlippedFolder.withRecords(copy);
    String text = recall(copy, LOT, "").text();
    assertTrue(text.contains("cannot be known"), text);
    String count = between(text, "write below the lot\nin " + LOTS + ":\n", "Of the batches");
    folder.with(
        LOTS,
        "number: SE1-9042\n",
        "number: SE1-9042\n" + count.replaceFirst("____", "store").replaceFirst("____", "4.96 kg"));
    assertEquals(List.of(), recall(copy, LOT, "").findings());
    String after = recall(copy, LOT, "").text();
    assertTrue(after.contains("\nin the store, counted on 2026-11-25  4.9600\n"), after);
    assertTrue(after.matches("(?s).*\ngap +0\\.0275\ngap in percent +0\\.55 %\n.*"), after);
  }

  private static String between(String text, String from, String to) {
    int start = text.indexOf(from);
    assertTrue(start >= 0, () -> "no " + from + " in " + text);
    return text.substring(start + from.length(), text.indexOf(to, start));
  }

  @Test
  void aNumberThatIsNotThereIsToldWithNearOnes() throws IOException {
    RecallReport report = recall(Example.whole(), "SE1-9024", "");
    assertEquals(
        Optional.of(
            "no lot or batch of this folder has the number SE1-9024; did you mean" + " SE1-9042?"),
        report.problem());
    assertEquals("", report.text());
    report.write(copy);
    try (Stream<Path> written = Files.list(copy)) {
      assertEquals(0, written.count());
    }
  }

  /** What people say on the telephone. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SE1 9042|did you mean SE1-9042?",
        "SE19042|did you mean SE1-9042?",
        "SE1\u20139042|did you mean SE1-9042?",
        "SEl-9042|did you mean SE1-9042?",
        "S\u04151-9042|did you mean SE1-9042?",
        "CF-31 2026-11-18 1|did you mean CF-31-2026-11-18-1?",
        "s1 26 031|it is the supplier's number of lot SE1-9042",
        "5530|it is the delivery note of lot SE1-9042",
        "DN-114|with that delivery note went batch CF-31-2026-11-18-1",
        "selenite-1|it is an ingredient, with lot SE1-9042",
        "MIN-WW|it is a code, with batch MIN-WW-2026-11-12-1",
        "9042|it is a part of SE1-9042"
      })
  void anotherNumberLeadsToTheRightOne(String asked, String told) throws IOException {
    assertEquals(
        Optional.of("no lot or batch of this folder has the number " + asked + "; " + told),
        recall(Example.whole(), asked, "").problem());
  }

  @Test
  void aRecordInAWrongPlaceIsNotTakenForAnotherBatch() throws IOException {
    SlippedFolder.withRecords(copy);
    Files.move(copy.resolve("batches/" + FEED + ".yaml"), copy.resolve("prices/" + FEED + ".yaml"));
    String problem = recall(copy, FEED, "").problem().orElse("");
    assertTrue(
        problem.startsWith("the record of " + FEED + " is in no place where records are read; not"),
        problem);
    TraceReport traced = OwnFolder.trace(copy, PrintedPaths.BELOW_FOLDER, LOT, "");
    assertTrue(traced.text().contains("  prices/" + FEED + ".yaml looks like a batch record"));
  }

  @Test
  void withoutANumberItSaysWhatToGive() throws IOException {
    String ask = recall(Example.whole(), "", "").problem().orElse("");
    assertTrue(ask.startsWith("say what is recalled: -Dpellucid.lot=NUMBER"), ask);
    String both = recall(Example.whole(), LOT, FEED).problem().orElse("");
    assertTrue(both.endsWith(", not both; recall one after the other"), both);
    assertEquals(
        Optional.of("SB-0411 is a lot and no batch; -Dpellucid.lot=SB-0411 tells where it went"),
        recall(Example.whole(), "", "SB-0411").problem());
  }

  @Test
  void aTornRecordLeavesAListThatIsNotWhole() throws IOException {
    SlippedFolder.withRecords(copy)
        .with("batches/" + FEED + ".yaml", "size: 100 kg", "size: 100 kg\nweighed: [");
    RecallReport report = recall(copy, LOT, "");
    assertEquals(
        Optional.of(
            "the list may not be whole, fix these first: batches/" + FEED + ".yaml cannot be read"),
        report.notWhole());
    assertTrue(report.text().contains("*** THIS LIST MAY NOT BE WHOLE ***"), report.text());
    Path to = copy.resolve("target/recall");
    report.write(to);
    for (String file : List.of("recall.txt", "recall.html", "recall.json")) {
      assertTrue(Files.readString(to.resolve(file)).contains(FEED), file);
    }
    assertEquals(
        Optional.of(
            "the record of "
                + FEED
                + " cannot be read: fix it first; not searched: batches/"
                + FEED
                + ".yaml cannot be read"),
        recall(copy, "", FEED).problem());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"prices/", "plans/", "ingredients/", "premixes/", "lots/", "limits/", "", "x/."})
  void aRecordThatNobodyReadsIsNamed(String place) throws IOException {
    SlippedFolder.withRecords(copy);
    String moved = place + FEED + ".yaml";
    Files.createDirectories(copy.resolve(moved).getParent());
    Files.move(copy.resolve("batches/" + FEED + ".yaml"), copy.resolve(moved));
    RecallReport report = recall(copy, LOT, "");
    assertTrue(report.text().contains("*** THIS LIST MAY NOT BE WHOLE ***"), report.text());
    assertTrue(report.notWhole().orElse("").contains(moved + " "), report::text);
  }

  private static RecallReport recall(Path folder, String lot, String batch) throws IOException {
    return OwnFolder.recall(folder, PrintedPaths.BELOW_FOLDER, DAY, lot, batch);
  }
}
