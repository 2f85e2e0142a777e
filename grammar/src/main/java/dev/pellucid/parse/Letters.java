package dev.pellucid.parse;

import dev.pellucid.text.SourceFile;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.misc.Interval;

/**
 * The text of a file as the lexer reads it, without a copy. It counts UTF-16 units, as spans do,
 * and passes over a leading byte order mark.
 */
final class Letters implements CharStream {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final String text;
  private final String name;
  private int at;

  Letters(SourceFile source) {
    this.text = source.text();
    this.name = source.path();
    this.at = beginning(text);
  }

  /** Where the text begins: after a byte order mark, if there is one. */
  static int beginning(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
  }

  @Override
  public String getText(Interval interval) {
    int end = Math.min(interval.b + 1, text.length());
    return interval.a >= end ? "" : text.substring(interval.a, end);
  }

  @Override
  public void consume() {
    if (at == text.length()) {
      throw new IllegalStateException("past the end");
    }
    at++;
  }

  @Override
  public int LA(int ahead) {
    int place = ahead > 0 ? at + ahead - 1 : at + ahead;
    return ahead == 0 ? 0 : place >= 0 && place < text.length() ? text.charAt(place) : EOF;
  }

  @Override
  public int mark() {
    return -1;
  }

  @Override
  public void release(int marker) {}

  @Override
  public int index() {
    return at;
  }

  @Override
  public void seek(int index) {
    at = index;
  }

  @Override
  public int size() {
    return text.length();
  }

  @Override
  public String getSourceName() {
    return name;
  }
}
