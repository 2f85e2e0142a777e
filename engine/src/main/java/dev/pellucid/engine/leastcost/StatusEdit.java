package dev.pellucid.engine.leastcost;

import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A recipe that was approved is a draft once its shares change, until a person sets it back; nobody
 * has reviewed the changed feed, so the review goes with the status. One that is a draft, or says
 * nothing, stays as it is.
 */
final class StatusEdit {
  private static final String STATUS = "status";
  private static final String APPROVED = "approved";
  private static final Pattern REVIEW =
      Pattern.compile("[ \\t]+reviewed[ \\t]+by[ \\t]+\"[^\"]*\"[ \\t]+on[ \\t]+[^\\s#]+");

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
            ? Optional.of(new TextEdit(new Span(source, value, endOf(text, value, end)), "draft"))
            : Optional.empty();
      }
      start = end + 1;
    }
    return Optional.empty();
  }

  /** Behind the status and the review, if one is told; a remark behind them stays. */
  private static int endOf(String text, int value, int end) {
    int status = value + APPROVED.length();
    Matcher review = REVIEW.matcher(text).region(status, end);
    return review.lookingAt() ? review.end() : status;
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
