package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.DataFileKind;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.folder.Texts;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Puts the lots and records of today into an earlier state: of records those that are asked for.
 */
final class OfTodayIn {
  private final Texts store;

  private OfTodayIn(Texts store) {
    this.store = store;
  }

  /** Those of a folder, from now on in memory. */
  static OfTodayIn of(Texts today) {
    List<String> others = new ArrayList<>();
    for (String path : today.paths()) {
      if (!OfCommit.isOfToday(path)) {
        others.add(path);
      }
    }
    return new OfTodayIn(today.without(others).held());
  }

  /** A state with all lots of today, and with some records and the batches that they name. */
  Texts under(Texts then, List<BatchRecord> records, FeedTables today) {
    List<String> former = then.paths().stream().filter(OfCommit::isOfToday).toList();
    Set<String> wanted = new TreeSet<>();
    for (BatchRecord one : withThoseNamed(records, today)) {
      wanted.add(one.declared().file().path());
    }
    for (String path : store.paths()) {
      if (isOfLots(path)) {
        wanted.add(path);
      }
    }
    return then.without(former).with(wanted, store);
  }

  private static boolean isOfLots(String path) {
    return DataFileKind.of(path).filter(kind -> kind == DataFileKind.LOTS).isPresent();
  }

  private static List<BatchRecord> withThoseNamed(List<BatchRecord> records, FeedTables today) {
    Set<String> seen = new TreeSet<>();
    List<BatchRecord> all = new ArrayList<>();
    Deque<BatchRecord> left = new ArrayDeque<>(records);
    while (!left.isEmpty()) {
      BatchRecord record = left.pop();
      if (seen.add(record.number())) {
        all.add(record);
        List<String> named = new ArrayList<>(record.entries().stream().map(Entry::lot).toList());
        record.after().ifPresent(before -> named.add(before.thing()));
        for (String number : named) {
          BatchRecord one = today.batches().get(number);
          if (one != null) {
            left.add(one);
          }
        }
      }
    }
    return all;
  }
}
