package dev.pellucid.engine.figures;

import java.util.Arrays;
import java.util.List;

/**
 * One line of a record: pieces that each start at their stop, or two spaces after the one before.
 * No line looks at another, so that one that changes moves no other.
 *
 * @param pieces the subject first
 */
record FactLine(List<String> pieces) {
  /** Columns counted from 0: subject, figure, and what is said of it. */
  private static final List<Integer> STOPS = List.of(2, 31, 44, 80, 112);

  private static final String GAP = "  ";

  FactLine {
    pieces = List.copyOf(pieces);
  }

  static FactLine of(String... pieces) {
    return new FactLine(List.of(pieces));
  }

  /** The pieces of a line as it was written; one that stands in column 1 is its first piece. */
  static FactLine read(String line) {
    return new FactLine(Arrays.asList(line.strip().split(" {2,}", -1)));
  }

  /** Laid out, without a line end. */
  String text() {
    StringBuilder text = new StringBuilder();
    int stop = 0;
    for (String piece : pieces) {
      if (piece.isEmpty()) {
        stop++;
        continue;
      }
      text.append(text.isEmpty() ? "" : GAP);
      int length = text.codePointCount(0, text.length());
      text.append(" ".repeat(Math.max(0, STOPS.get(stop++) - length))).append(piece);
    }
    return text.toString();
  }
}
