package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.BegunWith;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Part bags that were filled up with the next batch: each was there, is filled up once, and with
 * feed of its own recipe.
 */
final class PartBags {
  static final Code CODE = new Code("part-bag-off");

  private final FeedTables tables;

  PartBags(FeedTables tables) {
    this.tables = tables;
  }

  void look(Consumer<Finding> out) {
    Map<String, BegunWith> first = new HashMap<>();
    for (BatchRecord record : tables.batches().values()) {
      record
          .bags()
          .flatMap(Bags::begunWith)
          .ifPresent(begun -> look(record, begun, first).ifPresent(out));
    }
  }

  /** The first that is wrong with a part bag; one slip is one finding. */
  private Optional<Finding> look(
      BatchRecord record, BegunWith begun, Map<String, BegunWith> first) {
    BatchRecord of = tables.batches().get(begun.batch());
    if (of == null) {
      return Optional.empty();
    }
    double rest = of.bags().map(Bags::rest).orElse(0.0);
    BegunWith earlier = first.putIfAbsent(begun.batch(), begun);
    if (earlier != null) {
      return Optional.of(twice(begun, earlier));
    }
    if (Closeness.isBelow(rest, begun.kg())) {
      return Optional.of(notThere(of, begun, rest));
    }
    return of.code().equals(record.code())
        ? Optional.empty()
        : Optional.of(other(record, of, begun));
  }

  private static Finding twice(BegunWith begun, BegunWith earlier) {
    return Finding.error(
            CODE, begun.place(), "the part bag of " + begun.batch() + " was filled up twice")
        .seeing("the other", earlier.place())
        .helping("look on the bag which batch it was begun with, and fix one of the two");
  }

  private static Finding notThere(BatchRecord of, BegunWith begun, double rest) {
    String kg = Figures.plain(begun.kg(), Unit.KG);
    String head =
        of.bags().isEmpty()
            ? "no bags are told of " + of.number() + ", and " + kg + " of it were in a part bag"
            : rest > 0
                ? "the part bag of "
                    + of.number()
                    + " held "
                    + Figures.plainBeside(rest, begun.kg())
                    + " kg, and "
                    + kg
                    + " are told here"
                : of.number() + " left no part bag, and " + kg + " of one are told here";
    Finding finding = Finding.error(CODE, begun.place(), head);
    return of.bags()
        .map(bags -> finding.seeing("bags written", bags.place()))
        .orElse(finding)
        .helping("fix the weight or the batch; or write rest: in the bags of " + of.number());
  }

  private static Finding other(BatchRecord record, BatchRecord of, BegunWith begun) {
    return Finding.warning(
            CODE,
            begun.place(),
            "the part bag of " + of.number() + " was filled up with " + record.code())
        .noting("what is on its label is true of neither of the two")
        .helping("name the batch of " + record.code() + " that it was of, or keep the bag apart");
  }
}
