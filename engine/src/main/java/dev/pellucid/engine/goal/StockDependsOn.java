package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.SequenceRow;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What every sheet hangs on beside its own recipe: lots and records of batches; the recipes and
 * premixes of batches that are still to be made, which take of the same lots, and of batches that
 * others follow; and the ingredients that a line is flushed with.
 */
final class StockDependsOn {
  private final List<DependsOn> others;
  private final Set<String> flushed;

  private StockDependsOn(List<DependsOn> others, Set<String> flushed) {
    this.others = others;
    this.flushed = flushed;
  }

  static StockDependsOn of(Shared shared) {
    FeedTables tables = shared.tables();
    Set<String> codes = new TreeSet<>();
    for (BatchRecord record : tables.batches().values()) {
      if (record.isPlanned()) {
        codes.add(record.code());
      }
      record
          .after()
          .flatMap(before -> Optional.ofNullable(tables.batches().get(before.thing())))
          .ifPresent(before -> codes.add(before.code()));
    }
    List<DependsOn> others = new ArrayList<>();
    for (String code : codes) {
      shared
          .trees()
          .path(code)
          .map(path -> shared.dependsOn(path, Streamed.judged(shared, path).reads()))
          .ifPresent(others::add);
      Optional.ofNullable(shared.trees().premixPaths().get(code))
          .map(path -> shared.premixDependsOn(code, path))
          .ifPresent(others::add);
    }
    Set<String> flushed = new TreeSet<>();
    for (SequenceRow row : tables.practice().sequence()) {
      row.flush().ifPresent(flush -> flushed.add(flush.with().declared().file().path()));
    }
    return new StockDependsOn(others, flushed);
  }

  /** Whether it hangs on what a file tells. */
  boolean on(String path) {
    return DependsOn.bearsOnStock(path)
        || flushed.contains(path)
        || others.stream().anyMatch(one -> one.on(path));
  }
}
