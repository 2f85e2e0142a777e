package dev.pellucid.parse;

import dev.pellucid.slip.BrokenLine;
import dev.pellucid.slip.Place;
import dev.pellucid.slip.Slips;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.syntax.SectionWord;
import org.antlr.v4.runtime.ParserRuleContext;
import org.jspecify.annotations.Nullable;

/**
 * One line to what its rule reads on it, or to the finding that says why it does not fit: the line
 * fits its rule and all its pieces are in order, or it is left out.
 */
final class LineReader {
  private final FileKind kind;
  private final Tokens tokens;
  private final Pieces pieces;
  private final Blemishes blemishes;

  LineReader(FileKind kind, Tokens tokens, Pieces pieces, Blemishes blemishes) {
    this.kind = kind;
    this.tokens = tokens;
    this.pieces = pieces;
    this.blemishes = blemishes;
  }

  /** A line of a section as its rule reads it; null where a finding says why it does not fit. */
  @Nullable ParserRuleContext read(SectionWord section, Line line) {
    ParserRuleContext fitting = read(LineRule.of(section), line);
    if (fitting == null) {
      sayWhatIsBroken(Place.of(section), line);
    }
    return fitting;
  }

  /** A line outside any section, likewise. */
  @Nullable ParserRuleContext read(LineRule rule, Place place, Line line) {
    ParserRuleContext fitting = read(rule, line);
    if (fitting == null) {
      sayWhatIsBroken(place, line);
    }
    return fitting;
  }

  private @Nullable ParserRuleContext read(LineRule rule, Line line) {
    pieces.begin(line);
    return Shapes.known().read(rule, tokens, line);
  }

  /** Whether nothing has cost the line that was read last its place in the tree. */
  boolean isSound() {
    return pieces.areSound();
  }

  /** Whether the line would fit a rule; says nothing. */
  boolean fits(Line line, LineRule rule) {
    return Shapes.known().read(rule, tokens, line) != null;
  }

  /** A line with a letter that no line may have is broken by it, and that has been said. */
  private void sayWhatIsBroken(Place place, Line line) {
    BrokenLine broken = new BrokenLine(kind, place, Lexing.lexemes(tokens, line));
    if (!blemishes.touch(broken.span())) {
      pieces.say(Slips.finding(broken));
    }
  }
}
