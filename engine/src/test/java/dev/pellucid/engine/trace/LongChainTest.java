package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.engine.trace.Trace.Holding;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A line on which each batch takes the fines of the one before, for as long as records are kept. A
 * trace must not need room for each batch in each, nor go down the chain in calls.
 */
class LongChainTest {
  private static final int BATCHES = 4000;

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void write() throws IOException {
    text("ingredients/meal.yaml", "name: Meal\n");
    text("F-1.recipe", "recipe F-1\n\nmix\n  meal   90 %\n  rework F-1   10 %\n");
    text(
        "lots/all.yaml",
        """
        lots:
          - {number: FIRST, ingredient: meal, received: 2026-01-01, quantity: 500 kg}
          - {number: LATER, ingredient: meal, received: 2026-01-01, quantity: 500 kg}
        """);
    for (int i = 1; i <= BATCHES; i++) {
      String meal = "  - {line: meal, lot: " + (i == 1 ? "FIRST" : "LATER") + ", weight: 90 kg}\n";
      // The first one took what nobody knows any more.
      String rework = i == 1 ? "" : ", lot: " + number(i - 1);
      text(
          "batches/" + number(i) + ".yaml",
          "size: 100 kg\nweighed:\n"
              + meal
              + ("  - {line: rework F-1" + rework + ", weight: 10 kg}\n"));
    }
  }

  @Test
  void aLotIsFollowedToTheEnd() throws IOException {
    TraceReport trace = OwnFolder.trace(folder, PrintedPaths.BELOW_FOLDER, "FIRST", "");
    assertEquals(List.of(), trace.unsearched());
    List<Holding> holds = trace.onward().get(0).holds();
    assertEquals(
        IntStream.rangeClosed(1, BATCHES).mapToObj(LongChainTest::number).toList(),
        holds.stream().map(one -> one.batch().number()).toList());
    assertEquals(List.of(90.0, 9.0), kg(holds.subList(0, 2)));
    assertEquals(List.of(), trace.onward().get(0).circle());
  }

  @Test
  void aBatchIsFollowedBackToTheFirst() throws IOException {
    TraceReport trace = OwnFolder.trace(folder, PrintedPaths.BELOW_FOLDER, "", number(BATCHES));
    List<Holding> holds = trace.back().get(0).holds();
    assertEquals(BATCHES - 1 + 2, holds.size());
    Holding later =
        holds.stream()
            .filter(one -> one.thing().number().equals("LATER"))
            .findFirst()
            .orElseThrow();
    // 90 + 9 + 0.9 and so on.
    assertEquals(100.0, later.kg().told(), 1e-9);
    assertEquals(1, trace.back().get(0).unknown().size());
  }

  @Test
  void aRingOfAllIsTold() throws IOException {
    Path first = folder.resolve("batches/" + number(1) + ".yaml");
    String text = Files.readString(first);
    Files.writeString(
        first, text.replace("line: rework F-1", "line: rework F-1, lot: " + number(BATCHES)));
    TraceReport trace = OwnFolder.trace(folder, PrintedPaths.BELOW_FOLDER, "FIRST", "");
    assertEquals(BATCHES, trace.onward().get(0).circle().size());
    assertFalse(trace.onward().get(0).holds().get(1).kg().whole());
  }

  private static List<Double> kg(List<Holding> holds) {
    return holds.stream().map(one -> one.kg().told()).toList();
  }

  private static String number(int serial) {
    return "F-1-2026-02-01-" + serial;
  }

  private void text(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
