package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** A name with capitals in it. */
final class NameCapitals implements Slip {
  static final Code CODE = new Code("name-capitals");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(NameCapitals::look);
  }

  private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*");

  private static Optional<Finding> look(Lexeme lexeme) {
    if (lexeme.kind() != Kind.UNREADABLE || !NAME.matcher(lexeme.text()).matches()) {
      return Optional.empty();
    }
    String fixed = lexeme.text().toLowerCase(Locale.ROOT);
    return Optional.of(
        Finding.error(CODE, lexeme.span(), lexeme.text() + " mixes capitals and small letters")
            .helping("write " + fixed + "; capitals are for codes, such as VM-CAT")
            .fixing(lexeme.span(), fixed));
  }
}
