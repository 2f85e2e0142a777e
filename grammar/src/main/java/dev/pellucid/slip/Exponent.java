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

  private static final Pattern EXPONENT = Pattern.compile("[0-9]+(\\.[0-9]+)?[eE][+-]?[0-9]+%?");

  /** One that can be written out in the digits that a number may have. */
  private static final Pattern SHORT =
      Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,12})?[eE][+-]?[0-9]");

  private static Optional<Finding> look(Lexeme lexeme) {
    String text = lexeme.text();
    if (!EXPONENT.matcher(text).matches()) {
      return Optional.empty();
    }
    Finding finding =
        Finding.error(CODE, lexeme.span(), text + " has an exponent, a number has none");
    if (!SHORT.matcher(text).matches()) {
      return Optional.of(finding.helping("look the figure up again and write out its digits"));
    }
    String plain = new BigDecimal(text).toPlainString();
    Finding helped = finding.helping("write " + plain);
    return Optional.of(plain.length() <= 12 ? helped.fixing(lexeme.span(), plain) : helped);
  }
}
