package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number with its thousands set apart: 1,000 could also be 1.000. */
final class GroupedNumber implements Slip {
  static final Code CODE = new Code("number-grouped");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(GroupedNumber::look);
  }

  private static final Pattern GROUPED =
      Pattern.compile("([0-9]{1,3})((?:[,'\u2019][0-9]{3})+)(\\.[0-9]+)?");

  /** Nobody writes a decimal sign so, and so there is one way to read it. */
  private static final Pattern UNDERSCORED = Pattern.compile("[0-9]+(?:_[0-9]+)+(\\.[0-9]+)?");

  private static Optional<Finding> look(Lexeme lexeme) {
    if (UNDERSCORED.matcher(lexeme.text()).matches()) {
      return Optional.of(underscored(lexeme));
    }
    Matcher found = GROUPED.matcher(lexeme.text());
    if (!found.matches()) {
      return Optional.empty();
    }
    String joined = lexeme.text().replaceAll("[,'\u2019]", "");
    boolean point = found.group(2).length() == 4 && found.group(3) == null;
    return Optional.of(
        Finding.error(CODE, lexeme.span(), lexeme.text() + " could be read in two ways")
            .helping(
                point
                    ? "write "
                        + joined
                        + ", or "
                        + found.group(1)
                        + "."
                        + found.group(2).substring(1)
                        + " if the comma is the decimal sign"
                    : "write " + joined + ", digits are not grouped"));
  }

  private static Finding underscored(Lexeme lexeme) {
    String joined = lexeme.text().replace("_", "");
    return Finding.error(CODE, lexeme.span(), lexeme.text() + " parts the digits of a number")
        .helping("write " + joined)
        .fixing(lexeme.span(), joined);
  }
}
