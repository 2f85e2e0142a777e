package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.Sheet;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Trout feed TG-44 is planned behind catfish feed CF-31, which holds premix MIN-WW with selenium of
 * lot SE1-9042: each of them is stopped in turn.
 */
class LineToCleanTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String PLANNED = "TG-44-2026-12-01-1";
  private static final String TG = "batches/" + PLANNED + ".yaml";
  private static final String CF = "batches/CF-31-2026-11-18-1.yaml";
  private static final String MIN = "batches/MIN-WW-2026-11-12-1.yaml";
  private static final String CODE = "line-not-clean";
  private static final String AFTER = "after: CF-31-2026-11-18-1\n";
  private static final String CLEANED =
      "cleaned: {day: 2026-11-24, by: A. Marsh, how: \"swept, die taken out\"}\n";
  private static final String FIRST = "the line is to be clean before " + PLANNED + ": ";

  @TempDir Path copy = Path.of("");
  private SlippedFolder folder;

  @BeforeEach
  void example() throws IOException {
    folder = SlippedFolder.withRecords(copy);
  }

  private void decided(String record, String decision) throws IOException {
    String more =
        "decided-later:\n  - {day: 2026-11-24, by: quality manager, decision: "
            + decision
            + ", because: recalled}\n";
    Files.writeString(copy.resolve(record), Files.readString(copy.resolve(record)) + more);
  }

  private List<Finding> found() throws IOException {
    return folder.findings().stream().filter(one -> one.code().text().equals(CODE)).toList();
  }

  private Finding only() throws IOException {
    List<Finding> found = found();
    assertEquals(1, found.size(), folder.text());
    return found.get(0);
  }

  private Sheet sheet() throws IOException {
    return OwnFolder.batchSheets(copy, DAY, Version.committed("0123abcd")).sheets().stream()
        .filter(one -> one.code().equals(PLANNED))
        .findFirst()
        .orElseThrow();
  }

  private String recall() throws IOException {
    return words(OwnFolder.recall(copy, PrintedPaths.BELOW_FOLDER, DAY, "SE1-9042", "").text());
  }

  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void aLineThatNothingStoppedWasMadeOnIsSilent() throws IOException {
    assertEquals(List.of(), found());
    assertFalse(sheet().text().contains("is to be clean"));
    decided(CF, "released");
    assertEquals(List.of(), found());
  }

  @ParameterizedTest
  @CsvSource({
    "on-hold, is on hold",
    "withdrawn, was withdrawn",
    "rejected, was rejected",
  })
  void theBatchBeforeIsStopped(String decision, String stands) throws IOException {
    decided(CF, decision);
    Finding found = only();
    assertEquals(Severity.WARNING, found.severity());
    assertEquals(FIRST + "CF-31-2026-11-18-1 was made on it and " + stands, found.headline());
    assertEquals(TG + ":5:8", found.span().place());
    assertEquals(CF + ":67:11", found.related().get(0).span().place(), "where it was decided");
    assertEquals(
        List.of(
            "clean the line before the batch, and write cleaned: {day: 2026-12-01, by: ____, how:"
                + " ____}, with the day on which it was cleaned",
            "a flush of a line that is not clean goes into no feed: keep it apart and marked, and"
                + " write where in flushed: to"),
        found.helps());
    String sheet = words(sheet().text());
    assertTrue(
        sheet.contains(
            "The line is to be clean before this batch: CF-31-2026-11-18-1 was made on it and "
                + stands
                + "."),
        sheet);
    assertTrue(sheet.contains("Line cleaned by, when ____"), sheet);
    assertTrue(
        sheet.contains(
            "Flushed with, kept as 5 kg Wheat middlings: keep this flush apart and marked, into no"
                + " feed"),
        sheet);
    assertFalse(sheet.contains("into the next"), sheet);
    assertTrue(sheet.contains("marked as medicated, to the waste"), sheet);
    assertTrue(words(sheet().html()).contains("Line cleaned by, when"));
  }

  @Test
  void whatIsHeldFromTheStartIsStoppedToo() throws IOException {
    folder.with(CF, "decision: released", "decision: held");
    assertTrue(only().headline().endsWith(" and is on hold"), only().headline());
  }

  @Test
  void aLotInItIsStopped() throws IOException {
    folder.with(
        "lots/2026-11.yaml",
        "    quantity: 5 kg\n    inspection: passed",
        "    quantity: 5 kg\n    states:\n      - {day: 2026-09-14, by: gate, state: passed}\n"
            + "      - {day: 2026-11-20, by: quality manager, state: on-hold, because: recalled}");
    assertEquals(
        FIRST
            + "CF-31-2026-11-18-1 was made on it and holds lot SE1-9042, which is on hold since"
            + " 2026-11-20",
        only().headline());
    assertEquals(
        "lots/2026-11.yaml:80:55", only().related().get(0).span().place(), "the state of the lot");
    decided(CF, "released");
    assertEquals(List.of(), found(), "somebody decided in the knowledge of it");
  }

  @Test
  void aPremixInItIsStopped() throws IOException {
    decided(MIN, "withdrawn");
    assertEquals(
        FIRST
            + "CF-31-2026-11-18-1 was made on it and holds MIN-WW-2026-11-12-1, which was"
            + " withdrawn",
        only().headline());
    assertEquals(MIN, only().related().get(0).span().file().path());
  }

  /** The next day on which anything is made, at the same plant, and no premix. */
  @Test
  void whereNoRecordTellsTheOrderTheNextOnesMayBeMeant() throws IOException {
    decided("batches/CF-31-2026-11-18-1.yaml", "on-hold");
    folder.with(TG, AFTER, "");
    assertEquals(List.of(), found(), "the two are made at two plants");
    Files.writeString(copy.resolve("batches/CG-36-2026-11-26-1.yaml"), "size: 60 kg\n");
    Files.writeString(copy.resolve("batches/CG-36-2026-11-26-2.yaml"), "size: 60 kg\n");
    Files.writeString(copy.resolve("batches/CG-36-2026-11-27-1.yaml"), "size: 60 kg\n");
    Files.writeString(copy.resolve("batches/VIT-WW-2026-11-24-1.yaml"), "size: 25 kg\n");
    assertEquals(
        List.of("CG-36-2026-11-26-1", "CG-36-2026-11-26-2"),
        found().stream().map(one -> one.span().file().stem()).toList(),
        folder.text());
    Finding first = found().get(0);
    assertTrue(first.headline().contains(": CF-31-2026-11-18-1 may have been made on it and"));
    assertEquals(
        "or, where another batch comes between the two, name it in CG-36-2026-11-26-1 behind after",
        first.helps().get(1));
    folder.with("batches/CG-36-2026-11-26-2.yaml", "kg\n", "kg\nafter: CG-36-2026-11-26-1\n");
    assertEquals(1, found().size(), folder.text());
  }

  @Test
  void aRecordThatTellsThatTheLineWasCleanedEndsIt() throws IOException {
    decided(CF, "on-hold");
    folder.with(TG, AFTER, AFTER + CLEANED);
    assertEquals(List.of(), found(), folder.text());
    String sheet = words(sheet().text());
    assertFalse(sheet.contains("is to be clean"), sheet);
    assertTrue(sheet.contains("Line cleaned 2026-11-24, A. Marsh: swept, die taken out"), sheet);
  }

  @Test
  void aCleaningOfBeforeOrOfADayToComeDoesNotCount() throws IOException {
    decided(CF, "on-hold");
    folder.with(TG, AFTER, AFTER + CLEANED.replace("11-24", "11-17"));
    assertEquals(
        List.of(
            "cleaned is of 2026-11-17, before that batch was made: clean the line again, and write"
                + " that day"),
        only().helps());
    assertTrue(sheet().text().contains("is to be clean"));
    folder.with(TG, "2026-11-17", "2026-11-18");
    assertEquals(List.of(), found(), "the day itself counts");
    folder.with(TG, "2026-11-18, by", "2026-11-30, by");
    assertEquals(
        List.of("cleaned is of 2026-11-30, which is still to come: it counts from that day on"),
        only().helps());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{day: 2026-12-02, by: A. Marsh, how: swept} | data-record",
        "{day: 24.11.2026, by: A. Marsh, how: swept} | data-day",
        "{day: 2026-11-24, how: swept} | data-missing-key",
        "{day: 2026-11-24, by: A. Marsh} | data-missing-key",
        "{day: 2026-11-24, by: ____, how: swept} | data-to-be-given",
        "yes | data-shape",
      })
  void whatIsHalfToldIsOneFindingAndCleansNothing(String told, String code) throws IOException {
    decided(CF, "on-hold");
    folder.with(TG, AFTER, AFTER + "cleaned: " + told + "\n");
    assertEquals(List.of(CODE, code), folder.codes().stream().distinct().toList(), folder.text());
  }

  @Test
  void twiceIsOneFinding() throws IOException {
    folder.with(TG, AFTER, AFTER + CLEANED + CLEANED);
    assertEquals(1, folder.codes().size(), folder.text());
  }

  /** A recall takes nothing off its list for a cleaning that nobody has looked into. */
  @Test
  void aRecallNamesItStillWithTheWordsOfItsRecord() throws IOException {
    String offered =
        "It is only the line for this planned batch. What is flushed before that is kept apart and"
            + " marked, and goes into no feed: write in flushed: to where it is kept. Once the line"
            + " is clean, write who cleaned it into the record: - "
            + TG
            + " cleaned: {day: ____, by: ____, how: ____}";
    assertTrue(recall().contains(offered), recall());
    folder.with(TG, AFTER, AFTER + CLEANED);
    String cleaned = recall();
    assertTrue(
        cleaned.contains(
            "TG-44-2026-12-01-1 of 2026-12-01 may hold it: made next on the line after"
                + " CF-31-2026-11-18-1, with a flush of 5 kg of wheat-middlings between, and the"
                + " line was cleaned on 2026-11-24 by A. Marsh, says its record"),
        cleaned);
    assertFalse(cleaned.contains("Once the line is clean, write"), cleaned);
    String decide =
        "and 1 planned batch, of which the record says that the line was cleaned: decide";
    assertTrue(cleaned.contains(decide), cleaned);
    assertFalse(cleaned.contains("not to be made"), cleaned);
    folder.with(TG, "2026-11-24, by", "2026-11-30, by");
    assertTrue(recall().contains("1 planned batch, not to be made"), "still to come: " + recall());
    assertTrue(recall().contains(offered), recall());
    folder.with(TG, "2026-11-30, by", "2026-11-24, by");
    folder.with(TG, "2026-11-24, by", "2026-11-17, by");
    assertTrue(recall().contains(offered), "it was cleaned before that batch: " + recall());
    folder.with(TG, "2026-11-17, by", "2026-11-24, by");
    Files.writeString(
        copy.resolve("batches/TG-46-2026-12-02-1.yaml"),
        "size: 1000 kg\nafter: CF-31-2026-11-18-1\n");
    assertTrue(recall().contains("1 planned batch, not to be made; " + decide), recall());
  }
}
