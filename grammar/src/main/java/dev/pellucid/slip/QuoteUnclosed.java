package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** Text in quotes that lacks one of its two quotes. */
final class QuoteUnclosed implements Slip {
  static final Code CODE = new Code("quote-unclosed");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(QuoteUnclosed::look);
  }

  private static Optional<Finding> look(Lexeme lexeme) {
    String text = lexeme.text();
    int quote = text.indexOf('"');
    boolean one = lexeme.kind() == Kind.UNREADABLE && quote >= 0 && quote == text.lastIndexOf('"');
    if (!one) {
      return Optional.empty();
    }
    Finding finding =
        Finding.error(CODE, lexeme.span(), "this text has a quote on one side only")
            .helping("put a \" at each end of the text");
    String whole = text.stripTrailing();
    boolean sure = quote == 0 && whole.length() > 1 && whole.indexOf('#') < 0;
    return Optional.of(sure ? finding.fixing(lexeme.span(), whole + "\"") : finding);
  }
}
