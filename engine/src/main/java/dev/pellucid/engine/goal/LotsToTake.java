package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.rebalance.Rebalancing.LotIn;
import dev.pellucid.engine.records.MaterialRequirements.Ahead;
import dev.pellucid.engine.records.MeasuredWords;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * The lots of a planned batch: those that its record names, and for lines that name none those that
 * its sheet would, where one lot does and it was measured.
 *
 * @param record with all of them
 * @param measured of which anything was measured
 * @param parted titles of lines that would take several lots, of which one was measured
 */
record LotsToTake(
    FeedTables tables, BatchRecord record, List<LotIn> measured, List<String> parted) {
  LotsToTake {
    measured = List.copyOf(measured);
    parted = List.copyOf(parted);
  }

  static LotsToTake of(Shared shared, Ahead ahead, BatchRecord record) {
    List<Entry> adopted = new ArrayList<>();
    List<String> parted = new ArrayList<>();
    proposed(ahead, record)
        .forEach(
            (line, lots) -> {
              List<Entry> taken = lots.stream().map(lot -> entry(record, line, lot)).toList();
              if (!namesLot(record, line) && isMeasured(shared, record, taken)) {
                if (lots.size() == 1) {
                  adopted.addAll(taken);
                } else {
                  parted.add(line);
                }
              }
            });
    List<Entry> entries = new ArrayList<>();
    for (Entry entry : record.entries()) {
      if (adopted.stream().noneMatch(one -> one.line().equals(entry.line()))) {
        entries.add(entry);
      }
    }
    entries.addAll(adopted);
    BatchRecord with = record.with(entries, record.rebalanced());
    return new LotsToTake(shared.tables(), with, lots(shared, record, with), parted);
  }

  private static boolean namesLot(BatchRecord record, String line) {
    return record.entries().stream()
        .anyMatch(one -> one.line().equals(line) && !(one.written() + one.bin()).isEmpty());
  }

  private static boolean isMeasured(Shared shared, BatchRecord record, List<Entry> taken) {
    return !shared.recordCheck().measured(record.with(taken, Optional.empty())).isEmpty();
  }

  private static List<LotIn> lots(Shared shared, BatchRecord record, BatchRecord with) {
    List<String> named = shared.recordCheck().measured(record);
    List<String> measured = shared.recordCheck().measured(with);
    List<LotIn> lots = new ArrayList<>();
    for (Entry entry : with.entries()) {
      if (measured.contains(entry.lot())) {
        lots.add(
            new LotIn(
                entry.lot(),
                entry.line(),
                named.contains(entry.lot()),
                MeasuredWords.of(shared.tables(), entry.lot())));
      }
    }
    return lots;
  }

  private static Entry entry(BatchRecord record, String line, String lot) {
    return new Entry(
        line,
        lot,
        lot,
        "",
        OptionalDouble.empty(),
        record.declared(),
        record.declared(),
        record.declared());
  }

  /** By line, as the sheet of the batch would say; of a mixed bin all that it can be. */
  private static Map<String, List<String>> proposed(Ahead ahead, BatchRecord record) {
    Map<String, List<String>> lots = new LinkedHashMap<>();
    ahead
        .of(record.number())
        .forEach(
            (line, choice) ->
                choice
                    .picks()
                    .forEach(
                        pick ->
                            lots.computeIfAbsent(line, none -> new ArrayList<>())
                                .addAll(pick.lots())));
    return lots;
  }

  /** What a person should know of the lots. */
  List<String> cautions(List<Finding> findings) {
    List<String> words = new ArrayList<>();
    for (String line : parted) {
      words.add(
          "for "
              + line
              + " the store would give several lots, which were left out here: name under weighed"
              + " those that are taken, and ask again");
    }
    List<String> open =
        new ArrayList<>(
            new TreeSet<>(
                record.entries().stream()
                    .filter(one -> one.lot().isEmpty() || !isMeasured(one.lot()))
                    .map(Entry::line)
                    .toList()));
    if (!open.isEmpty()) {
      words.add(
          "no figure of the lots of "
              + String.join(", ", open)
              + " was measured; they count as the folder has them");
    }
    for (LotIn one : measured) {
      said(one.number(), findings).ifPresent(words::add);
    }
    return words;
  }

  private boolean isMeasured(String lot) {
    return measured.stream().anyMatch(one -> one.number().equals(lot));
  }

  /** What check doubts of a lot, so that a slip of the pen moves no shares unseen. */
  private Optional<String> said(String number, List<Finding> findings) {
    Lot lot = tables.lots().get(number);
    if (lot == null) {
      return Optional.empty();
    }
    String path = lot.declared().file().path();
    return findings.stream()
        .filter(one -> one.severity() != Severity.NOTE)
        .filter(one -> one.span().file().path().equals(path))
        .filter(one -> one.headline().contains(number))
        .findFirst()
        .map(one -> "check says that " + one.headline() + ": be sure of that figure first");
  }
}
