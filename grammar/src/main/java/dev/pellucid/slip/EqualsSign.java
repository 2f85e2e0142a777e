package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An equals sign or a colon after a name. */
final class EqualsSign implements Slip {
  static final Code CODE = new Code("sign-after-name");

  private static final Pattern GLUED = Pattern.compile("([A-Za-z][A-Za-z0-9-]*)[=:]");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i < line.size(); i++) {
      Lexeme lexeme = line.at(i);
      Matcher glued = GLUED.matcher(lexeme.text());
      if (glued.matches()) {
        return Optional.of(finding(lexeme.span(), lexeme.span(), glued.group(1)));
      }
      if (i > 0 && (lexeme.is("=") || (lexeme.is(":") && !line.is(i + 1, Kind.WORD)))) {
        return Optional.of(finding(lexeme.span(), line.through(i - 1, i), line.at(i - 1).text()));
      }
    }
    return Optional.empty();
  }

  private static Finding finding(Span sign, Span replaced, String fixed) {
    return Finding.error(
            CODE, sign, "a name and what is said of it stand side by side, without a sign")
        .helping("leave out the sign after " + fixed)
        .fixing(replaced, fixed);
  }
}
