package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;

/**
 * A written line, as the tokens from {@code from} to before {@code to}; empty lines and lines of
 * comment are none.
 *
 * @param indented whether white space stands before it
 */
record Line(int from, int to, boolean indented) {

  /** How many tokens stand on it; at least one. */
  int length() {
    return to - from;
  }

  /** The last of its tokens. */
  int last() {
    return to - 1;
  }

  /** The written lines of a file, in order. */
  static List<Line> of(Tokens tokens, SourceFile source) {
    List<Line> lines = new ArrayList<>(64);
    int count = tokens.count();
    int from = 0;
    boolean indented = count > 0 && tokens.start(0) > Tokens.beginning(source.text());
    for (int i = 0; i < count; i++) {
      if (tokens.endsLine(i)) {
        if (i > from) {
          lines.add(new Line(from, i, indented));
        }
        from = i + 1;
        indented = tokens.kind(i) == FeedTokens.INDENTED;
      }
    }
    if (count > from) {
      lines.add(new Line(from, count, indented));
    }
    return lines;
  }
}
