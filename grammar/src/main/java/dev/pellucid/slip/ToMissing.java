package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.Optional;

/** Two numbers side by side. */
final class ToMissing implements Slip {
  static final Code CODE = new Code("to-missing");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i + 1 < line.size(); i++) {
      if (line.is(i, Kind.NUMBER) && line.is(i + 1, Kind.NUMBER)) {
        return Optional.of(finding(line, i));
      }
    }
    return Optional.empty();
  }

  private static Finding finding(BrokenLine line, int i) {
    Span span = line.through(i, i + 1);
    String fixed = line.at(i).text() + " to " + line.at(i + 1).text();
    Finding finding = Finding.error(CODE, span, "two numbers stand side by side");
    boolean range = line.is(i - 1, "within") || line.is(i - 1, "accept") || line.is(i - 1, "fish");
    return range
        ? finding.helping("write " + fixed).fixing(span, fixed)
        : finding.helping("a range is written " + fixed + "; digits are not grouped");
  }
}
