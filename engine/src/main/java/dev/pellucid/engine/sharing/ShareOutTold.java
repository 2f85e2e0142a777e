package dev.pellucid.engine.sharing;

import dev.pellucid.engine.records.PurchaseList;
import java.time.LocalDate;
import java.util.List;

/**
 * All that is told of what was shared out.
 *
 * @param title what was shared out: {@code plan december}
 * @param day of the run, on which an order would go out
 * @param notes what a person should know first
 * @param fixed batches that are made as they are recorded
 * @param toBuy for all that is made
 */
public record ShareOutTold(
    String title,
    LocalDate day,
    List<String> notes,
    SharedOut out,
    List<FixedBatch> fixed,
    PurchaseList toBuy) {
  public ShareOutTold {
    notes = List.copyOf(notes);
    fixed = List.copyOf(fixed);
  }
}
