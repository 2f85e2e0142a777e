package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import java.util.Optional;

/** A spread between lots, which belongs to the data. */
final class PlusMinus implements Slip {
  static final Code CODE = new Code("plus-minus");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(PlusMinus::look);
  }

  private static Optional<Finding> look(Lexeme lexeme) {
    String text = lexeme.text();
    if (text.indexOf('\u00B1') < 0 && !text.contains("+/-")) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(CODE, lexeme.span(), "a spread between lots has no place in a recipe")
            .helping(
                "write the spread beside the value in ingredients/; here give a range: 9 to 11 %"));
  }
}
