package dev.pellucid.engine.promise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A line of a list: words under a head, or under several heads that have the same words.
 *
 * @param head {@code ingredients.particle}, or several with a comma and a blank between
 * @param words each with its marks: {@code mass}, {@code source!}, {@code kind!=trays|bed}
 */
record Row(String head, List<String> words) {
  private static final int WIDTH = 110;
  private static final String BETWEEN_HEADS = ", ";

  Row {
    words = List.copyOf(words);
  }

  /** Heads with the same words stand in one row, at the place of the first. */
  static List<Row> joined(List<Row> rows) {
    Map<List<String>, String> heads = new LinkedHashMap<>();
    rows.forEach(row -> heads.merge(row.words(), row.head(), (a, b) -> a + BETWEEN_HEADS + b));
    List<Row> joined = new ArrayList<>();
    heads.forEach((words, head) -> joined.add(new Row(head, words)));
    return joined;
  }

  /** The rows of a block of a page. */
  static List<Row> read(String block) {
    List<Row> rows = new ArrayList<>();
    for (String line : block.replaceAll("\n +", " ").lines().toList()) {
      int colon = line.indexOf(": ");
      String words = line.substring(colon + 2).strip();
      rows.add(new Row(line.substring(0, colon), List.of(words.split(" +", -1))));
    }
    return rows;
  }

  List<String> heads() {
    return List.of(head.split(BETWEEN_HEADS, -1));
  }

  /** As lines of a page that are not too long, all but the first indented. */
  String text() {
    StringBuilder text = new StringBuilder();
    int length = 0;
    for (String piece : (head + ": " + String.join(" ", words)).split(" ", -1)) {
      boolean breaks = length + 1 + piece.length() > WIDTH;
      text.append(length == 0 ? "" : breaks ? "\n    " : " ").append(piece);
      length = breaks ? 4 + piece.length() : length + 1 + piece.length();
    }
    return text.append('\n').toString();
  }
}
