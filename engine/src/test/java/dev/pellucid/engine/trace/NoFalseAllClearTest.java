package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.records.RecordsTogether;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Left;
import dev.pellucid.engine.trace.Recall.Limit;
import dev.pellucid.engine.trace.Trace.Reason;
import dev.pellucid.engine.trace.Trace.Unknown;
import dev.pellucid.engine.workspace.ReadFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Slips in records by which a recall could say of a batch that it is clear, and it is not. */
class NoFalseAllClearTest {
  private static final String BATCH = "F-1-2026-11-05-1";
  private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void data() throws IOException {
    text("ingredients/maize.yaml", "name: Maize\nformerly: [corn]\n");
    text("ingredients/salt.yaml", "name: Salt\n");
  }

  private void text(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private void lots(String... lots) throws IOException {
    text("lots/all.yaml", "lots:\n  - " + String.join("\n  - ", lots) + "\n");
  }

  private static String lot(String number, String of, String kg, String more) {
    return "{number: %s, ingredient: %s, received: 2026-11-01, quantity: %s kg%s}"
        .formatted(number, of, kg, more);
  }

  private void batch(String text) throws IOException {
    text("batches/" + BATCH + ".yaml", "size: 50 kg\n" + text);
  }

  private Tracer tracer(LocalDate today) throws IOException {
    ReadFolder read = ReadFolder.of(Texts.at(folder));
    assertEquals(
        List.of(),
        read.findings().stream()
            .filter(one -> one.span().file().path().matches("(lots|batches)/.*"))
            .filter(one -> !one.code().text().equals("data-unknown-lot"))
            .toList());
    Map<String, List<String>> lines = Map.of("F-1", List.of("maize"));
    MadeBy made = MadeBy.atOnePlant(lines);
    return new Tracer(read.tables(), made, made, none -> Optional.empty(), today);
  }

  private Affected of(String lot) throws IOException {
    Answer answer = tracer(DAY).recall(lot);
    assertEquals(1, answer.batches().size(), lot);
    return answer.batches().get(0);
  }

  private boolean isClear(String lot) throws IOException {
    return tracer(DAY).recall(lot).batches().isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bags: {full: 2, of: 25 kg}",
        "fines: {weight: 1 kg, to: the pigs}",
        "samples: [{weight: 500 g, place: shelf 4}]",
        "water: 3 kg",
        "drying: {before: 20 %, readings: [{at: 3 h, moisture: 9 %}]}",
        "durability: {before: 500 g, after: 480 g}",
        "deviations: [turned late]",
        "release: {decision: held, by: lead, day: 2026-11-05}",
        "results: [{day: 2026-11-09, by: lab, moisture: 9 %}]",
        "delivered: [{day: 2026-11-06, by: store, to: Withybeck, weight: 5 kg}]",
        "returned: [{day: 2026-11-06, by: store, from: Withybeck, weight: 5 kg, because: wet}]",
        "disposed: [{day: 2026-11-06, by: store, weight: 5 kg, because: wet}]",
        "counted: [{day: 2026-11-06, by: store, weight: 5 kg}]",
        "complaints: [{day: 2026-11-06, by: store, from: Withybeck, about: dust}]",
        "decided-later: [{day: 2026-11-06, by: lead, decision: on-hold, because: asked}]",
        "closed: yes"
      })
  @DisplayName("a batch that tells no weight and anything else of what was made was made")
  void madeWithoutWeights(String told) throws IOException {
    lots(lot("MZ-1", "maize", "900", ""));
    batch("weighed: [{line: maize, lot: MZ-1}]\n" + told + "\n");
    Affected batch = of("MZ-1");
    assertFalse(batch.isPlanned());
    assertFalse(batch.kg().whole());
    assertEquals(0, batch.kg().told());
    Answer answer = tracer(DAY).recall("MZ-1");
    assertTrue(answer.stop().planned().isEmpty());
    assertFalse(answer.balance().used().whole());
    assertTrue(answer.balance().planned().whole());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "after: F-1-2026-11-04-1",
        "flushed: {quantity: 5 kg, with: maize, to: the pigs}",
        "rebalanced: {day: 2026-11-04, by: lead, shares: [{line: maize, share: 90 %}]}",
        "made-from: {commit: abc1234}"
      })
  @DisplayName("what is told before a batch is made leaves it planned")
  void planned(String told) throws IOException {
    lots(lot("MZ-1", "maize", "900", ""));
    text("batches/F-1-2026-11-04-1.yaml", "size: 50 kg\nweighed: [{line: maize, lot: X-1}]\n");
    text(
        "batches/" + BATCH + ".yaml",
        "size: 50 kg\nweighed: [{line: maize, lot: MZ-1}]\n" + told + "\n");
    ReadFolder read = ReadFolder.of(Texts.at(folder));
    assertTrue(Objects.requireNonNull(read.tables().batches().get(BATCH)).isPlanned());
  }

  @ParameterizedTest
  @CsvSource({"B 4,B4", "B4,b  4", "silo 1,SILO1", "Silo  1,silo 1"})
  @DisplayName("bins that differ by blanks and capitals alone are one")
  void oneBin(String ofLot, String ofLine) throws IOException {
    lots(
        lot("MZ-1", "maize", "900", ", bin: " + ofLot),
        lot("MZ-2", "maize", "900", ", bin: " + ofLine),
        lot("MZ-3", "maize", "900", ", bin: B5"));
    batch("weighed: [{line: maize, bin: " + ofLine + ", weight: 50 kg}]\n");
    assertFalse(of("MZ-1").certain());
    assertFalse(of("MZ-2").certain());
    assertTrue(isClear("MZ-3"));
    ReadFolder read = ReadFolder.of(Texts.at(folder));
    RecordsTogether.look(
        read.tables(), DAY, one -> assertEquals("", one.headline(), "no bin is empty"));
  }

  @Test
  @DisplayName("a bin was emptied, however its name is written there")
  void emptied() throws IOException {
    text(
        "lots/all.yaml",
        """
        lots:
          - {number: MZ-1, ingredient: maize, received: 2026-11-01, quantity: 9 kg, bin: B 4}
          - {number: MZ-2, ingredient: maize, received: 2026-11-04, quantity: 90 kg, bin: B4}
        bins:
          - {bin: b4, emptied: 2026-11-03}
        """);
    batch("weighed: [{line: maize, bin: b 4, weight: 50 kg}]\n");
    assertTrue(isClear("MZ-1"));
    assertTrue(of("MZ-2").certain());
  }

  @Test
  @DisplayName("of a premix that no record tells may be what it is made of")
  void ofAPremixWithoutRecord() throws IOException {
    lots(lot("SA-1", "salt", "900", ""), lot("MZ-1", "maize", "900", ""));
    batch("weighed: [{line: maize, lot: MZ-1, weight: 45 kg}, {line: P-1, weight: 5 kg}]\n");
    MadeBy made =
        MadeBy.atOnePlant(
            Map.of("F-1", List.of("maize", "P-1"), "P-1", List.of("P-2"), "P-2", List.of("salt")),
            "P-1",
            "P-2");
    Answer answer =
        new Tracer(
                ReadFolder.of(Texts.at(folder)).tables(), made, made, none -> Optional.empty(), DAY)
            .recall("SA-1");
    assertEquals(Reason.NO_RECORD, answer.batches().get(0).why().get(0).reason());
  }

  @ParameterizedTest
  @CsvSource({"lot: MZ-9", "'lot: MZ-3, bin: B7'"})
  @DisplayName("a lot that was not there is another one")
  void notThere(String named) throws IOException {
    text(
        "lots/all.yaml",
        """
        lots:
          - {number: MZ-1, ingredient: maize, received: 2026-11-01, quantity: 90 kg}
          - {number: MZ-3, ingredient: maize, received: 2026-11-01, quantity: 90 kg, bin: B7}
          - {number: MZ-9, ingredient: maize, received: 2026-12-09, quantity: 90 kg}
        bins:
          - {bin: B7, emptied: 2026-11-02}
        """);
    batch("weighed: [{line: maize, " + named + ", weight: 50 kg}]\n");
    assertEquals(Reason.NOT_THERE, of("MZ-1").why().get(0).reason());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Maize", "MAIZE", "Corn", "rework maize", "Rework MAIZE"})
  @DisplayName("a line is of what it names, whatever its capitals")
  void capitals(String line) throws IOException {
    lots(lot("MZ-1", "maize", "900", ""), lot("SA-1", "salt", "900", ""));
    batch(
        "weighed:\n  - {line: maize, lot: MZ-2, weight: 40 kg}\n  - {line: %s, weight: 10 kg}\n"
            .formatted(line));
    assertFalse(of("MZ-1").certain());
    assertTrue(isClear("SA-1"));
    assertTrue(tracer(DAY).ofNothing(code -> false).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ", lot: SA-1", ", lot: nowhere", ", bin: B4"})
  @DisplayName("a line of nothing is told, for it may be of any lot")
  void ofNothing(String told) throws IOException {
    lots(lot("MZ-1", "maize", "900", ""), lot("SA-1", "salt", "900", ", bin: B4"));
    batch(
        "weighed:\n  - {line: maize, lot: MZ-1, weight: 40 kg}\n  - {line: Maiz%s, weight: 9 kg}\n"
            .formatted(told));
    List<Unknown> lines = tracer(DAY).ofNothing(code -> false);
    assertEquals(
        List.of(BATCH + " Maiz"),
        lines.stream().map(one -> one.batch() + " " + one.line()).toList());
    assertTrue(tracer(DAY).ofNothing("maiz"::equalsIgnoreCase).isEmpty());
  }

  @Test
  @DisplayName("what was decided before the release is not the last word")
  void older() throws IOException {
    lots(lot("MZ-1", "maize", "900", ""));
    String weighed = "weighed: [{line: maize, lot: MZ-1, weight: 50 kg}]\n";
    String held = "decided-later: [{day: %s, by: lead, decision: on-hold, because: asked}]\n";
    String release = "release: {decision: released, by: lead, day: 2026-11-08}\n";
    batch(weighed + release + held.formatted("2026-11-07"));
    assertEquals("released", of("MZ-1").state().word());
    assertEquals(List.of("MZ-1", BATCH), hold());
    batch(weighed + release + held.formatted("2026-11-08"));
    assertEquals("on-hold", of("MZ-1").state().word());
    assertEquals(List.of("MZ-1"), hold());
  }

  private List<String> hold() throws IOException {
    return tracer(DAY).recall("MZ-1").stop().hold().stream()
        .map(Left::thing)
        .map(Trace.Thing::number)
        .toList();
  }

  @Test
  @DisplayName("what is decided for a day to come does not count yet, and is told")
  void ahead() throws IOException {
    text(
        "lots/all.yaml",
        """
        lots:
          - number: MZ-1
            ingredient: maize
            received: 2026-11-01
            quantity: 900 kg
            states:
              - {day: 2026-11-02, by: lab, state: passed}
              - {day: 2026-11-21, by: lab, state: on-hold, because: asked}
        """);
    batch(
        """
        weighed: [{line: maize, lot: MZ-1, weight: 50 kg}]
        release: {decision: released, by: lead, day: 2026-11-08}
        decided-later: [{day: 2026-12-20, by: lead, decision: on-hold, because: asked}]
        """);
    Answer answer = tracer(DAY).recall("MZ-1");
    assertEquals("passed", answer.state().word());
    assertEquals("released", of("MZ-1").state().word());
    assertEquals(List.of("MZ-1", BATCH), hold());
    assertEquals(
        List.of("[MZ-1] on-hold from 2026-11-21", "[" + BATCH + "] on-hold from 2026-12-20"),
        answer.notFollowed().stream()
            .filter(one -> one.limit() == Limit.DECIDED_AHEAD)
            .map(one -> one.numbers() + " " + one.words())
            .toList());
    assertEquals("on-hold", tracer(LocalDate.of(2026, 11, 21)).recall("MZ-1").state().word());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "900|''|true",
        "50|''|true",
        "49|''|false",
        "900|, returned: [{day: 2026-11-04, by: me, weight: 900 kg, because: wet}]|false",
        "900|, disposed: [{day: 2026-11-05, by: me, weight: 851 kg, because: wet}]|false",
        "900|, disposed: [{day: 2026-11-06, by: me, weight: 900 kg, because: wet}]|true",
        "900|, corrections: [{day: 2026-11-04, by: me, less: 860 kg, because: torn}]|false",
        "900|, counted: [{day: 2026-11-04, by: me, weight: 0 kg}]|false",
        "9|, counted: [{day: 2026-11-04, by: me, weight: 60 kg}]|true"
      })
  @DisplayName("the one lot of a bin is certain where the books can have had it")
  void books(String kg, String moved, boolean certain) throws IOException {
    lots(lot("MZ-1", "maize", kg, ", bin: B4" + moved), lot("MZ-2", "maize", "900", ""));
    batch("weighed: [{line: maize, bin: B4, weight: 50 kg}]\n");
    assertEquals(certain, of("MZ-1").certain());
    assertEquals(certain, isClear("MZ-2"));
    if (!certain) {
      assertEquals(Reason.BIN_SHORT, of("MZ-2").why().get(0).reason());
    }
  }

  @ParameterizedTest
  @CsvSource({"04,860,false", "05,851,false", "05,850,true", "06,900,true"})
  @DisplayName("what others name of it before or on the day is gone")
  void named(String day, String kg, boolean certain) throws IOException {
    lots(lot("MZ-1", "maize", "900", ", bin: B4"), lot("MZ-2", "maize", "900", ""));
    text(
        "batches/F-2-2026-11-" + day + "-1.yaml",
        "size: 900 kg\nafter: X-1-2026-01-01-1\nweighed:\n"
            + "  - {line: maize, lot: MZ-1, weight: %s kg}\n".formatted(kg));
    text("batches/X-1-2026-01-01-1.yaml", "size: 9 kg\nclosed: yes\n");
    batch("after: X-1-2026-01-01-1\nweighed: [{line: maize, bin: B4, weight: 50 kg}]\n");
    boolean found =
        tracer(DAY).recall("MZ-1").certain().stream()
            .anyMatch(one -> one.batch().number().equals(BATCH));
    assertEquals(certain, found);
  }

  @Test
  @DisplayName("a bin with a lot of something else proves nothing")
  void ofAnother() throws IOException {
    lots(lot("SA-1", "salt", "900", ", bin: B4"), lot("MZ-2", "maize", "900", ""));
    batch("weighed: [{line: maize, bin: B4, weight: 50 kg}]\n");
    assertFalse(of("SA-1").certain());
    assertFalse(of("MZ-2").certain());
    assertEquals(Reason.BIN_EMPTY, of("MZ-2").why().get(0).reason());
  }
}
