package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Numeral;
import dev.pellucid.text.Span;

/** The places of what a limit is written of. */
final class LimitWritten {
  private LimitWritten() {}

  /** Its figure, with the unit. */
  static Span figure(Limit limit) {
    return limit.written().byKind(Amount::span, Numeral::span);
  }

  /** The word {@code min} or {@code max} before its figure. */
  static Span side(Limit limit) {
    Span figure = figure(limit);
    String word = limit.side().word();
    int start = figure.file().text().lastIndexOf(word, figure.start() - 1);
    return figure.file().span(start, start + word.length());
  }
}
