package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import java.math.BigDecimal;
import java.util.Optional;

/** A spread between lots, which belongs to the data. */
final class PlusMinus implements Slip {
  private static final String CONFIDENCE =
      "here say in how many batches it must hold: min 35 % in 95 % of batches";

  static final Code CODE = new Code("plus-minus");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i < line.size(); i++) {
      String text = line.at(i).text();
      if (text.indexOf('\u00B1') >= 0 || text.contains("+/-")) {
        return Optional.of(
            Finding.error(
                    CODE,
                    line.at(i).span(),
                    "a standard deviation between lots (±) has no place in a recipe")
                .helping(
                    "write ± and the standard deviation between lots behind the value, under ingredients/")
                .helping(line.place().hasBounds() ? CONFIDENCE : range(line, i)));
      }
    }
    return Optional.empty();
  }

  /** 8 to 10 % for 9 ± 1 %. */
  private static String range(BrokenLine line, int sign) {
    if (!line.is(sign - 1, Kind.NUMBER) || !line.is(sign + 1, Kind.NUMBER)) {
      return "here give a figure, or a range such as 8 to 10 %";
    }
    BigDecimal middle = new BigDecimal(line.at(sign - 1).text());
    BigDecimal spread = new BigDecimal(line.at(sign + 1).text());
    String unit = line.is(sign + 2, Kind.UNIT) ? " " + line.at(sign + 2).text() : "";
    return spread.compareTo(middle) > 0
        ? "here give a figure, or a range"
        : "here give a range: "
            + middle.subtract(spread).toPlainString()
            + " to "
            + middle.add(spread).toPlainString()
            + unit;
  }
}
