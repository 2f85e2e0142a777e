package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Letters that cannot be seen and that no file may hold: control characters other than tab and line
 * end, marks of direction and other characters without a width, and what stands in for bytes that
 * could not be read. One finding for each line that has any.
 */
final class Blemishes {
  static final Code CONTROL_CHARACTER = new Code("control-character");
  private static final char REPLACEMENT = '\uFFFD';

  private final SourceFile source;
  private final boolean lossTold;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Span> lines = new ArrayList<>();

  /**
   * @param lossTold whether a finding has already said that bytes could not be read
   */
  Blemishes(SourceFile source, boolean lossTold) {
    this.source = source;
    this.lossTold = lossTold;
    String text = source.text();
    int at = Letters.beginning(text);
    while (at < text.length()) {
      at = isBlemish(text.charAt(at)) ? note(at) : at + 1;
    }
  }

  List<Finding> findings() {
    return findings;
  }

  /** Whether one of them lies in the line that a stretch belongs to. */
  boolean touch(Span span) {
    for (Span line : lines) {
      if (line.start() <= span.start() && span.start() <= line.end()) {
        return true;
      }
    }
    return false;
  }

  private static boolean isBlemish(char c) {
    return c < ' '
        ? c != '\t' && c != '\n' && c != '\r'
        : c > '~' && (c == REPLACEMENT || isUnseen(c));
  }

  private static boolean isUnseen(char c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  /** Notes the line and gives the place after it. */
  private int note(int at) {
    String text = source.text();
    int start = at;
    while (start > 0 && !isLineEnd(text.charAt(start - 1))) {
      start--;
    }
    int end = at;
    while (end < text.length() && !isLineEnd(text.charAt(end))) {
      end++;
    }
    lines.add(source.span(start, end));
    if (text.charAt(at) != REPLACEMENT || !lossTold) {
      findings.add(finding(at));
    }
    return end;
  }

  private Finding finding(int at) {
    char c = source.text().charAt(at);
    String name = String.format(Locale.ROOT, "U+%04X", (int) c);
    return Finding.error(
            CONTROL_CHARACTER,
            source.span(at, at + 1),
            c == REPLACEMENT
                ? "a character was lost here when the file was saved, " + name
                : "a character that cannot be seen stands here, " + name)
        .helping("delete it, or type the word anew")
        .mending(source.span(at, at + 1), "");
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
