package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.workspace.ReadFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The records of years, with all that makes a recall large: a bin that was never empty, rework of
 * which no lot is told, no word of what came after what, a part bag in each batch. The work must
 * grow with the records, not with their pairs.
 */
class LargeRecallTest {
  private static final int BATCHES = 4000;
  private static final int ADAY = 8;
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final LocalDate FIRST = LocalDate.of(2020, 1, 1);

  /** A fraction of a second where nothing else runs; pairs would take minutes. */
  private static final Duration LONG = Duration.ofSeconds(15);

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void write() throws IOException {
    text("ingredients/meal.yaml", "name: Meal\n");
    text("ingredients/maize.yaml", "name: Maize\n");
    StringBuilder lots = new StringBuilder("lots:\n");
    for (int i = 0; i < BATCHES / ADAY; i++) {
      lots.append(
          "  - {number: M-%s, ingredient: meal, received: %s, quantity: 900 kg, bin: B1}\n"
              .formatted(i, FIRST.plusDays(i)));
    }
    lots.append("  - {number: MZ, ingredient: maize, received: 2020-01-01, quantity: 900 kg}\n");
    text("lots/all.yaml", lots.toString());
    for (int i = 0; i < BATCHES; i++) {
      String begun =
          i == 0 ? "" : ", begun-with: {batch: %s, weight: 3 kg}".formatted(number(i - 1));
      text(
          "batches/" + number(i) + ".yaml",
          """
          size: 100 kg
          flushed: {quantity: 5 kg, with: maize, to: %s}
          weighed:
            - {line: meal, bin: B1, weight: 90 kg}
            - {line: rework F-1, weight: 10 kg}
          fines: {weight: 1 kg, to: %s}
          bags: {full: 3, of: 25 kg, rest: 5 kg%s}
          delivered:
            - {day: 2026-01-01, by: store, to: Farm %s, bags: 2}
          """
              .formatted(number((i + 1) % BATCHES), number((i + 2) % BATCHES), begun, i % 50));
    }
  }

  @Test
  void recallsOfAllThereIsComeSoon() throws IOException {
    FeedTables tables = ReadFolder.of(Texts.at(folder)).tables();
    assertEquals(BATCHES, tables.batches().size());
    MadeBy made = MadeBy.atOnePlant(Map.of("F-1", List.of("meal", "rework F-1")));
    Tracer tracer = new Tracer(tables, made, made, none -> Optional.empty(), DAY);
    for (String number : List.of("M-0", "M-0", "MZ", number(0), number(BATCHES / 2))) {
      long start = System.nanoTime();
      Answer answer = tracer.recall(number);
      Duration took = Duration.ofNanos(System.nanoTime() - start);
      assertTrue(answer.batches().size() >= BATCHES / 2 - 2, number);
      assertTrue(took.compareTo(LONG) < 0, () -> number + " took " + took);
    }
  }

  private static String number(int place) {
    return "F-1-" + FIRST.plusDays(place / ADAY) + "-" + (place % ADAY + 1);
  }

  private void text(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
