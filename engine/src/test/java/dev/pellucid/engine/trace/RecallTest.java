package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Recall.Left;
import dev.pellucid.engine.trace.Recall.Limit;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.Trace.Reason;
import dev.pellucid.engine.workspace.ReadFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lot of selenium is bad: what a recall of it tells, reckoned by hand. */
class RecallTest {
  private static final double GRAM = 1e-6;
  private static final String PREMIX = "P-1-2026-11-02-1";
  private static final String FEED = "F-1-2026-11-03-1";
  private static final String PART = "F-1-2026-11-04-1";
  private static final String FINES = "F-1-2026-11-05-1";
  private static final String NEXT = "F-2-2026-11-03-1";
  private static final String AFTER = "F-2-2026-11-06-1";
  private static final String PLANNED = "F-1-2026-12-01-1";

  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void store() throws IOException {
    text("ingredients/selenium.yaml", "name: Selenium\n");
    text("ingredients/maize.yaml", "name: Maize\n");
    text(
        "lots/all.yaml",
        """
        lots:
          - number: SE-1
            ingredient: selenium
            received: 2026-11-01
            quantity: 5 kg
            disposed: [{day: 2026-11-05, by: store, weight: 1 kg, because: torn}]
            counted: [{day: 2026-11-10, by: store, weight: 1.9 kg}]
          - {number: MZ-1, ingredient: maize, received: 2026-11-01, quantity: 900 kg, bin: B1}
          - {number: MZ-2, ingredient: maize, received: 2026-11-03, quantity: 900 kg, bin: B1}
        """);
    text("batches/" + PREMIX + ".yaml", batch(10, "SE-1, weight: 2 kg", "MZ-1, weight: 8 kg"));
    // 4 kg of the premix: 0.8 kg of selenium in 80 kg of its own, 5 kg of it fines.
    text(
        "batches/" + FEED + ".yaml",
        """
        size: 80 kg
        weighed:
          - {line: P-1, lot: %s, weight: 4 kg}
          - {line: maize, bin: B1, weight: 76 kg}
        bags: {full: 2, of: 25 kg, rest: 25 kg}
        fines: {weight: 5 kg, to: %s}
        samples:
          - {weight: 500 g, place: "shelf 4, box 2", until: 2027-05-18}
        release: {decision: released, by: lead, day: 2026-11-03}
        delivered:
          - {day: 2026-11-04, by: store, to: Withybeck, bags: 2, note: DN-1}
        returned:
          - {day: 2026-11-06, by: store, from: withybeck, bags: 1, because: wet}
        """
            .formatted(PREMIX, FINES));
    text(
        "batches/" + PART + ".yaml",
        """
        size: 50 kg
        after: %s
        weighed:
          - {line: maize, lot: MZ-2, weight: 50 kg}
        bags: {full: 2, of: 25 kg, rest: 10 kg, begun-with: {batch: %s, weight: 10 kg}}
        delivered:
          - {day: 2026-11-05, by: store, to: Hall Farm, bags: 1}
          - {day: 2026-11-07, by: store, to: Withybeck, weight: 10 kg}
        decided-later:
          - {day: 2026-11-08, by: lead, decision: on-hold, because: asked}
        """
            .formatted(NEXT, FEED));
    text("batches/" + FINES + ".yaml", "size: 50 kg\nclosed: yes\n");
    text(
        "batches/" + NEXT + ".yaml",
        """
        size: 50 kg
        after: %s
        flushed: {quantity: 6 kg, with: maize, to: the pigs}
        weighed:
          - {line: maize, lot: MZ-1, weight: 50 kg}
        """
            .formatted(FEED));
    text(
        "batches/" + AFTER + ".yaml",
        """
        size: 50 kg
        after: %s
        weighed:
          - {line: maize, lot: MZ-1, weight: 50 kg}
        """
            .formatted(NEXT));
    text(
        "batches/" + PLANNED + ".yaml",
        "size: 80 kg\nweighed:\n  - {line: P-1, lot: " + PREMIX + "}\n");
  }

  private static String batch(int size, String one, String other) {
    return "size: %s kg\nweighed:\n  - {line: selenium, lot: %s}\n  - {line: maize, lot: %s}\n"
        .formatted(size, one, other);
  }

  private void text(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Tracer tracer() throws IOException {
    ReadFolder read = ReadFolder.of(Texts.at(folder));
    assertEquals(
        List.of(),
        read.findings().stream()
            .filter(one -> one.span().file().path().matches("(lots|batches)/.*"))
            .toList());
    Map<String, List<String>> lines =
        Map.of("P-1", List.of("selenium", "maize"), "F-2", List.of("maize"));
    MadeBy made = MadeBy.atOnePlant(lines, "P-1");
    return new Tracer(read.tables(), made, made, none -> Optional.empty(), DAY);
  }

  private Answer recall(String number) throws IOException {
    return tracer().recall(number);
  }

  private static Affected of(Answer answer, String number) {
    return answer.batches().stream()
        .filter(one -> one.batch().number().equals(number))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> numbers(Stream<Affected> of) {
    return of.map(one -> one.batch().number()).toList();
  }

  @Test
  @DisplayName("what surely holds it, through a premix, fines and a part bag, in kg")
  void certain() throws IOException {
    Answer answer = recall("se-1");
    assertEquals(List.of(PREMIX, FEED, PART, FINES, PLANNED), numbers(answer.certain().stream()));
    assertEquals(2, of(answer, PREMIX).kg().told(), GRAM);
    assertEquals(0.8, of(answer, FEED).kg().told(), GRAM);
    // Of the 80 kg that were made 75 are in bags and 5 are fines.
    assertEquals(0.8 * 10 / 80, of(answer, PART).kg().told(), GRAM);
    assertEquals(0.8 * 5 / 80, of(answer, FINES).kg().told(), GRAM);
    assertFalse(of(answer, PLANNED).kg().whole());
  }

  @Test
  @DisplayName("the next on the line may hold it, the one after that is named as not followed")
  void possible() throws IOException {
    Answer answer = recall("SE-1");
    Affected next = of(answer, NEXT);
    assertFalse(next.certain());
    assertTrue(next.onLine());
    assertEquals(Reason.NEXT_ON_LINE, next.why().get(0).reason());
    assertEquals("6 kg of maize", next.why().get(0).names());
    assertEquals(List.of(FEED), next.why().get(0).of());
    assertFalse(numbers(answer.batches().stream()).contains(AFTER));
    assertTrue(
        answer.notFollowed().stream()
            .anyMatch(
                one -> one.limit() == Limit.SECOND_ON_LINE && one.numbers().equals(List.of(AFTER))),
        answer.notFollowed().toString());
    assertTrue(
        answer.notFollowed().stream()
            .anyMatch(
                one ->
                    one.limit() == Limit.TOLD_IN_WORDS
                        && one.words().equals("flush, 6 kg: the pigs")),
        answer.notFollowed().toString());
  }

  @Test
  void theBooksOfTheLotAddUpButForAGap() throws IOException {
    Recall.Balance balance = recall("SE-1").balance();
    assertEquals(5, balance.had().orElseThrow(), GRAM);
    assertEquals(2, balance.used().told(), GRAM);
    assertEquals(1, balance.disposed(), GRAM);
    assertEquals(1.9, balance.store().orElseThrow().amount().kg(), GRAM);
    assertEquals(0.1, balance.gap().orElseThrow().most(), GRAM);
    assertEquals(0.02, balance.gapShare().orElseThrow().most(), GRAM);
  }

  @Test
  void theBooksOfAFeedAddUp() throws IOException {
    Recall.Balance balance = of(recall("SE-1"), FEED).balance();
    assertEquals(75, balance.had().orElseThrow(), GRAM);
    assertEquals(10, balance.used().told(), GRAM);
    assertEquals(50, balance.delivered(), GRAM);
    assertEquals(25, balance.returned(), GRAM);
    assertEquals(0.5, balance.samples(), GRAM);
    // 75 - 10 - 50 + 25 - 0.5.
    assertEquals(39.5, balance.store().orElseThrow().amount().kg(), GRAM);
    assertEquals(1, balance.store().orElseThrow().amount().bags());
    assertTrue(balance.gap().isEmpty());
  }

  @Test
  void whoeverGotAnyIsCalled() throws IOException {
    List<Call> calls = recall("SE-1").calls();
    assertEquals(List.of("Withybeck", "Hall Farm"), calls.stream().map(Call::party).toList());
    assertEquals(new Recall.Amount(1, 35), calls.get(0).certain());
    assertEquals(new Recall.Amount(1, 25), calls.get(1).certain());
    assertEquals(2, calls.get(0).sent().size());
    assertEquals("DN-1", calls.get(0).sent().get(0).moved().note());
    assertEquals("wet", calls.get(0).back().get(0).moved().note());
  }

  @Test
  void whatIsLeftIsStopped() throws IOException {
    Recall.Stop stop = recall("SE-1").stop();
    assertEquals(
        List.of("SE-1", PREMIX, FEED, NEXT),
        stop.hold().stream().map(Left::thing).map(Trace.Thing::number).toList());
    assertEquals(
        List.of(PART), stop.held().stream().map(Left::thing).map(Trace.Thing::number).toList());
    assertEquals(List.of(PLANNED), numbers(stop.planned().stream()));
  }

  @Test
  void samplesAreToldWithTheirPlace() throws IOException {
    Recall.Retained sample = of(recall("SE-1"), FEED).samples().get(0);
    assertEquals("shelf 4, box 2", sample.place());
    assertEquals("2027-05-18", sample.until().orElseThrow().toString());
  }

  @Test
  @DisplayName("of a bin that was topped up every lot in it is possible, at most so much")
  void aBin() throws IOException {
    Answer answer = recall("MZ-2");
    Affected feed = of(answer, FEED);
    assertFalse(feed.certain());
    assertEquals(Reason.FROM_BIN, feed.why().get(0).reason());
    assertEquals("B1", feed.why().get(0).names());
    assertEquals(76, feed.most().told(), GRAM);
    // With the flush, whose lot is not told, and three lines that name a lot of the bin.
    assertEquals(76 + 6 + 150, answer.balance().unnamed().told(), GRAM);
    assertEquals(900, answer.balance().store().orElseThrow().amount().kg(), GRAM);
    assertEquals(900 - 76 - 6 - 150, answer.balance().store().orElseThrow().least(), GRAM);
    // The record names it, and the other lay in the bin with it.
    Affected part = of(answer, PART);
    assertFalse(part.certain());
    assertTrue(
        part.why().stream().anyMatch(one -> one.reason() == Reason.NAMED_IN_BIN),
        part.why().toString());
    assertEquals(0, answer.balance().used().told(), GRAM);
    // The premix was made before it came: only the other lot was in the bin.
    assertTrue(of(recall("MZ-1"), PREMIX).certain());
    assertFalse(numbers(answer.batches().stream()).contains(PREMIX));
    assertEquals("B1", answer.stop().bins().get(0).bin());
    assertEquals(List.of("MZ-1", "MZ-2"), answer.stop().bins().get(0).lots());
  }

  @Test
  void aBinThatWasEmptiedTellsThemApart() throws IOException {
    Path lots = folder.resolve("lots/all.yaml");
    Files.writeString(lots, Files.readString(lots) + "bins:\n  - {bin: B1, emptied: 2026-11-02}\n");
    Answer answer = recall("MZ-1");
    assertTrue(
        answer.steps().stream()
            .noneMatch(one -> one.kind() == Kind.SAME_BIN && one.to().equals(FEED)));
    // A record that names it all the same is not believed, and not passed over.
    assertFalse(of(answer, NEXT).certain());
    assertEquals(List.of(), answer.stop().bins());
    assertTrue(of(recall("MZ-2"), FEED).certain());
  }

  @Test
  void theStepsLeadFromTheLotToEachBatch() throws IOException {
    List<Step> steps = recall("SE-1").steps();
    assertEquals(
        List.of(
            "SE-1>" + PREMIX + " WEIGHED",
            PREMIX + ">" + FEED + " PREMIX",
            FEED + ">" + NEXT + " NEXT_ON_LINE",
            FEED + ">" + PART + " PART_BAG",
            FEED + ">" + FINES + " FINES",
            PREMIX + ">" + PLANNED + " PREMIX"),
        steps.stream()
            .filter(one -> one.kind() != Kind.ORDER_NOT_TOLD)
            .map(one -> one.from() + ">" + one.to() + " " + one.kind())
            .toList());
  }

  @Test
  @DisplayName("back from a batch to all that is in it or may be")
  void origins() throws IOException {
    Recall.Origins origins = tracer().origins(PART);
    assertEquals(
        List.of(FEED, PREMIX, "MZ-1", "SE-1"),
        origins.back().holds().stream().map(one -> one.thing().number()).toList());
    assertTrue(origins.may().stream().anyMatch(one -> one.number().equals("MZ-2")));
  }

  @Test
  @DisplayName("who took of a batch may have got the part bag that it filled up, or not")
  void aPartBagIsNotSurelyInWhatIsTaken() throws IOException {
    text(
        "batches/F-2-2026-11-09-1.yaml",
        "size: 50 kg\nafter: "
            + AFTER
            + "\nweighed:\n  - {line: rework F-1, lot: "
            + PART
            + ", weight: 5 kg}\n  - {line: maize, lot: MZ-2, weight: 45 kg}\n");
    Affected took = of(recall("SE-1"), "F-2-2026-11-09-1");
    assertFalse(took.certain());
    assertFalse(took.onLine());
    // At most half of the 10 kg of the part bag, 0.1 kg of selenium.
    assertEquals(0.05, took.most().told(), GRAM);
    // What the line may have held before is not told.
    assertFalse(took.most().whole());
  }
}
