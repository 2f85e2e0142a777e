package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Pattern;

/** A number with more than one point. */
final class NumberDots implements Slip {
  static final Code CODE = new Code("number-points");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(NumberDots::look);
  }

  private static final Pattern POINTS = Pattern.compile("[0-9]*(\\.[0-9]*){2,}");

  private static Optional<Finding> look(Lexeme lexeme) {
    if (!POINTS.matcher(lexeme.text()).matches()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(CODE, lexeme.span(), lexeme.text() + " has more than one point")
            .helping("a number has one point at most: 10.25"));
  }
}
