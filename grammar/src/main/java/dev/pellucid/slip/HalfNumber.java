package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Pattern;

/** A number without a digit on one side of its point. */
final class HalfNumber implements Slip {
  static final Code CODE = new Code("number-half");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(HalfNumber::look);
  }

  private static final Pattern HALF = Pattern.compile("\\.[0-9]{1,12}|[0-9]{1,12}\\.");

  private static Optional<Finding> look(Lexeme lexeme) {
    String text = lexeme.text();
    if (!HALF.matcher(text).matches()) {
      return Optional.empty();
    }
    String fixed = text.startsWith(".") ? "0" + text : text.substring(0, text.length() - 1);
    return Optional.of(
        Finding.error(CODE, lexeme.span(), text + " lacks a digit beside its point")
            .helping("write " + fixed)
            .fixing(lexeme.span(), fixed));
  }
}
