package dev.pellucid.syntax;

import dev.pellucid.text.Span;

/** One piece of a file that is not white space, comments included. */
public record Lexeme(Kind kind, Span span) {

  /** What it looks like; what it means depends on its place. */
  public enum Kind {
    /** A name, a code or a word of the language. */
    WORD,
    NUMBER,
    /** Also a word such as {@code kg}, when a number stands before it. */
    UNIT,
    /** {@code 2027-03-31}. */
    DAY,
    /** {@code :} or {@code +}. */
    SYMBOL,
    /** With its quotes. */
    QUOTED,
    /** From {@code #} to the end of the line. */
    COMMENT,
    /** Anything else between two white spaces; no valid file has one. */
    UNREADABLE
  }

  public String text() {
    return span.text();
  }

  public boolean is(String text) {
    int length = span.end() - span.start();
    return length == text.length() && span.file().text().startsWith(text, span.start());
  }
}
