package dev.pellucid.engine.workspace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.MeasuredBatch;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What was expected of a batch is what its own state of the folder makes one expect. */
class PastResultsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String RECORD = "batches/CF-31-2026-11-18-1.yaml";
  private static final String RECIPE = "catfish/CF-31.recipe";

  private final WrittenHistory folder;

  /** A batch with its commit, and a result of it. */
  PastResultsTest() throws IOException {
    Texts whole = Texts.at(Example.whole()).held();
    List<String> others = new ArrayList<>(whole.ending(Trees.RECIPE));
    others.remove(RECIPE);
    others.add("batches/TG-44-2026-12-01-1.yaml");
    folder = new WrittenHistory(whole.without(others));
    String record = folder.text(RECORD);
    folder.remove(RECORD);
    String commit = folder.commit();
    folder.write(
        RECORD,
        record.replaceFirst("\nsize:", "\nmade-from: {commit: " + commit + "}\nsize:")
            + "\nresults:\n  - {day: 2026-11-24, by: laboratory, crude-protein: 31.0 %}\n");
    folder.commit();
  }

  private MeasuredBatch measured() {
    Shared shared = Shared.of(ReadFolder.of(folder.now()), Days.on(DAY));
    List<MeasuredBatch> all = Whole.of(shared, Streamed.check(shared, Summary::of)).measured();
    assertEquals(1, all.size());
    return all.get(0);
  }

  @Test
  void anEditOfTodayMovesNothingThatWasExpected() {
    MeasuredBatch then = measured();
    Measured protein = then.figure("crude-protein").orElseThrow();
    assertTrue(protein.expected().orElseThrow() > 0.29, protein.toString());
    folder.change(
        RECIPE, "soybean-meal-48              28.00 %", "soybean-meal-48              22.00 %");
    folder.change(RECIPE, "accept 8 to 10 %", "accept 8.5 to 9.5 %");
    assertEquals(figures(then), figures(measured()));
  }

  private static List<String> figures(MeasuredBatch batch) {
    return batch.figures().stream()
        .map(one -> one.name() + one.found() + one.expected() + one.spread() + one.counts())
        .toList();
  }
}
