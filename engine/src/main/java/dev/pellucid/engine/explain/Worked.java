package dev.pellucid.engine.explain;

import java.util.List;

/**
 * A table that shows how something is worked out, step by step. Its figures agree with each other
 * as they are printed.
 *
 * @param total whether the last row is what the others come to
 * @param words what is to be said below it
 */
public record Worked(
    String title, List<Head> heads, List<List<String>> rows, boolean total, List<String> words) {
  public Worked {
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
    words = List.copyOf(words);
  }

  /** The head of a column of figures, or of words. */
  public record Head(String words, boolean figures) {
    static Head ofWords(String words) {
      return new Head(words, false);
    }

    static Head ofFigures(String words) {
      return new Head(words, true);
    }
  }
}
