package dev.pellucid.engine.promise;

import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One list of the page.
 *
 * @param name of the block that holds it
 * @param thing what one of its words is: "the code"
 * @param rows in the order of the page
 * @param byWord whether a word alone is known by itself, and its head only says of what sort it is
 */
record Listed(String name, String thing, List<Row> rows, boolean byWord) {
  private static final String MARKS = "[!?=:\\[{].*";

  Listed {
    rows = List.copyOf(rows);
  }

  String text() {
    return rows.stream().map(Row::text).collect(Collectors.joining());
  }

  /** The same list as a page has it. */
  Listed of(String block) {
    return new Listed(name, thing, Row.read(block), byWord);
  }

  /** How each thing is marked, by its name. */
  NavigableMap<String, String> marked() {
    NavigableMap<String, String> marked = new TreeMap<>();
    for (Row row : rows) {
      for (String head : row.heads()) {
        row.words().forEach(word -> put(marked, head, word));
      }
    }
    return marked;
  }

  private void put(NavigableMap<String, String> marked, String head, String word) {
    if (byWord) {
      marked.put(thing + " " + word, head);
      return;
    }
    String name = thing + " " + head + ": " + word.replaceFirst(MARKS, "");
    int equals = word.indexOf('=');
    marked.put(name, equals < 0 ? word : word.substring(0, equals));
    if (equals >= 0) {
      for (String one : word.substring(equals + 1).split("\\|", -1)) {
        marked.put(name + "=" + one, one);
      }
    }
  }
}
