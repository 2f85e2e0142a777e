package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.UnitSpelling;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number and its unit without a space between. */
final class UnitGlued implements Slip {
  static final Code CODE = new Code("unit-glued");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(UnitGlued::look);
  }

  private static final Pattern GLUED = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)([^0-9.,].*)");

  private static Optional<Finding> look(Lexeme lexeme) {
    Matcher found = GLUED.matcher(lexeme.text());
    if (lexeme.kind() != Kind.UNREADABLE || !found.matches()) {
      return Optional.empty();
    }
    return UnitSpelling.of(found.group(2))
        .map(unit -> finding(lexeme, found.group(1) + " " + unit));
  }

  private static Finding finding(Lexeme lexeme, String fixed) {
    return Finding.error(CODE, lexeme.span(), "a space is missing between number and unit")
        .helping("write " + fixed)
        .fixing(lexeme.span(), fixed);
  }
}
