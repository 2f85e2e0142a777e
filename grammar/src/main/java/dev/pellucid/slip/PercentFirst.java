package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.regex.Pattern;

/** A unit before its number. */
final class PercentFirst implements Slip {
  static final Code CODE = new Code("unit-first");

  private static final Pattern GLUED = Pattern.compile("%[0-9]+(\\.[0-9]+)?");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i < line.size(); i++) {
      String text = line.at(i).text();
      if (GLUED.matcher(text).matches()) {
        return Optional.of(finding(line.at(i).span(), text.substring(1) + " %"));
      }
      boolean apart = line.is(i, "%") && line.is(i + 1, Kind.NUMBER);
      if (apart && !line.is(i - 1, Kind.NUMBER) && !line.is(i + 2, Kind.UNIT)) {
        return Optional.of(finding(line.through(i, i + 1), line.at(i + 1).text() + " %"));
      }
    }
    return Optional.empty();
  }

  private static Finding finding(Span span, String fixed) {
    return Finding.error(CODE, span, "the unit stands after its number")
        .helping("write " + fixed)
        .fixing(span, fixed);
  }
}
