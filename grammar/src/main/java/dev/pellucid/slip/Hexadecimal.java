package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Digits;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Pattern;

/** A number as programs write it when they count in sixteens. */
final class Hexadecimal implements Slip {
  static final Code CODE = new Code("number-hexadecimal");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(Hexadecimal::look);
  }

  private static final Pattern HEXADECIMAL = Pattern.compile("0[xX][0-9A-Fa-f]+%?");

  private static Optional<Finding> look(Lexeme lexeme) {
    if (!HEXADECIMAL.matcher(lexeme.text()).matches()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(CODE, lexeme.span(), lexeme.text() + " " + Digits.HEXADECIMAL)
            .helping(Digits.HEXADECIMAL_REMEDY));
  }
}
