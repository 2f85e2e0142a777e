package dev.pellucid.slip;

import dev.pellucid.syntax.Lexeme.Kind;

/** Where on a line of a share its figure ends, and what said of its freedom begins. */
final class ShareTail {
  private ShareTail() {}

  /** The first lexeme behind the figure or {@code rest}; -1 where there is no whole figure. */
  static int start(BrokenLine line) {
    if (!line.place().hasShares()) {
      return -1;
    }
    int figure = line.is(0, "rework") && line.is(1, Kind.WORD) && isFigure(line, 2) ? 2 : 1;
    return !isFigure(line, figure) ? -1 : line.is(figure, "rest") ? figure + 1 : figure + 2;
  }

  private static boolean isFigure(BrokenLine line, int at) {
    return line.is(at, "rest") || (line.is(at, Kind.NUMBER) && line.is(at + 1, Kind.UNIT));
  }

  /** The first lexeme behind the phrases that are whole, read from one on. */
  static int afterPhrases(BrokenLine line, int from) {
    int at = from;
    while (afterPhrase(line, at) > at) {
      at = afterPhrase(line, at);
    }
    return at;
  }

  private static int afterPhrase(BrokenLine line, int at) {
    if (line.is(at, "step")) {
      return line.is(at + 1, Kind.NUMBER) && line.is(at + 2, Kind.UNIT) ? at + 3 : at;
    }
    boolean range =
        line.is(at, "within")
            && line.is(at + 1, Kind.NUMBER)
            && line.is(at + 2, "to")
            && line.is(at + 3, Kind.NUMBER)
            && line.is(at + 4, Kind.UNIT);
    if (!range) {
      return at;
    }
    return line.is(at + 5, "or") && line.is(at + 6, "none") ? at + 7 : at + 5;
  }
}
