package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** The last slip: it knows every line, and shows what a line of the section looks like. */
final class ModelLine implements Slip {
  static final Code CODE = new Code("line-unreadable");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    String place = line.place().line();
    return Optional.of(
        Finding.error(CODE, line.span(), "this does not read as " + place)
            .helping(place + " reads: `" + Model.line(line.file(), line.place()) + "`"));
  }
}
