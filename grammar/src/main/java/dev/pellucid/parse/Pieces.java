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
import java.util.Optional;
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
  private final List<Finding> findings = new ArrayList<>();
  private int said;

  Pieces(SourceFile source) {
    this.source = source;
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

  /** How many findings have cost a line so far. */
  int said() {
    return said;
  }

  List<Finding> findings() {
    return findings;
  }

  SourceFile source() {
    return source;
  }

  Span span(Token token) {
    return source.span(token.getStartIndex(), token.getStopIndex() + 1);
  }

  Span span(ParserRuleContext context) {
    return span(context.start, context.stop);
  }

  Span span(Token first, Token last) {
    return source.span(first.getStartIndex(), last.getStopIndex() + 1);
  }

  Word word(Token token) {
    return new Word(text(token), span(token));
  }

  Word word(WordContext context) {
    return word(context.start);
  }

  /** Text in quotes; what cannot be seen in it is told elsewhere, and here made to be seen. */
  Quoted quoted(Token token) {
    String text = source.text().substring(token.getStartIndex() + 1, token.getStopIndex());
    return new Quoted(Unseen.shown(text), span(token));
  }

  Numeral numeral(Token token) {
    Numeral numeral = new Numeral(text(token), span(token));
    if (numeral.text().length() > MOST_DIGITS && tooLong(numeral.text())) {
      say(Complaints.numberTooLong(numeral));
    }
    return numeral;
  }

  Unit unit(Token token) {
    return Unit.of(text(token)).orElseThrow();
  }

  Amount amount(Token number, Token unit) {
    return new Amount(numeral(number), unit(unit), word(unit), span(number, unit));
  }

  Amount amount(AmountContext context, Expected expected) {
    Amount amount = amount(context.number, context.unit);
    check(amount, expected);
    return amount;
  }

  void check(Amount amount, Expected expected) {
    if (!expected.kinds().contains(amount.unit().kind())) {
      say(Complaints.wrongKind(amount, expected));
    } else {
      hold(amount.base(), amount.asWritten(), amount.span(), expected.extent(amount.unit().kind()));
    }
  }

  /** Whether a figure can be at all. */
  private boolean hold(double base, String written, Span span, Optional<Extent> extent) {
    Optional<Extent> broken = extent.filter(one -> !one.holds(base));
    broken.ifPresent(one -> say(Complaints.outOfBounds(written, span, one)));
    return broken.isEmpty();
  }

  Range range(RangeContext context, Expected expected) {
    Numeral low = numeral(context.low);
    Numeral high = numeral(context.high);
    Word written = word(context.unit);
    Range range = new Range(low, high, unit(context.unit), written, span(context));
    if (!expected.kinds().contains(range.unit().kind())) {
      say(Complaints.wrongKind(range, expected));
    } else if (low.value().compareTo(high.value()) > 0) {
      say(Complaints.reversed(range));
    } else {
      Optional<Extent> extent = expected.extent(range.unit().kind());
      if (hold(range.lowBase(), range.asWritten(), range.span(), extent)) {
        hold(range.highBase(), range.asWritten(), range.span(), extent);
      }
    }
    return range;
  }

  private String text(Token token) {
    return source.text().substring(token.getStartIndex(), token.getStopIndex() + 1);
  }

  private static boolean tooLong(String number) {
    int point = number.indexOf('.');
    int whole = point < 0 ? number.length() : point;
    int part = point < 0 ? 0 : number.length() - point - 1;
    return whole > MOST_DIGITS || part > MOST_DIGITS;
  }
}
