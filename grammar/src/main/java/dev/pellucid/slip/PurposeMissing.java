package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** An overage that does not say what it is for. */
final class PurposeMissing implements Slip {
  static final Code CODE = new Code("purpose-missing");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    boolean says = line.lexemes().stream().anyMatch(lexeme -> lexeme.is("for"));
    if (line.place() != Place.OVERAGE || says) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(CODE, line.span(), "this overage does not say what it is for")
            .helping("for handling: weighed on top and expected to be lost")
            .helping("for stability: stays in the feed and decays until it is fed"));
  }
}
