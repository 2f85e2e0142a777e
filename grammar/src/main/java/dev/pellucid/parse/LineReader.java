package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines;
import dev.pellucid.slip.BrokenLine;
import dev.pellucid.slip.Place;
import dev.pellucid.slip.Slips;
import dev.pellucid.syntax.FileKind;
import java.util.Optional;
import java.util.function.Function;
import org.antlr.v4.runtime.ParserRuleContext;

/**
 * One line to one record, or to the finding that says why not: the line fits its rule and all its
 * pieces are in order, or it is left out.
 */
final class LineReader {
  private final FileKind kind;
  private final LineTokens tokens;
  private final LineParser parser;
  private final Pieces pieces;
  private final Blemishes blemishes;

  LineReader(FileKind kind, LineTokens tokens, Pieces pieces, Blemishes blemishes) {
    this.kind = kind;
    this.tokens = tokens;
    this.parser = new LineParser(tokens);
    this.pieces = pieces;
    this.blemishes = blemishes;
  }

  <C extends ParserRuleContext, R> Optional<R> read(
      Place place, Line line, Function<FeedLines, C> rule, Function<C, R> build) {
    Optional<C> fitting = parser.parse(line, rule);
    if (fitting.isEmpty()) {
      sayWhatIsBroken(place, line);
      return Optional.empty();
    }
    int before = pieces.said();
    R record = build.apply(fitting.get());
    return pieces.said() == before ? Optional.of(record) : Optional.empty();
  }

  /** Whether the line would fit a rule; says nothing. */
  boolean fits(Line line, Function<FeedLines, ? extends ParserRuleContext> rule) {
    return parser.parse(line, rule).isPresent();
  }

  /** A line with a letter that no line may have is broken by it, and that has been said. */
  private void sayWhatIsBroken(Place place, Line line) {
    BrokenLine broken = new BrokenLine(kind, place, Lexing.lexemes(pieces.source(), tokens, line));
    if (!blemishes.touch(broken.span())) {
      pieces.say(Slips.finding(broken));
    }
  }
}
