package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** A supplied nutrient that does not say what it comes from. */
final class OriginMissing implements Slip {
  static final Code CODE = new Code("from-missing");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    boolean says = line.lexemes().stream().anyMatch(lexeme -> lexeme.is("from"));
    if (line.place() != Place.SUPPLY || says) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(
                CODE, line.span(), line.at(0).text() + " does not say which ingredient supplies it")
            .helping("end the line with the ingredient: from ascorbyl-phosphate-35"));
  }
}
