package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sign such as {@code >=} in place of {@code min} and {@code max}. */
final class ComparisonSign implements Slip {
  static final Code CODE = new Code("comparison-sign");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(lexeme -> look(line, lexeme));
  }

  private static final Pattern SIGN = Pattern.compile("(>=|=>|<=|=<|[<>\u2264\u2265])([0-9].*)?");

  private Optional<Finding> look(BrokenLine line, Lexeme lexeme) {
    Matcher found = SIGN.matcher(lexeme.text());
    if (!found.matches()) {
      return Optional.empty();
    }
    String sign = found.group(1);
    String word = sign.contains(">") || sign.equals("\u2265") ? "min" : "max";
    String rest = found.group(2) == null ? "" : " " + found.group(2);
    Finding finding = Finding.error(CODE, lexeme.span(), sign + " is not a word of a recipe");
    if (!line.place().hasBounds()) {
      return Optional.of(
          finding.helping(
              "a limit belongs in the section limits, with min or max before its figure"));
    }
    return Optional.of(
        finding
            .helping("write " + word + ", which includes the figure itself")
            .fixing(lexeme.span(), word + rest));
  }
}
