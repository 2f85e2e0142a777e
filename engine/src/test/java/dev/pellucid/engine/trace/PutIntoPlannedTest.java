package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fines, and a flush, of a batch that is stopped, which other records put into a batch. */
class PutIntoPlannedTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String CF = "CF-31-2026-11-18-1";
  private static final String TG = "TG-44-2026-12-01-1";
  private static final String CG = "CG-36-2026-12-02-1";
  private static final String BAGS = "bags: {full: 3, of: 25 kg, rest: 21.9 kg}\n";
  private static final String WORDS = "to: into the next carp or catfish feed";

  @TempDir Path copy = Path.of("");
  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(copy);
    record(CG, "size: 60 kg\n");
    Files.writeString(
        file(CF),
        Files.readString(file(CF))
            + "decided-later:\n  - {day: 2026-11-24, by: quality manager, decision: on-hold, because:"
            + " recalled}\n");
  }

  private Path file(String number) {
    return copy.resolve("batches/" + number + ".yaml");
  }

  private void record(String number, String text) throws IOException {
    Files.writeString(file(number), text);
  }

  private void fines(String to) throws IOException {
    folder.with(
        "batches/" + CF + ".yaml", BAGS, BAGS + "fines: {weight: 0.4 kg, to: " + to + "}\n");
  }

  private void flush(String to) throws IOException {
    folder.with("batches/" + TG + ".yaml", WORDS, "to: " + to);
  }

  private List<Finding> of(String code) throws IOException {
    return folder.findings().stream().filter(one -> one.code().text().equals(code)).toList();
  }

  private Finding only(String code) throws IOException {
    List<Finding> found = of(code);
    assertEquals(1, found.size(), folder.text());
    return found.get(0);
  }

  private boolean hasSheet() throws IOException {
    return OwnFolder.batchSheets(copy, DAY, Version.committed("0123abcd")).sheets().stream()
        .anyMatch(one -> one.code().equals(CG));
  }

  private String recall() throws IOException {
    return OwnFolder.recall(copy, PrintedPaths.BELOW_FOLDER, DAY, CF, "")
        .text()
        .replaceAll("\\s+", " ");
  }

  private static List<String> places(Finding finding) {
    return finding.related().stream().map(one -> one.span().place()).toList();
  }

  @Test
  void whereNothingIsPutInNothingIsSaid() throws IOException {
    fines("into the bin for pigs");
    assertEquals(List.of(), of("lot-not-released"));
    assertTrue(hasSheet());
    assertFalse(recall().contains("Keep the fines"), recall());
  }

  @Test
  void finesOfABatchOnHoldAreAnErrorOfThePlannedBatch() throws IOException {
    fines(CG);
    Finding found = only("lot-not-released");
    assertEquals(Severity.ERROR, found.severity());
    assertEquals("batches/" + CG + ".yaml:1:7", found.span().place());
    assertEquals(
        "batch " + CF + " was put on hold by quality manager, and its fines go into " + CG,
        found.headline());
    assertEquals(
        List.of("batches/" + CF + ".yaml:68:11", "batches/" + CF + ".yaml:51:29"), places(found));
    assertEquals(
        List.of("keep these fines out, and write where they are now in fines: to of " + CF),
        found.helps());
    assertFalse(hasSheet());
  }

  @Test
  void theRemedyEndsIt() throws IOException {
    fines("on shelf 9");
    assertEquals(List.of(), of("lot-not-released"));
    assertTrue(hasSheet());
  }

  @Test
  void releasedAgainTheyMayGoIn() throws IOException {
    fines(CG);
    folder.with("batches/" + CF + ".yaml", "decision: on-hold", "decision: released");
    assertEquals(List.of(), of("lot-not-released"));
    assertTrue(hasSheet());
  }

  @Test
  void finesThatAreWeighedTooAreToldOnce() throws IOException {
    fines(CG);
    Path recipe = copy.resolve("catfish/CG-36.recipe");
    String text = Files.readString(recipe);
    Files.writeString(recipe, text.replaceFirst("\nmix\n", "\nmix\n  rework CF-31   0.50 %\n"));
    record(CG, "size: 60 kg\nweighed:\n  - {line: rework CF-31, lot: " + CF + "}\n");
    assertEquals(
        "batches/" + CG + ".yaml:3:31", only("lot-not-released").span().place(), folder.text());
  }

  @Test
  void aBatchThatIsMadeIsToldToBeHeld() throws IOException {
    String made = "CG-36-2026-11-20-1";
    record(made, "size: 60 kg\nbags: {full: 2, of: 25 kg, rest: 5 kg}\n");
    fines(made);
    assertEquals(List.of(), of("lot-not-released"), folder.text());
    Finding found = only("lot-held-later");
    assertEquals(Severity.WARNING, found.severity());
    assertEquals("batches/" + made + ".yaml", found.span().file().path());
    assertEquals(
        "batch " + CF + ", whose fines are in it, is on hold since 2026-11-24", found.headline());
    assertEquals(
        List.of("batches/" + CF + ".yaml:68:11", "batches/" + CF + ".yaml:51:29"), places(found));
  }

  @Test
  void aLotInTheFinesIsToldOfTheBatchThatGotThem() throws IOException {
    String made = "CG-36-2026-11-20-1";
    record(made, "size: 60 kg\nbags: {full: 2, of: 25 kg, rest: 5 kg}\n");
    fines(made);
    folder.with("batches/" + CF + ".yaml", "decision: on-hold", "decision: released");
    folder.with(
        "lots/2026-11.yaml",
        "    quantity: 5 kg\n    inspection: passed",
        "    quantity: 5 kg\n    states:\n      - {day: 2026-09-14, by: gate, state: passed}\n"
            + "      - {day: 2026-11-25, by: quality manager, state: on-hold, because: recalled}");
    assertTrue(
        of("lot-held-later").stream()
            .filter(one -> one.span().file().path().contains(made))
            .anyMatch(
                one ->
                    one.headline()
                        .equals(
                            "lot SE1-9042, which came through CF-31, MIN-WW, is on hold since"
                                + " 2026-11-25")),
        folder.text());
  }

  @Test
  void theFlushAfterABatchOnHoldIsKeptOut() throws IOException {
    flush(CG);
    Finding found = only("lot-not-released");
    assertEquals(
        "batch "
            + CF
            + " was put on hold by quality manager, and the flush that was run after it goes into "
            + CG,
        found.headline());
    assertEquals("batches/" + TG + ".yaml:6:54", places(found).get(1));
    assertEquals(
        "keep this flush out and marked, and write where it is kept in flushed: to of " + TG,
        found.helps().get(0));
    assertFalse(hasSheet());
    assertTrue(
        recall()
            .contains(
                "a flush that was run after "
                    + CF
                    + " was put into it; keep out what was put into it, and write where that is"
                    + " now"),
        recall());
  }

  @Test
  void aFlushOfACleanLineTakesNothingAlong() throws IOException {
    flush(CG);
    String after = "after: " + CF + "\n";
    folder.with(
        "batches/" + TG + ".yaml",
        after,
        after + "cleaned: {day: 2026-11-25, by: A. Marsh, how: swept}\n");
    assertEquals(List.of(), of("lot-not-released"));
    folder.with("batches/" + TG + ".yaml", "{day: 2026-11-25", "{day: 2026-11-26");
    only("lot-not-released");
  }

  @Test
  void aRecallTellsWhichRecordPutThemIn() throws IOException {
    fines(CG);
    String recall = recall();
    assertTrue(
        recall.contains(
            CG
                + " of 2026-12-02 would hold 0.4 kg of it: fines of "
                + CF
                + " were put into it: batches/"
                + CF
                + ".yaml; keep them out and write where they are now"),
        recall);
    assertFalse(recall.contains("its record names it"), recall);
    assertTrue(
        recall.contains(
            "Keep the fines of "
                + CF
                + " out of "
                + CG
                + ". Write where they are now into this record, and leave their weight as it is: -"
                + " batches/"
                + CF
                + ".yaml fines: {weight: ____, to: ____}"),
        recall);
  }

  @Test
  void onlyOneBatchComesNextOnALine() throws IOException {
    record("TG-46-2026-12-02-1", "size: 1000 kg\nafter: " + CF + "\n");
    Finding found = only("followed-twice");
    assertEquals(Severity.WARNING, found.severity());
    assertEquals(
        CF + " is followed by two batches on its line, " + TG + " and TG-46-2026-12-02-1",
        found.headline());
    assertEquals("batches/TG-46-2026-12-02-1.yaml:2:8", found.span().place());
    folder.with("batches/TG-46-2026-12-02-1.yaml", CF, TG);
    assertEquals(List.of(), of("followed-twice"), folder.text());
  }

  @Test
  void atTwoPlantsBothCanBeRight() throws IOException {
    record(CG, "size: 60 kg\nafter: " + CF + "\n");
    assertEquals(List.of(), of("followed-twice"), folder.text());
  }
}
