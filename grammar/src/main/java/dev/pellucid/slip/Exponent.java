package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** A number with an exponent. */
final class Exponent implements Slip {
  static final Code CODE = new Code("number-exponent");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(Exponent::look);
  }

  private static final Pattern EXPONENT =
      Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,12})?[eE][+-]?[0-9]");

  private static Optional<Finding> look(Lexeme lexeme) {
    if (!EXPONENT.matcher(lexeme.text()).matches()) {
      return Optional.empty();
    }
    String plain = new BigDecimal(lexeme.text()).toPlainString();
    Finding finding =
        Finding.error(CODE, lexeme.span(), lexeme.text() + " has an exponent, a number has none")
            .helping("write " + plain);
    return Optional.of(plain.length() <= 12 ? finding.mending(lexeme.span(), plain) : finding);
  }
}
