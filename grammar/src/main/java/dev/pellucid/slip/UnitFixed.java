package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.UnitSpelling;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A unit in another spelling, or with the wrong capitals. */
final class UnitFixed implements Slip {
  static final Code CODE = new Code("unit-spelling");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 1; i < line.size(); i++) {
      if (line.is(i - 1, Kind.NUMBER) && line.at(i).kind() != Kind.UNIT) {
        Lexeme lexeme = line.at(i);
        Optional<String> unit = UnitSpelling.of(lexeme.text()).filter(u -> !lexeme.is(u));
        if (unit.isPresent()) {
          return unit.map(right -> finding(lexeme, right));
        }
      }
    }
    return Optional.empty();
  }

  private static Finding finding(Lexeme lexeme, String unit) {
    return Finding.error(CODE, lexeme.span(), lexeme.text() + " is written " + unit + " here")
        .helping("write " + unit)
        .fixing(lexeme.span(), unit);
  }
}
