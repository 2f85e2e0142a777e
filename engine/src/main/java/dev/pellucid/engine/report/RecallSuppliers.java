package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.RecallFigures.name;
import static dev.pellucid.engine.report.RecallFigures.words;

import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.trace.Recall.Origins;
import dev.pellucid.engine.trace.Trace.LotOf;
import dev.pellucid.engine.trace.Trace.Thing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Of a batch that is recalled, who sold what is in it: where the fault came in with a raw material,
 * the same lot may be in feeds of others, and its supplier has to know.
 */
final class RecallSuppliers {
  private static final List<Column> COLUMNS =
      List.of(
          words("Supplier"),
          words("Their lot"),
          words("Delivery note"),
          name("Our lot"),
          words("Of"),
          name("In it"));

  private static final String NONE = "not given";

  private final String number;
  private final Origins origins;

  RecallSuppliers(String number, Origins origins) {
    this.number = number;
    this.origins = origins;
  }

  void into(List<Block> blocks) {
    blocks.add(new Heading("If the fault came in with a raw material", false));
    List<List<String>> rows = new ArrayList<>();
    origins.lots().forEach(one -> rows.add(row(one.thing(), one.certain())));
    if (rows.isEmpty()) {
      blocks.add(new Words("No record names a lot of a raw material that is in it."));
    } else {
      rows.sort(Comparator.comparing(row -> row.get(0).equals(NONE) ? "1" : "0" + row.get(0)));
      blocks.add(
          new Words(
              "Then tell the suppliers of these, and recall each lot that is at fault by itself;"
                  + " other batches than "
                  + number
                  + " may hold it:"));
      blocks.add(RecallFigures.table(COLUMNS, rows));
    }
    if (!origins.back().unknown().isEmpty()) {
      blocks.add(new Words("Of some lines no record can say the lot; see What is in it."));
    }
  }

  private static List<String> row(Thing of, boolean certain) {
    return List.of(
        of.lot().flatMap(LotOf::supplier).orElse(NONE),
        of.lot().flatMap(LotOf::supplierLot).orElse(NONE),
        of.lot().flatMap(LotOf::deliveryNote).orElse(NONE),
        of.number(),
        TraceWords.of(of),
        RecallWords.holds(certain));
  }
}
