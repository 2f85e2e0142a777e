package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A quote inside quotes, or text glued to a quote. */
final class QuoteInside implements Slip {
  static final Code CODE = new Code("quote-inside");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(QuoteInside::look);
  }

  private static Optional<Finding> look(Lexeme lexeme) {
    int quote = lexeme.text().indexOf('"');
    boolean several = quote >= 0 && quote < lexeme.text().lastIndexOf('"');
    if (lexeme.kind() != Kind.UNREADABLE || !several) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(
                CODE, lexeme.span(), "text in quotes ends at the next quote, more follows here")
            .helping("leave out the quotes inside, or put a space after the last"));
  }
}
