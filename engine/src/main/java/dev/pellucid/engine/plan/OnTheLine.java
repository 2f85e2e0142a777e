package dev.pellucid.engine.plan;

import dev.pellucid.engine.carryover.CarryOver;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Flushed;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.SequenceRow;
import dev.pellucid.engine.data.Signed;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A batch after another on one line.
 *
 * @param after the number of the batch that is planned before it; empty where none is told
 * @param flushed what is planned to be run through in between; may be empty
 * @param to where that goes, in the words of the record; may be empty
 * @param cleaned who cleaned the line in between, when and how; empty where nobody has written it
 * @param toClean why the line is to be clean before it; empty where it need not be
 * @param minded what must not be made before it, or not without a flush, in the order of the folder
 */
public record OnTheLine(
    String after, String flushed, String to, String cleaned, String toClean, List<Minded> minded) {
  public OnTheLine {
    minded = List.copyOf(minded);
  }

  /**
   * A kind of batch that must not come right before.
   *
   * @param holds what it holds or is, for people
   * @param madeBeside whether it is something that the plant makes beside the feeds of the folder
   * @param flush absent where it must never be
   */
  public record Minded(
      String holds, boolean madeBeside, Optional<Flushing> flush, String because) {}

  /** What is run through before the start, and where it goes. */
  public record Flushing(double kg, String with, String to) {}

  /** A feed that holds itself what another would leave behind is not concerned. */
  static OnTheLine of(ComputedFeed feed, FeedTables tables, Optional<String> number) {
    List<SequenceRow> rows = tables.practice().sequence();
    CarryOver residue = CarryOver.of(feed, rows);
    Optional<BatchRecord> record = number.map(one -> tables.batches().get(one));
    return new OnTheLine(
        record.flatMap(BatchRecord::after).map(Located::thing).orElse(""),
        record.flatMap(BatchRecord::flushed).map(one -> words(one, tables)).orElse(""),
        record.flatMap(BatchRecord::flushed).map(Flushed::to).orElse(""),
        record.flatMap(BatchRecord::cleaned).map(OnTheLine::words).orElse(""),
        "",
        rows.stream().filter(residue::minds).map(OnTheLine::minded).toList());
  }

  OnTheLine toClean(String why) {
    return new OnTheLine(after, flushed, to, cleaned, why, minded);
  }

  /** Whether what is run through a line that must be clean first must go into no feed. */
  public boolean isKeptApart() {
    return !toClean.isEmpty();
  }

  private static String words(Signed cleaned) {
    return cleaned.day() + ", " + cleaned.by() + ": " + cleaned.because();
  }

  private static Minded minded(SequenceRow row) {
    return new Minded(
        row.left().words(),
        row.besides().isPresent(),
        row.flush().map(one -> new Flushing(one.kg(), one.with().title(), one.to())),
        row.because());
  }

  private static String words(Flushed flushed, FeedTables tables) {
    String with =
        Optional.ofNullable(tables.ingredients().get(flushed.with()))
            .map(Ingredient::title)
            .orElse(flushed.with());
    return Figures.plain(flushed.kg(), Unit.KG) + " " + with;
  }
}
