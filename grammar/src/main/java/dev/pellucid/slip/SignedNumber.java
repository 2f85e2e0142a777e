package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Pattern;

/** A number with a sign. */
final class SignedNumber implements Slip {
  static final Code CODE = new Code("number-sign");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(SignedNumber::look);
  }

  private static final Pattern SIGNED = Pattern.compile("[-+\u2212][0-9]+(\\.[0-9]+)?");

  private static Optional<Finding> look(Lexeme lexeme) {
    String text = lexeme.text();
    if (!SIGNED.matcher(text).matches()) {
      return Optional.empty();
    }
    Finding finding = Finding.error(CODE, lexeme.span(), text + " has a sign, a number has none");
    return Optional.of(
        text.startsWith("+")
            ? finding.helping("write " + text.substring(1)).fixing(lexeme.span(), text.substring(1))
            : finding.helping("no figure of a feed lies below zero"));
  }
}
