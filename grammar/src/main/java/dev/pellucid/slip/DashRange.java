package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A range with a dash in place of the word. */
final class DashRange implements Slip {
  static final Code CODE = new Code("range-dash");

  private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?)";
  private static final Pattern GLUED =
      Pattern.compile(NUMBER + "(?:[-\u2010-\u2015\u2212~]|\\.\\.+)" + NUMBER + "(%?)");
  private static final Pattern DASH = Pattern.compile("[-\u2010-\u2015\u2212~]|\\.\\.+");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i < line.size(); i++) {
      Matcher glued = GLUED.matcher(line.at(i).text());
      if (glued.matches()) {
        String unit = glued.group(3).isEmpty() ? "" : " %";
        return Optional.of(
            finding(line.at(i).span(), glued.group(1) + " to " + glued.group(2) + unit));
      }
      boolean apart = line.is(i, Kind.NUMBER) && line.is(i + 2, Kind.NUMBER);
      if (apart && DASH.matcher(line.at(i + 1).text()).matches()) {
        return Optional.of(
            finding(line.through(i, i + 2), line.at(i).text() + " to " + line.at(i + 2).text()));
      }
    }
    return Optional.empty();
  }

  private static Finding finding(Span span, String fixed) {
    return Finding.error(CODE, span, "a range is written with the word to")
        .helping("write " + fixed)
        .fixing(span, fixed);
  }
}
