package dev.pellucid.engine.records;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * What records tell of each other and of what left the mill, which a recall rests on. It needs no
 * recipe, and so is looked at whatever else is wrong.
 */
public final class RecordsTogether {
  private RecordsTogether() {}

  static List<Code> codes() {
    return Stream.of(
            FeedMoves.codes(),
            FeedBooks.codes(),
            GoesToBatch.codes(),
            BinsTogether.codes(),
            List.of(PartBags.CODE, BatchInItself.CODE))
        .flatMap(List::stream)
        .toList();
  }

  public static void look(FeedTables tables, LocalDate day, Consumer<Finding> out) {
    if (tables.batches().isEmpty() && tables.bins().isEmpty()) {
      return;
    }
    new FeedMoves(tables, day).look(out);
    new FeedBooks(tables).look(out);
    new PartBags(tables).look(out);
    new GoesToBatch(tables).look(out);
    new BinsTogether(tables, day).look(out);
    new BatchInItself(tables).look(out);
  }
}
