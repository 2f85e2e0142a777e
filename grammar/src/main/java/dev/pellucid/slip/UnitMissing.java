package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A number without its unit. */
final class UnitMissing implements Slip {
  static final Code CODE = new Code("unit-missing");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i < line.size(); i++) {
      boolean low = line.is(i + 1, "to");
      boolean phraseNext =
          i + 1 == line.size() || Vocabulary.phrases(line.place()).contains(line.at(i + 1).text());
      if (line.is(i, Kind.NUMBER) && phraseNext && !low) {
        return Optional.of(finding(line, line.at(i)));
      }
    }
    return Optional.empty();
  }

  /** Of what is mixed nearly every share is told in percent. */
  private static Finding finding(BrokenLine line, Lexeme number) {
    Finding finding = Finding.error(CODE, number.span(), number.text() + " has no unit");
    if (!line.place().hasShares()) {
      return finding.helping(UnitsOfLine.help(line, number.text()));
    }
    String meant = number.text() + " %";
    return finding.helping("write " + meant).fixing(number.span(), meant);
  }
}
