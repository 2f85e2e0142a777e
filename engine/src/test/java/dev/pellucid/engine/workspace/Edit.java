package dev.pellucid.engine.workspace;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One step of an edited folder: some files have another text now, or are gone. It holds whole
 * texts, so that any other step of a sequence can be left out and this one still means the same.
 *
 * @param texts by the path below the folder; empty where the file is gone
 */
record Edit(String words, SortedMap<String, Optional<String>> texts) {

  static Edit write(String words, String path, String text) {
    return new Edit(words + " " + path, new TreeMap<>(Map.of(path, Optional.of(text))));
  }

  static Edit remove(String path) {
    return new Edit("remove " + path, new TreeMap<>(Map.of(path, Optional.empty())));
  }

  static Edit move(String from, String to, String text) {
    return new Edit(
        "move " + from + " to " + to,
        new TreeMap<>(Map.of(from, Optional.empty(), to, Optional.of(text))));
  }

  /** The folder after it. */
  SortedMap<String, String> on(SortedMap<String, String> folder) {
    SortedMap<String, String> after = new TreeMap<>(folder);
    texts.forEach(
        (path, text) -> {
          after.remove(path);
          text.ifPresent(it -> after.put(path, it));
        });
    return after;
  }

  @Override
  public String toString() {
    return words;
  }
}
