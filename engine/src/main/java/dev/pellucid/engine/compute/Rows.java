package dev.pellucid.engine.compute;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The rows of a feed.
 *
 * @param ofSome those of which there is some
 * @param atZero those of which there is none
 */
record Rows(List<Row> ofSome, List<Row> atZero) {

  /** Rows parted by whether there is any of them; their order stays. */
  static Rows of(List<Row> every) {
    int some = 0;
    for (Row row : every) {
      some += row.isOfSome() ? 1 : 0;
    }
    if (some == every.size()) {
      return new Rows(every, List.of());
    }
    List<Row> ofSome = new ArrayList<>(some);
    List<Row> atZero = new ArrayList<>(every.size() - some);
    for (Row row : every) {
      (row.isOfSome() ? ofSome : atZero).add(row);
    }
    return new Rows(ofSome, atZero);
  }

  /** The ingredients without a price that are in the feed, sorted. */
  List<String> unpriced() {
    TreeSet<String> names = new TreeSet<>();
    for (Row row : ofSome) {
      if (row.price().isEmpty()) {
        names.add(row.ingredient().name());
      }
    }
    return List.copyOf(names);
  }
}
