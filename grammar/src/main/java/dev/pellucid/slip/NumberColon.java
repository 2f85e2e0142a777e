package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers with a colon between them: a time as a clock shows it, or a ratio. */
final class NumberColon implements Slip {
  static final Code CODE = new Code("number-colon");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(lexeme -> look(line, lexeme));
  }

  private static final Pattern COLON = Pattern.compile("[0-9.]+(:[0-9.]+)+%?");

  private static Optional<Finding> look(BrokenLine line, Lexeme lexeme) {
    if (!COLON.matcher(lexeme.text()).matches()) {
      return Optional.empty();
    }
    Finding finding =
        Finding.error(CODE, lexeme.span(), lexeme.text() + " has a colon, a figure is one number");
    return Optional.of(
        switch (line.place()) {
          case PROCESS -> finding.helping("write a time in one unit: 90 min, or 1.5 h");
          case LIMITS, WAIVERS ->
              finding.helping("write a ratio as one number: calcium : phosphorus  min 1.3");
          default -> finding.helping("write one number with its unit: 14.50 %");
        });
  }
}
