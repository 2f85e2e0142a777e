package dev.pellucid.parse;

import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Unit;
import dev.pellucid.parse.generated.FeedLines.AmountContext;
import dev.pellucid.parse.generated.FeedLines.RangeContext;
import dev.pellucid.parse.generated.FeedLines.WordContext;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Numeral;
import dev.pellucid.syntax.Quoted;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.Unseen;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;

/**
 * The small pieces of a line, from what the parser read to the records of the tree: words, numbers,
 * amounts, ranges. It says what is wrong with a piece that fits the grammar all the same: a unit of
 * the wrong kind, a range the wrong way round, a number with too many digits.
 */
final class Pieces {
  private static final int MOST_DIGITS = 12;

  private final SourceFile source;
  private final Tokens tokens;
  private final List<Finding> findings = new ArrayList<>();
  private int said;

  /** Of the line that is read: its first token, and how many findings there were before it. */
  private int first;

  private int saidBefore;

  Pieces(SourceFile source, Tokens tokens) {
    this.source = source;
    this.tokens = tokens;
  }

  /**
   * Takes tokens as those of this line from now on: what the parser read tells places on a line.
   */
  void begin(Line line) {
    first = line.from();
    saidBefore = said;
  }

  /** Whether nothing was found that costs the line its place in the tree. */
  boolean areSound() {
    return said == saidBefore;
  }

  /** A finding that costs the line it is on its place in the tree. */
  void say(Finding finding) {
    findings.add(finding);
    said++;
  }

  /** A finding about a line that stays in the tree all the same. */
  void remark(Finding finding) {
    findings.add(finding);
  }

  List<Finding> findings() {
    return findings;
  }

  SourceFile source() {
    return source;
  }

  Span span(Token token) {
    return tokens.span(first + token.getTokenIndex());
  }

  Span span(ParserRuleContext context) {
    return span(context.start, context.stop);
  }

  Span span(Token first, Token last) {
    return tokens.span(this.first + first.getTokenIndex(), this.first + last.getTokenIndex());
  }

  Word word(Token token) {
    return new Word(text(token), span(token));
  }

  Word word(WordContext context) {
    return word(context.start);
  }

  /** Text in quotes; what cannot be seen in it is told elsewhere, and here made to be seen. */
  Quoted quoted(Token token) {
    Span span = span(token);
    String text = source.text().substring(span.start() + 1, span.end() - 1);
    return new Quoted(Unseen.shown(text), span);
  }

  Numeral numeral(Token token) {
    Numeral numeral = new Numeral(text(token), span(token));
    if (numeral.text().length() > MOST_DIGITS && tooLong(numeral.text())) {
      say(Complaints.numberTooLong(numeral));
    }
    return numeral;
  }

  private static Unit unit(Word written) {
    return Unit.of(written.text()).orElseThrow();
  }

  Amount amount(Token number, Token unit) {
    Word written = word(unit);
    return new Amount(numeral(number), unit(written), written, span(number, unit));
  }

  Amount amount(AmountContext context, Expected expected) {
    Amount amount = amount(context.number, context.unit);
    check(amount, expected);
    return amount;
  }

  void check(Amount amount, Expected expected) {
    if (!expected.takes(amount.unit().kind())) {
      say(Complaints.wrongKind(amount, expected));
      return;
    }
    Extent extent = expected.extent(amount.unit().kind());
    if (extent != null && !extent.holds(amount.base())) {
      say(Complaints.outOfBounds(amount.asWritten(), amount.span(), extent));
    }
  }

  Range range(RangeContext context, Expected expected) {
    Numeral low = numeral(context.low);
    Numeral high = numeral(context.high);
    Word written = word(context.unit);
    Range range = new Range(low, high, unit(written), written, span(context));
    check(range, expected);
    return range;
  }

  private void check(Range range, Expected expected) {
    if (!expected.takes(range.unit().kind())) {
      say(Complaints.wrongKind(range, expected));
    } else if (range.isReversed()) {
      say(Complaints.reversed(range));
    } else {
      Extent extent = expected.extent(range.unit().kind());
      if (extent != null && !(extent.holds(range.lowBase()) && extent.holds(range.highBase()))) {
        say(Complaints.outOfBounds(range.asWritten(), range.span(), extent));
      }
    }
  }

  private String text(Token token) {
    return tokens.text(first + token.getTokenIndex());
  }

  private static boolean tooLong(String number) {
    int point = number.indexOf('.');
    int whole = point < 0 ? number.length() : point;
    int part = point < 0 ? 0 : number.length() - point - 1;
    return whole > MOST_DIGITS || part > MOST_DIGITS;
  }
}
