package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.Unseen;
import java.util.ArrayList;
import java.util.List;

/**
 * Characters that no file may hold: those that are {@link Unseen}, and what stands in for bytes
 * that could not be read. One finding for each line that has any.
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
  Blemishes(SourceFile source, Tokens tokens, boolean lossTold) {
    this.source = source;
    this.lossTold = lossTold;
    int at = 0;
    for (int i = 0; i < tokens.count(); i++) {
      if (tokens.mayHoldAnything(i)) {
        at = look(Math.max(at, tokens.start(i)), tokens.end(i));
      }
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

  /** Notes the lines of a stretch that have any; gives the place from which to look on. */
  private int look(int from, int to) {
    int at = from;
    while (at < to) {
      int found = next(at, to);
      at = found < 0 ? to : note(found);
    }
    return at;
  }

  /** The first of them in a stretch; -1 where there is none. */
  private int next(int from, int to) {
    int unseen = Unseen.find(source.text(), from, to);
    int lost = source.text().indexOf(REPLACEMENT, from);
    boolean isLost = lost >= 0 && lost < to;
    return isLost && (unseen < 0 || lost < unseen) ? lost : unseen;
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
    int c = source.text().codePointAt(at);
    Span place = source.span(at, at + Character.charCount(c));
    return Finding.error(
            CONTROL_CHARACTER,
            place,
            c == REPLACEMENT
                ? "a character was lost here when the file was saved, U+FFFD"
                : "a character that cannot be seen stands here, " + Unseen.named(c))
        .helping("delete it, or type the word again")
        .fixing(place, "");
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
