package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A line without its figure. */
final class AmountMissing implements Slip {
  static final Code CODE = new Code("amount-missing");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    boolean wanted =
        line.place().hasShares()
            || line.place() == Place.SUPPLY
            || line.place() == Place.OVERAGE
            || line.place() == Place.LABEL
            || line.place() == Place.PROCESS;
    boolean lacks =
        line.size() == 1
            || line.is(1, "within")
            || (line.is(1, "step") && line.is(2, Kind.NUMBER))
            || (line.is(1, "or") && line.is(2, "none"))
            || line.is(1, "from")
            || line.is(1, "for")
            || line.is(1, Kind.UNIT)
            || line.is(1, "%");
    if (!wanted || !lacks || line.at(0).kind() != Kind.WORD) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(CODE, line.at(0).span(), line.at(0).text() + " has no figure")
            .helping("write how much, for example: " + example(line)));
  }

  private static String example(BrokenLine line) {
    return line.place().hasShares()
        ? line.at(0).text() + "   1.50 %"
        : Model.line(line.file(), line.place());
  }
}
