package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Limit;
import dev.pellucid.engine.trace.Recall.NotFollowed;
import dev.pellucid.engine.workspace.ReadFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A batch with a bad lot is made first; which batches may have what it left on the line? */
class LineOrderTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 20);
  private static final String BAD = "F-1-2026-03-02-1";

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void badBatch() throws IOException {
    text("ingredients/maize.yaml", "name: Maize\n");
    text("ingredients/pulse.yaml", "name: Pulse\n");
    text(
        "lots/all.yaml",
        """
        lots:
          - {number: BAD, ingredient: maize, received: 2026-03-01, quantity: 900 kg}
          - {number: GOOD, ingredient: maize, received: 2026-03-01, quantity: 900 kg}
        """);
    made(BAD, "BAD", "");
  }

  private void text(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private void made(String number, String lot, String more) throws IOException {
    String line = "weighed:\n  - {line: maize, lot: " + lot + ", weight: 50 kg}\n";
    text("batches/" + number + ".yaml", "size: 50 kg\n" + more + line);
  }

  private void made(String number) throws IOException {
    made(number, "GOOD", "");
  }

  private void planned(String number, String more) throws IOException {
    String line = "weighed:\n  - {line: maize, lot: GOOD}\n";
    text("batches/" + number + ".yaml", "size: 50 kg\n" + more + line);
  }

  private Answer recall() throws IOException {
    List<String> maize = List.of("maize");
    MadeBy made =
        new MadeBy(
            Map.of("F-1", maize, "F-2", maize, "P-1", maize, "G-1", maize),
            Map.of("F-1", "shed", "F-2", "shed", "P-1", "shed", "G-1", "annex"),
            Set.of("P-1"));
    return new Tracer(
            ReadFolder.of(Texts.at(folder)).tables(), made, made, none -> Optional.empty(), TODAY)
        .recall("BAD");
  }

  private void onLine(String... numbers) throws IOException {
    assertEquals(
        Set.of(numbers),
        recall().batches().stream()
            .filter(Affected::onLine)
            .map(one -> one.batch().number())
            .collect(Collectors.toSet()));
  }

  private List<String> told(Limit limit) throws IOException {
    return recall().notFollowed().stream()
        .filter(one -> one.limit() == limit)
        .map(NotFollowed::numbers)
        .flatMap(List::stream)
        .toList();
  }

  @Test
  void theFirstFeedOfALaterDayTakesUpWhatWasLeft() throws IOException {
    made("F-2-2026-03-04-1");
    made("F-2-2026-03-06-1");
    onLine("F-2-2026-03-04-1");
  }

  @Test
  void whatIsOnlyPlannedToComeNextDoesNotHideWhatWasMadeNext() throws IOException {
    planned("F-2-2026-03-21-1", "after: " + BAD + "\n");
    made("F-2-2026-03-04-1");
    onLine("F-2-2026-03-04-1", "F-2-2026-03-21-1");
  }

  @Test
  void whatIsOverdueMayHaveBeenMadeOrNot() throws IOException {
    planned("F-2-2026-03-04-1", "");
    planned("F-2-2026-03-05-1", "");
    made("F-2-2026-03-06-1");
    made("F-2-2026-03-07-1");
    onLine("F-2-2026-03-04-1", "F-2-2026-03-05-1", "F-2-2026-03-06-1");
  }

  @Test
  void ofThoseToComeTheNextIsMeant() throws IOException {
    planned("F-2-2026-03-19-1", "");
    planned("F-2-2026-03-20-1", "");
    planned("F-2-2026-03-21-1", "");
    onLine("F-2-2026-03-19-1", "F-2-2026-03-20-1");
  }

  @Test
  void aPremixBetweenMayHaveBeenMixedElsewhere() throws IOException {
    made("P-1-2026-03-03-1", "GOOD", "after: " + BAD + "\n");
    made("P-1-2026-03-04-1");
    made("F-2-2026-03-05-1");
    onLine("P-1-2026-03-03-1", "P-1-2026-03-04-1", "F-2-2026-03-05-1");
  }

  @Test
  void aBatchThatTellsWhatCameBeforeTookUpNothingElse() throws IOException {
    made("F-2-2026-03-03-1");
    made("F-2-2026-03-04-1", "GOOD", "after: F-2-2026-03-03-1\n");
    made("F-1-2026-03-02-2", "GOOD", "after: " + BAD + "\n");
    onLine("F-1-2026-03-02-2");
  }

  /** Two lines at one plant, and only one of them is told. */
  @Test
  void aBatchThatCameAfterAnotherLeavesTheNextInDoubt() throws IOException {
    made("F-1-2026-03-02-2");
    made("F-2-2026-03-03-1", "GOOD", "after: F-1-2026-03-02-2\n");
    made("F-2-2026-03-05-1");
    onLine("F-1-2026-03-02-2", "F-2-2026-03-05-1");
  }

  @Test
  void whatCannotHaveComeBeforeIsNotBelieved() throws IOException {
    made("F-2-2026-03-03-1", "GOOD", "after: F-9-2026-03-02-1\n");
    made("F-2-2026-03-03-2", "GOOD", "after: F-2-2026-03-03-2\n");
    made("F-2-2026-03-03-3", "GOOD", "after: F-2-2026-03-21-1\n");
    planned("F-2-2026-03-21-1", "after: F-2-2026-03-03-3\n");
    onLine("F-2-2026-03-03-1", "F-2-2026-03-03-2", "F-2-2026-03-03-3");
  }

  @Test
  void aPlanOfBeforeDoesNotHideWhatIsNext() throws IOException {
    made("F-2-2026-03-01-1");
    planned("F-2-2026-03-21-1", "after: F-2-2026-03-01-1\n");
    onLine("F-2-2026-03-21-1");
  }

  @Test
  void twoThatNameEachOtherAreBothInDoubt() throws IOException {
    made(BAD, "BAD", "after: F-1-2026-03-02-2\n");
    made("F-1-2026-03-02-2", "GOOD", "after: " + BAD + "\n");
    made("F-2-2026-03-03-1");
    onLine("F-1-2026-03-02-2", "F-2-2026-03-03-1");
  }

  @Test
  void ofTwoThatNameTheSameOneCameAfterSomethingElse() throws IOException {
    made("F-2-2026-03-01-1");
    made(BAD, "BAD", "after: F-2-2026-03-01-1\n");
    made("F-2-2026-03-03-1", "GOOD", "after: F-2-2026-03-01-1\n");
    onLine("F-2-2026-03-03-1");
  }

  @Test
  void aBatchIsNotForgottenBetweenTwoOthers() throws IOException {
    made("F-2-2026-03-01-1");
    made("F-2-2026-03-04-1", "GOOD", "after: F-2-2026-03-01-1\n");
    onLine("F-2-2026-03-04-1");
  }

  @Test
  void aLateFollowerDoesNotHideAnEarlierOne() throws IOException {
    made("F-2-2026-03-03-1");
    made("F-2-2026-03-16-1", "GOOD", "after: " + BAD + "\n");
    onLine("F-2-2026-03-03-1", "F-2-2026-03-16-1");
  }

  /** A batch of another plant that was made on this line is on both. */
  @Test
  void aBatchMayComeAfterOneOfAnotherPlant() throws IOException {
    made("G-1-2026-03-04-1", "GOOD", "after: " + BAD + "\n");
    made("F-2-2026-03-03-1");
    made("F-2-2026-03-05-1");
    onLine("G-1-2026-03-04-1", "F-2-2026-03-03-1");
  }

  @Test
  void anotherPlantHasAnotherLine() throws IOException {
    made("G-1-2026-03-03-1");
    made("F-2-2026-03-05-1");
    onLine("F-2-2026-03-05-1");
  }

  @Test
  void aFlushInWordsIsToldThoughNobodyToldTheOrder() throws IOException {
    made("F-2-2026-03-04-1", "GOOD", "flushed: {quantity: 5 kg, with: pulse, to: the next feed}\n");
    assertEquals(List.of("F-2-2026-03-04-1"), told(Limit.TOLD_IN_WORDS));
  }

  @Test
  void theSecondOnTheLineIsNamedThoughNobodyToldTheOrder() throws IOException {
    made("F-2-2026-03-04-1");
    made("F-2-2026-03-06-1");
    assertEquals(List.of("F-2-2026-03-06-1"), told(Limit.SECOND_ON_LINE));
  }
}
