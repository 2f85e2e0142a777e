package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.OnTheLine;
import dev.pellucid.engine.plan.OnTheLine.Flushing;
import dev.pellucid.engine.plan.OnTheLine.Minded;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Warnings;
import java.util.ArrayList;
import java.util.List;

/** What must not be made right before a batch, and what is flushed with where it may. */
final class SequenceBlocks {
  private SequenceBlocks() {}

  /** Nothing where nothing is to be minded. */
  static List<Block> of(OnTheLine line) {
    List<Block> blocks = new ArrayList<>();
    List<String> never =
        line.minded().stream()
            .filter(one -> one.flush().isEmpty())
            .map(SequenceBlocks::never)
            .toList();
    if (!never.isEmpty()) {
      blocks.add(new Warnings(never));
    }
    List<List<String>> rows =
        line.minded().stream()
            .flatMap(one -> one.flush().map(flush -> row(one, flush)).stream())
            .toList();
    if (!rows.isEmpty()) {
      blocks.add(
          new Table(
              List.of(
                  new Column("Right after a batch that holds", Holds.WORDS),
                  new Column("Flush kg", Holds.FIGURES),
                  new Column("With", Holds.WORDS),
                  new Column("Flush goes", Holds.WORDS)),
              rows,
              false));
    }
    return blocks;
  }

  private static String never(Minded one) {
    return "Never right after a batch that holds this: "
        + one.holds()
        + ". "
        + TaskWords.capital(one.because())
        + ".";
  }

  private static List<String> row(Minded one, Flushing flush) {
    return List.of(one.holds(), Figures.plain(flush.kg()), flush.with(), flush.to());
  }
}
