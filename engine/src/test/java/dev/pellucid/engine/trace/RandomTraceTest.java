package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.engine.trace.Trace.Back;
import dev.pellucid.engine.trace.Trace.Holding;
import dev.pellucid.engine.trace.Trace.Maybe;
import dev.pellucid.engine.trace.Trace.Onward;
import dev.pellucid.engine.trace.Trace.Unknown;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Traces of made-up stores against a plain search over what was made up. */
class RandomTraceTest {
  private static final int STORES = 200;

  @TempDir Path folder = Path.of("");

  private int held;
  private int perhaps;
  private int told;
  private int circles;
  private int deep;

  @Test
  void aTraceFindsWhatAPlainSearchFindsBothWays() throws IOException {
    for (int seed = 0; seed < STORES; seed++) {
      RandomStore store = new RandomStore(seed);
      Path root = folder.resolve("s" + seed);
      store.write(root);
      for (String number : store.numbers()) {
        onward(
            store,
            number,
            OwnFolder.trace(root, PrintedPaths.BELOW_FOLDER, number, ""),
            "seed " + seed + ": " + number);
      }
      back(store, OwnFolder.trace(root, PrintedPaths.BELOW_FOLDER, "", ""), "seed " + seed);
    }
    // No part of this passes on nothing.
    assertTrue(held > 1000 && perhaps > 500 && told > 500, held + " " + perhaps + " " + told);
    assertTrue(circles > 5 && deep > 100, circles + " " + deep);
  }

  private void onward(RandomStore store, String number, TraceReport report, String seed) {
    assertEquals(List.of(), report.unsearched(), () -> seed + report.findings());
    assertEquals(List.of(), report.unknown(), seed);
    Onward onward = report.onward().get(0);
    Set<String> holders = store.holders(number);
    assertEquals(holders, batches(onward.holds()), seed);
    Set<String> may = onward.may().stream().map(Maybe::batch).map(Trace.Batch::number).collect(SET);
    assertEquals(store.perhaps(number), may, seed);
    onward.holds().forEach(one -> kg(store, number, one, seed));
    held += holders.size();
    perhaps += may.size();
    if (holders.contains(number)) {
      circles++;
      assertTrue(onward.circle().contains(number), seed);
    }
    // Whatever has a line of its kind is somewhere in the answer.
    Set<String> spoken = new TreeSet<>(may);
    spoken.addAll(holders);
    spoken.addAll(onward.earlier());
    onward.onLine().forEach(one -> spoken.add(one.batch().number()));
    for (RandomStore.Sheet record : store.records) {
      boolean open =
          store.openKinds(record).contains(kind(store, number)) && !record.number().equals(number);
      assertTrue(!open || spoken.contains(record.number()), seed + " in " + record.number());
    }
  }

  private static String kind(RandomStore store, String number) {
    return store.lots.stream()
        .filter(lot -> lot.number().equals(number))
        .map(RandomStore.LotOf::kind)
        .findFirst()
        .orElseGet(() -> store.record(number).code());
  }

  private void kg(RandomStore store, String number, Holding one, String seed) {
    double kg = store.kg(number, store.record(one.batch().number()), List.of());
    String where = seed + " in " + one.batch().number();
    if (Double.isNaN(kg)) {
      assertFalse(one.kg().whole(), where);
    } else {
      assertTrue(one.kg().whole(), where);
      assertEquals(kg, one.kg().told(), 1e-9 * Math.max(1, kg), where);
      told++;
    }
    if (one.ways().stream().anyMatch(way -> way.through().isPresent())) {
      deep++;
    }
    double sum = one.ways().stream().mapToDouble(way -> way.kg().told()).sum();
    assertEquals(sum, one.kg().told(), 1e-9 * Math.max(1, sum), where);
  }

  /** What is in a batch is what finds the batch when it is looked for onward. */
  private void back(RandomStore store, TraceReport report, String seed) {
    assertEquals(store.records.size(), report.back().size(), seed);
    for (Back back : report.back()) {
      String batch = back.thing().number();
      Set<String> wanted = new TreeSet<>();
      for (String number : store.numbers()) {
        if (store.holders(number).contains(batch) && !number.equals(batch)) {
          wanted.add(number);
        }
      }
      Set<String> found = new TreeSet<>();
      for (Holding one : back.holds()) {
        found.add(one.thing().number());
        kg(store, one.thing().number(), one, seed + " back to " + one.thing().number());
      }
      assertEquals(wanted, found, seed + " in " + batch);
      List<String> lines = new ArrayList<>();
      back.unknown().stream()
          .filter(line -> line.batch().equals(batch))
          .map(Unknown::line)
          .forEach(line -> lines.add(line.replace("rework ", "")));
      assertEquals(
          store.openKinds(store.record(batch)), new TreeSet<>(lines), seed + " in " + batch);
    }
  }

  private static final java.util.stream.Collector<String, ?, TreeSet<String>> SET =
      Collectors.toCollection(TreeSet::new);

  private static Set<String> batches(List<Holding> holds) {
    return holds.stream().map(one -> one.batch().number()).collect(SET);
  }
}
