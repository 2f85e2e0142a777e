package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.DataFileKind;
import dev.pellucid.engine.data.SequenceRow;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.trace.LineToClean;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What sheets hang on beside their own recipes: lots, whose numbers, days and inspections stand on
 * them, and the ingredients that a line is flushed with; and the sheet of a batch that is planned
 * on its record, and on the batch that is made before it, or may be where that one is stopped.
 * Which of the passed lots is named where none was put aside hangs on the records of all other
 * batches too; that is only a proposal, and a record that is being filled in keeps nobody from
 * working.
 */
final class StockDependsOn {
  private final Shared shared;
  private final Set<String> flushed;

  private final LineToClean lineToClean;

  private StockDependsOn(Shared shared, Set<String> flushed, LineToClean lineToClean) {
    this.shared = shared;
    this.lineToClean = lineToClean;
    this.flushed = flushed;
  }

  static StockDependsOn of(Shared shared, LineToClean lineToClean) {
    Set<String> flushed = new TreeSet<>();
    for (SequenceRow row : shared.tables().practice().sequence()) {
      row.flush().ifPresent(flush -> flushed.add(flush.with().declared().file().path()));
    }
    return new StockDependsOn(shared, flushed, lineToClean);
  }

  /** Whether every sheet hangs on what a file tells. */
  boolean on(String path) {
    return flushed.contains(path)
        || DataFileKind.of(path).filter(kind -> kind == DataFileKind.LOTS).isPresent();
  }

  /** What the sheet of a planned batch hangs on beside. */
  Predicate<String> planned(BatchRecord record) {
    Set<String> records = new TreeSet<>(lineToClean.files(record));
    records.add(record.declared().file().path());
    Optional<BatchRecord> before =
        record
            .after()
            .flatMap(one -> Optional.ofNullable(shared.tables().batches().get(one.thing())));
    before.ifPresent(one -> records.add(one.declared().file().path()));
    List<DependsOn> made = before.map(one -> made(one.code())).orElse(List.of());
    return path -> records.contains(path) || made.stream().anyMatch(one -> one.on(path));
  }

  private List<DependsOn> made(String code) {
    List<DependsOn> made = new ArrayList<>();
    shared
        .trees()
        .path(code)
        .map(path -> shared.dependsOn(path, Streamed.judged(shared, path).reads()))
        .ifPresent(made::add);
    Optional.ofNullable(shared.trees().premixPaths().get(code))
        .map(path -> shared.premixDependsOn(code, path))
        .ifPresent(made::add);
    return made;
  }
}
