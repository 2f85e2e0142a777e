package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
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
        return Optional.of(
            Finding.error(CODE, line.at(i).span(), line.at(i).text() + " has no unit")
                .helping("for example: " + Model.line(line.file(), line.place())));
      }
    }
    return Optional.empty();
  }
}
