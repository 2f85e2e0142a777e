package dev.pellucid.syntax;

import dev.pellucid.text.Span;

/** A name, a code or a word of the language, where it stands. */
public record Word(String text, Span span) {
  @Override
  public String toString() {
    return text;
  }
}
