package dev.pellucid.show;

import dev.pellucid.text.Position;
import dev.pellucid.text.Span;
import dev.pellucid.text.Unseen;

/**
 * The line in which a stretch begins, cut into what stands before it, the stretch itself, and what
 * stands behind it, as they are shown: a tab as one space, what cannot be seen by its number. Of a
 * long line only the part round the beginning of the stretch is left.
 */
record Marked(String before, String marked, String after) {
  private static final int WIDEST = 160;
  private static final int BEFORE = 40;
  private static final char GAP = '\u2026';
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  static Marked of(Span span) {
    Position place = span.from();
    String line = span.file().line(place.line());
    int start = Math.min(place.column() - 1, line.length());
    int end = Math.max(start, Math.min(start + span.end() - span.start(), line.length()));
    int from = line.length() <= WIDEST ? 0 : whole(line, Math.max(0, start - BEFORE));
    int to = line.length() <= WIDEST ? line.length() : whole(line, from + WIDEST);
    String before = shown(line, from, start);
    String after = shown(line, Math.min(end, to), to);
    return new Marked(
        from > 0 ? GAP + before : before,
        shown(line, start, Math.min(end, to)),
        to < line.length() ? after + GAP : after);
  }

  String line() {
    return (before + marked + after).stripTrailing();
  }

  /** How far from the beginning of the line the stretch stands. */
  int indent() {
    return width(before);
  }

  /** What stands below the stretch, to mark it. */
  String carets() {
    return "^".repeat(Math.max(1, width(marked)));
  }

  /** A place at or before another that does not part a pair, and lies in the line. */
  private static int whole(String line, int at) {
    if (at >= line.length()) {
      return line.length();
    }
    return at > 0 && Character.isLowSurrogate(line.charAt(at)) ? at - 1 : at;
  }

  private static String shown(String line, int from, int to) {
    String part = line.substring(from, to);
    boolean behindMark = from == 0 && !part.isEmpty() && part.charAt(0) == BYTE_ORDER_MARK;
    return Unseen.shownOnOneLine(behindMark ? ' ' + part.substring(1) : part);
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }
}
