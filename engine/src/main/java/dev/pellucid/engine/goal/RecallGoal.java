package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.trace.Recall.Origins;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.engine.trace.Tracer;
import dev.pellucid.text.PrintedPaths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The recall of one lot or batch: who is to be called, and what is to be stopped. */
public final class RecallGoal {
  private static final String ASK =
      "say what is recalled: -Dpellucid.lot=NUMBER for a lot of an ingredient or a batch made here,"
          + " -Dpellucid.batch=NUMBER for a batch and what is in it";

  private final SearchedStore store;
  private final AskedOn day;
  private final PrintedPaths paths;

  private RecallGoal(Texts folder, AskedOn day, PrintedPaths paths) {
    this.store = new SearchedStore(folder, day.day());
    this.day = day;
    this.paths = paths;
  }

  /**
   * What came of it.
   *
   * @param day which one stands on it
   * @param lot the number of a lot or a batch; empty for none
   * @param batch the number of a batch, to see what is in it too; empty for none
   * @param paths how files are called in the answer
   */
  public static RecallReport of(
      Texts folder, AskedOn day, String lot, String batch, PrintedPaths paths) {
    if (lot.isEmpty() == batch.isEmpty()) {
      String both = lot.isEmpty() ? "" : ", not both; recall one after the other";
      return new RecallReport(Optional.empty(), Optional.of(ASK + both), List.of());
    }
    return new RecallGoal(folder, day, paths).of(lot.isEmpty() ? batch : lot, lot.isEmpty());
  }

  private RecallReport of(String number, boolean ofBatch) {
    Optional<String> problem =
        store.unknown(number).or(() -> ofBatch ? store.noBatch(number) : Optional.empty());
    List<String> missed = store.unsearched(paths);
    if (problem.isPresent()) {
      List<String> all = new ArrayList<>(List.of(problem.get()));
      if (!missed.isEmpty()) {
        all.add("not searched: " + String.join("; ", missed));
      }
      return new RecallReport(
          Optional.empty(), Optional.of(String.join("; ", all)), store.findings());
    }
    return new RecallReport(Optional.of(list(number, missed)), Optional.empty(), store.findings());
  }

  private RecallList list(String number, List<String> missed) {
    Tracer tracer = store.tracer();
    Optional<Origins> origins =
        tracer.isBatch(number) ? Optional.of(tracer.origins(number)) : Optional.empty();
    return new RecallList(
        store.tables().settings().name(),
        day.day(),
        day.otherwise(),
        tracer.recall(number),
        origins,
        files(store.tables()),
        store.premixes(),
        store.searched(),
        missed);
  }

  private SortedMap<String, String> files(FeedTables tables) {
    SortedMap<String, String> files = new TreeMap<>();
    tables.lots().values().forEach(lot -> files.put(lot.number(), paths.of(lot.declared().file())));
    tables
        .batches()
        .values()
        .forEach(record -> files.put(record.number(), paths.of(record.declared().file())));
    return files;
  }
}
