package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * What batches take from bins, held against what can be in them: a bin that holds nothing by the
 * books was filled with a lot that nobody wrote down, and no recall would find it.
 */
final class BinsTogether {
  static final Code EMPTY = new Code("bin-empty");
  static final Code EMPTIED = new Code("bin-emptied-off");
  static final Code NAMED = new Code("bin-named-twice");

  private final FeedTables tables;
  private final LocalDate today;
  private final Bins bins;
  private final TreeSet<String> filled = new TreeSet<>();

  BinsTogether(FeedTables tables, LocalDate today) {
    this.tables = tables;
    this.today = today;
    this.bins = new Bins(tables);
    tables.lots().values().forEach(lot -> lot.bin().ifPresent(filled::add));
  }

  static List<Code> codes() {
    return List.of(EMPTY, EMPTIED, NAMED);
  }

  void look(Consumer<Finding> out) {
    tables.bins().values().forEach(bin -> emptied(bin, out));
    named(out);
    for (BatchRecord record : tables.batches().values()) {
      for (Entry entry : record.entries()) {
        if (!entry.bin().isBlank() && entry.lot().isEmpty()) {
          taken(record, entry).ifPresent(out);
        }
      }
    }
  }

  private boolean isFilled(String bin) {
    return filled.stream().anyMatch(one -> Bin.key(one).equals(Bin.key(bin)));
  }

  private List<String> near(String bin) {
    List<String> one = filled.stream().filter(other -> Bin.mayBeOne(bin, other)).toList();
    return one.isEmpty() ? NearNames.of(bin, filled) : one;
  }

  /** Two names of which nobody can tell whether they are of one bin, told where the second is. */
  private void named(Consumer<Finding> out) {
    Map<String, Lot> first = new LinkedHashMap<>();
    tables.lots().values().stream()
        .sorted(Comparator.comparing(Lot::received).thenComparing(Lot::number))
        .forEach(lot -> lot.bin().ifPresent(bin -> named(lot, bin, first).ifPresent(out)));
  }

  /** Of each name of a bin its first lot alone is looked at, so that a pair is told once. */
  private static Optional<Finding> named(Lot lot, String bin, Map<String, Lot> first) {
    if (first.putIfAbsent(Bin.key(bin), lot) != null) {
      return Optional.empty();
    }
    return first.values().stream()
        .filter(other -> Bin.mayBeOne(other.bin().orElseThrow(), bin))
        .findFirst()
        .map(other -> oneOrTwo(lot, bin, other));
  }

  private static Finding oneOrTwo(Lot lot, String bin, Lot other) {
    String name = other.bin().orElseThrow();
    return Finding.warning(
            NAMED,
            lot.declared(),
            "lot "
                + lot.number()
                + " lies in bin "
                + bin
                + ", lot "
                + other.number()
                + " in bin "
                + name
                + ": they count as two bins")
        .seeing("the other", other.declared())
        .helping("where it is one bin, write one name: a recall must find all that was in it")
        .helping("where there are two, give one a name that nobody takes for the other");
  }

  private Optional<Finding> taken(BatchRecord record, Entry entry) {
    String bin = entry.bin().strip();
    if (!isFilled(bin)) {
      return Optional.of(
          Finding.error(
                  EMPTY,
                  entry.lotPlace(),
                  entry.line() + " came from bin " + bin + ", and no lot was put into such a bin")
              .helping(
                  Meant.question(near(bin))
                      .orElse("write bin: " + bin + " at each lot that was put into it")));
    }
    List<String> there = bins.lots(Bin.key(bin), record.day());
    boolean right = there.stream().anyMatch(lot -> isOf(lot, entry.line()));
    return right ? Optional.empty() : Optional.of(nothing(record, entry, bin, there.isEmpty()));
  }

  private boolean isOf(String key, String line) {
    return tables.lots().values().stream()
        .filter(lot -> ByLetters.number(lot.number()).equals(key))
        .anyMatch(lot -> lot.ingredient().equals(line) || isFormerly(lot, line));
  }

  private boolean isFormerly(Lot lot, String line) {
    return Optional.ofNullable(tables.ingredients().get(lot.ingredient()))
        .filter(one -> one.formerly().contains(line))
        .isPresent();
  }

  private static Finding nothing(BatchRecord record, Entry entry, String bin, boolean empty) {
    return Finding.error(
            EMPTY,
            entry.lotPlace(),
            entry.line()
                + " came from bin "
                + bin
                + " on "
                + record.day()
                + ", and "
                + (empty ? "nothing could be in it" : "no lot of it could be in there"))
        .helping(
            "a lot that was put into it is not written down: write bin: " + bin + " at the lot")
        .helping("or the bin is another one, or the day on which it was empty is wrong");
  }

  private void emptied(Bin bin, Consumer<Finding> out) {
    for (Located<LocalDate> day : bin.emptied()) {
      if (!isFilled(bin.name())) {
        out.accept(
            Finding.warning(
                    EMPTIED,
                    day.place(),
                    "bin " + bin.name() + " was emptied, and no lot was ever put into it")
                .helping(
                    Meant.question(near(bin.name()))
                        .orElse("write bin: " + bin.name() + " at each lot that was put into it")));
        return;
      }
      if (day.thing().isAfter(today)) {
        out.accept(
            Finding.error(
                    EMPTIED,
                    day.place(),
                    "bin " + bin.name() + " was emptied on " + day.thing() + ", in the future")
                .helping("fix the day: what lies in it until then would be taken for gone"));
      }
    }
  }
}
