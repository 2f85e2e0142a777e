package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A word after a number that is no unit. */
final class UnitUnknown implements Slip {
  static final Code CODE = new Code("unit-unknown");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i + 1 < line.size(); i++) {
      boolean strange =
          line.is(i + 1, Kind.UNREADABLE)
              || (line.is(i + 1, Kind.WORD)
                  && !Vocabulary.phrases(line.place()).contains(line.at(i + 1).text()));
      if (line.is(i, Kind.NUMBER) && strange) {
        return Optional.of(
            Finding.error(CODE, line.at(i + 1).span(), line.at(i + 1).text() + " is not a unit")
                .helping(
                    line.place().hasShares()
                        ? "weigh it, and write the share in %, g/kg or mg/kg"
                        : UnitsOfLine.help(line, line.at(i).text())));
      }
    }
    return Optional.empty();
  }
}
