package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Pattern;

/** A colon or plus without white space around it. */
final class SymbolGlued implements Slip {
  static final Code CODE = new Code("symbol-glued");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(lexeme -> look(line, lexeme));
  }

  private static final Pattern GLUED = Pattern.compile("[a-z][a-z0-9-]*(?:[:+][a-z][a-z0-9-]*)+");

  private Optional<Finding> look(BrokenLine line, Lexeme lexeme) {
    boolean here = line.place() == Place.LIMITS || line.place() == Place.WAIVERS;
    if (!here || !GLUED.matcher(lexeme.text()).matches()) {
      return Optional.empty();
    }
    String fixed = lexeme.text().replace(":", " : ").replace("+", " + ");
    return Optional.of(
        Finding.error(CODE, lexeme.span(), "a space belongs on both sides of : and +")
            .helping("write " + fixed)
            .fixing(lexeme.span(), fixed));
  }
}
