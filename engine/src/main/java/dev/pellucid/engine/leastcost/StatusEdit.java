package dev.pellucid.engine.leastcost;

import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.util.Optional;

/**
 * A recipe that was approved is a draft once its shares change, until a person sets it back. One
 * that is a draft, or says nothing, stays as it is.
 */
final class StatusEdit {
  private static final String STATUS = "status";
  private static final String APPROVED = "approved";

  private StatusEdit() {}

  static Optional<TextEdit> of(SourceFile source) {
    String text = source.text();
    int start = 0;
    while (start < text.length()) {
      int end = text.indexOf('\n', start);
      end = end < 0 ? text.length() : end;
      int at = word(text, start, end);
      if (at < end && text.startsWith(STATUS, at)) {
        int value = word(text, at + STATUS.length(), end);
        boolean told = value > at + STATUS.length() && text.startsWith(APPROVED, value);
        return told
            ? Optional.of(new TextEdit(new Span(source, value, value + APPROVED.length()), "draft"))
            : Optional.empty();
      }
      start = end + 1;
    }
    return Optional.empty();
  }

  /** Where the next word of a line stands. */
  private static int word(String text, int from, int end) {
    int at = from;
    while (at < end && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
      at++;
    }
    return at;
  }
}
