package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.Optional;

/** A range with its unit at both ends. */
final class RangeUnits implements Slip {
  static final Code CODE = new Code("range-units");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i + 4 < line.size(); i++) {
      boolean shape =
          line.is(i, Kind.NUMBER)
              && line.is(i + 1, Kind.UNIT)
              && line.is(i + 2, "to")
              && line.is(i + 3, Kind.NUMBER)
              && line.is(i + 4, Kind.UNIT);
      if (shape) {
        return Optional.of(finding(line, i));
      }
    }
    return Optional.empty();
  }

  private static Finding finding(BrokenLine line, int i) {
    Span span = line.through(i, i + 4);
    String unit = line.at(i + 4).text();
    String fixed = line.at(i).text() + " to " + line.at(i + 3).text() + " " + unit;
    Finding finding = Finding.error(CODE, span, "a range has its unit once, at the end");
    return line.is(i + 1, unit)
        ? finding.helping("write " + fixed).fixing(span, fixed)
        : finding.helping("write both ends in one unit");
  }
}
