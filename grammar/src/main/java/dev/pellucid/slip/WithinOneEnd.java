package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A range with one end. */
final class WithinOneEnd implements Slip {
  static final Code CODE = new Code("range-end-missing");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i + 1 < line.size(); i++) {
      boolean opens =
          line.is(i, "within") || line.is(i, "accept") || (i == 0 && line.is(i, "fish"));
      if (opens && line.is(i + 1, Kind.NUMBER) && !line.is(i + 2, "to")) {
        return Optional.of(finding(line, i));
      }
    }
    return Optional.empty();
  }

  private static Finding finding(BrokenLine line, int i) {
    String word = line.at(i).text();
    return Finding.error(CODE, line.through(i, i + 1), word + " takes two ends")
        .helping("write both, for example: " + word + " " + example(word));
  }

  private static String example(String word) {
    return switch (word) {
      case "fish" -> "50 to 250 g";
      case "accept" -> "8 to 10 %";
      default -> "10 to 20 %";
    };
  }
}
