package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.Set;

/** More on a line than it can hold. */
final class ExtraText implements Slip {
  static final Code CODE = new Code("text-extra");

  /** How many pieces a status has with the review behind it. */
  private static final int REVIEWED = 7;

  @Override
  public Optional<Finding> in(BrokenLine line) {
    int end = endOfWhole(line);
    if (end < 0 || end >= line.size()) {
      return Optional.empty();
    }
    Span extra = line.through(end, line.size() - 1);
    return Optional.of(
        Finding.error(CODE, extra, "the line is complete before this")
            .helping("delete the rest, or put # before it if it is a comment"));
  }

  /** The first lexeme after a line that would be whole without it; -1 when there is none. */
  private static int endOfWhole(BrokenLine line) {
    return switch (line.place()) {
      case MIX, COAT, CARRIER -> afterShare(line);
      case LABEL -> afterAmount(line, 1);
      case SUPPLY ->
          afterAmount(line, 1) == 3 && line.is(3, "from") && line.is(4, Kind.WORD) ? 5 : -1;
      case OVERAGE ->
          afterAmount(line, 1) == 3 && line.is(3, "for") && line.is(4, Kind.WORD) ? 5 : -1;
      case HEAD -> headEnd(line);
      case OPENING -> line.is(2, Kind.QUOTED) ? 3 : -1;
      case LIMITS, WAIVERS, PROCESS -> -1;
    };
  }

  private static int afterAmount(BrokenLine line, int at) {
    return line.is(at, Kind.NUMBER) && line.is(at + 1, Kind.UNIT) ? at + 2 : -1;
  }

  private static int afterShare(BrokenLine line) {
    int tail = ShareTail.start(line);
    return tail < 0 ? -1 : ShareTail.afterPhrases(line, tail);
  }

  private static int headEnd(BrokenLine line) {
    boolean word =
        Set.of("status", "species", "habit", "plant", "meets", "kind", "source")
            .contains(line.at(0).text());
    if (!word || !line.is(1, Kind.WORD)) {
      return -1;
    }
    boolean reviewed = line.is(0, "status") && line.is(2, "reviewed");
    return reviewed ? REVIEWED : 2;
  }
}
