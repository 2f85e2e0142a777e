package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A decimal comma. */
final class DecimalComma implements Slip {
  static final Code CODE = new Code("decimal-comma");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(DecimalComma::look);
  }

  private static final Pattern COMMA = Pattern.compile("([0-9]+),([0-9]+)(%?)");

  private static Optional<Finding> look(Lexeme lexeme) {
    Matcher found = COMMA.matcher(lexeme.text());
    if (!found.matches()) {
      return Optional.empty();
    }
    String fixed = found.group(1) + "." + found.group(2) + (found.group(3).isEmpty() ? "" : " %");
    return Optional.of(
        Finding.error(
                CODE, lexeme.span(), lexeme.text() + " has a comma, the decimal sign is a point")
            .helping("write " + fixed)
            .fixing(lexeme.span(), fixed));
  }
}
