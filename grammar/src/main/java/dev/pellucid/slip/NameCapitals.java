package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** A name with capitals in it. */
final class NameCapitals implements Slip {
  static final Code CODE = new Code("name-capitals");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return isNameInWords(line) ? Optional.of(words(line)) : line.first(NameCapitals::look);
  }

  /** {@code species Nile tilapia}. */
  private static boolean isNameInWords(BrokenLine line) {
    boolean all = NameWithSpace.isNamingHead(line) && line.size() > 2;
    boolean mixed = false;
    for (int i = 1; all && i < line.size(); i++) {
      Lexeme word = line.at(i);
      mixed |= word.kind() == Kind.UNREADABLE;
      all = word.kind() == Kind.WORD || NAME.matcher(word.text()).matches();
    }
    return all && mixed;
  }

  private static Finding words(BrokenLine line) {
    Span name = line.through(1, line.size() - 1);
    String fixed = NameWithSpace.joined(name.text());
    return Finding.error(
            CODE, name, name.text() + " mixes capitals and small letters, and has a space in it")
        .helping("write " + fixed)
        .fixing(name, fixed);
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
