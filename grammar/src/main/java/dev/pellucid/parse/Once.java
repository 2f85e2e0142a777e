package dev.pellucid.parse;

import dev.pellucid.text.Span;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A phrase that may stand once on a line; says so where it stands twice. */
final class Once<T> {
  private final String name;
  private final Pieces pieces;
  private @Nullable T value;
  private @Nullable Span first;

  Once(String name, Pieces pieces) {
    this.name = name;
    this.pieces = pieces;
  }

  Optional<T> value() {
    return Optional.ofNullable(value);
  }

  void put(T read, Span span) {
    if (first != null) {
      pieces.say(Complaints.phraseTwice(name, span, first));
    }
    value = read;
    first = span;
  }
}
