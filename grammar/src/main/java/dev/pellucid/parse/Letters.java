package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.text.SourceFile;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.misc.Interval;

/**
 * The text of a file as the lexer reads it, without a copy: the {@link Alphabet}'s stand-in of each
 * character. It counts UTF-16 units, as spans do, passes over a leading byte order mark, and gives
 * texts as they stand in the file.
 */
final class Letters implements CharStream {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final String text;
  private final String name;
  private int at;

  private Letters(SourceFile source) {
    this.text = source.text();
    this.name = source.path();
    this.at = beginning(text);
  }

  /** A lexer at the beginning of a text, with the only stream that it may read. */
  static FeedTokens lexer(SourceFile source) {
    FeedTokens lexer = new FeedTokens(new Letters(source));
    Alphabet.teach(lexer);
    lexer.removeErrorListeners();
    return lexer;
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
    if (ahead == 0) {
      return 0;
    }
    return place >= 0 && place < text.length() ? Alphabet.standIn(text.charAt(place)) : EOF;
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
