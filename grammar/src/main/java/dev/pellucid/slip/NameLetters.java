package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** A name with a letter that names do not have. */
final class NameLetters implements Slip {
  static final Code CODE = new Code("name-letters");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(NameLetters::look);
  }

  private static final Pattern WORDLIKE = Pattern.compile("[\\p{L}][\\p{L}\\p{M}0-9_./&'-]*,?");
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private static Optional<Finding> look(Lexeme lexeme) {
    String text = lexeme.text();
    if (lexeme.kind() != Kind.UNREADABLE || !WORDLIKE.matcher(text).matches()) {
      return Optional.empty();
    }
    Finding finding =
        Finding.error(CODE, lexeme.span(), text + " has a letter or sign that a name does not have")
            .helping("a name has the letters a to z, digits, and single hyphens between");
    String fixed = text.toLowerCase(Locale.ROOT).replaceAll("[_./,-]+", "-").replaceAll("-$", "");
    return Optional.of(
        NAME.matcher(fixed).matches()
            ? finding.helping("write " + fixed).fixing(lexeme.span(), fixed)
            : finding);
  }
}
