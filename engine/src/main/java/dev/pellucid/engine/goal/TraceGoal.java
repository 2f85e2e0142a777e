package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.report.TraceText;
import dev.pellucid.engine.trace.Recall.Origins;
import dev.pellucid.engine.trace.Trace.Back;
import dev.pellucid.engine.trace.Tracer;
import dev.pellucid.text.PrintedPaths;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One trace: which lots are in which batches. */
public final class TraceGoal {
  private final SearchedStore store;

  /** It is asked on no day: whatever is planned may be made in any order. */
  public TraceGoal(Texts folder) {
    this.store = new SearchedStore(folder, LocalDate.MAX);
  }

  /**
   * What came of it.
   *
   * @param paths how files are called in the answer
   */
  public TraceReport answer(String lot, String batch, PrintedPaths paths) {
    Tracer tracer = store.tracer();
    List<String> unknown = new ArrayList<>();
    List<TraceText.Went> onward = new ArrayList<>();
    List<Back> back = new ArrayList<>();
    List<Origins> origins = new ArrayList<>();
    if (!batch.isEmpty()) {
      Optional<String> no = store.unknown(batch).or(() -> store.noBatch(batch));
      no.ifPresent(unknown::add);
      if (no.isEmpty()) {
        origins.add(tracer.origins(batch));
        onward.add(went(batch));
      }
    }
    if (!lot.isEmpty()) {
      Optional<String> no = store.isTorn(lot) ? Optional.empty() : store.unknown(lot);
      no.ifPresent(unknown::add);
      if (no.isEmpty()) {
        onward.add(went(lot));
      }
    }
    if (lot.isEmpty() && batch.isEmpty()) {
      tracer.batches().forEach(number -> back.add(tracer.back(number)));
    }
    origins.forEach(one -> back.add(one.back()));
    List<String> missed = store.unsearched(paths);
    String text = TraceText.of(back, origins, onward, store.searched(), missed);
    return new TraceReport(
        text,
        onward.stream().map(TraceText.Went::onward).toList(),
        back,
        unknown,
        missed,
        store.findings());
  }

  private TraceText.Went went(String number) {
    Tracer tracer = store.tracer();
    return new TraceText.Went(
        tracer.onward(number), tracer.knows(number) ? tracer.recall(number).calls() : List.of());
  }
}
