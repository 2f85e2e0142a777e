package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Digits;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Pattern;

/** A number in digits of another script, or in the wide ones of an East Asian keyboard. */
final class OtherDigits implements Slip {
  static final Code CODE = new Code("number-digits");

  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,12})?( %)?");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(OtherDigits::look);
  }

  private static Optional<Finding> look(Lexeme lexeme) {
    String text = lexeme.text();
    boolean other = text.codePoints().anyMatch(c -> c > 0x7F && Character.isDigit(c));
    Optional<String> plain = other ? plain(text) : Optional.empty();
    return plain.map(
        fixed -> {
          Finding finding = Finding.error(CODE, lexeme.span(), text + " " + Digits.OTHER);
          return NUMBER.matcher(fixed).matches()
              ? finding.helping("write " + fixed).fixing(lexeme.span(), fixed)
              : finding.helping("write the figure in the digits 0 to 9, with one point at most");
        });
  }

  /** The same number in digits of ASCII; nothing where more than a number stands there. */
  private static Optional<String> plain(String text) {
    StringBuilder plain = new StringBuilder();
    for (int c : text.codePoints().toArray()) {
      if (Character.isDigit(c)) {
        plain.append(Character.digit(c, 10));
      } else if (c == '.' || c == 0xFF0E || c == 0x66B) {
        plain.append('.');
      } else if (c == '%' || c == 0xFF05 || c == 0x66A) {
        plain.append(" %");
      } else {
        return Optional.empty();
      }
    }
    return Optional.of(plain.toString());
  }
}
