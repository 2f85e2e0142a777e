package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a program writes where a sum went wrong, in the place of a number. */
final class NotFinite implements Slip {
  static final Code CODE = new Code("number-not-finite");

  private static final Pattern NOT_FINITE =
      Pattern.compile("[-+\u2212]?(nan|inf|infinity|\u221E)%?", Pattern.CASE_INSENSITIVE);

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 1; i < line.size(); i++) {
      Lexeme lexeme = line.at(i);
      if (NOT_FINITE.matcher(lexeme.text()).matches() && standsForNumber(line, i)) {
        return Optional.of(
            Finding.error(CODE, lexeme.span(), lexeme.text() + " is not a number")
                .helping("a formula of a spreadsheet went wrong; look the figure up again"));
      }
    }
    return Optional.empty();
  }

  /** A name may be spelt so too, but no unit stands behind a name. */
  private static boolean standsForNumber(BrokenLine line, int at) {
    return line.at(at).text().endsWith("%")
        || line.is(at + 1, "to")
        || line.is(at - 1, "to")
        || line.is(at - 1, "min")
        || line.is(at - 1, "max")
        || (at + 1 < line.size() && Unit.of(line.at(at + 1).text()).isPresent());
  }
}
