package dev.pellucid.engine.arithmetic;

import dev.pellucid.measure.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure as the page on the arithmetic prints it: {@code 24.58 %}, {@code 40 ± 2 %}, a list
 * {@code 98, 102, 101 mg/kg}.
 *
 * @param text as it is printed
 */
record Figure(String text) {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

  /** Its numbers, in the base of its unit where that is one of the language. */
  List<Double> all() {
    List<Double> all = new ArrayList<>();
    Matcher number = NUMBER.matcher(text);
    while (number.find()) {
      double value = Double.parseDouble(number.group());
      all.add(unit().isPresent() ? unit().get().toBase(value) : value);
    }
    if (all.isEmpty()) {
      throw new AssertionError("no figure: " + text);
    }
    return all;
  }

  private Optional<Unit> unit() {
    return Unit.of(text.substring(text.lastIndexOf(' ') + 1));
  }

  /** What a value in the base of its unit would be printed as, with as many decimals. */
  String printed(double base) {
    if (!Double.isFinite(base)) {
      return String.valueOf(base);
    }
    Matcher number = NUMBER.matcher(text);
    if (!number.find()) {
      throw new AssertionError("no figure: " + text);
    }
    double value = unit().isPresent() ? unit().get().fromBase(base) : base;
    int decimals = new BigDecimal(number.group()).scale();
    // Nine digits more, so that a half that doubles miss by a hair is still rounded up.
    String rounded =
        new BigDecimal(value)
            .setScale(decimals + 9, RoundingMode.HALF_EVEN)
            .setScale(decimals, RoundingMode.HALF_UP)
            .toPlainString();
    return text.substring(0, number.start()) + rounded + text.substring(number.end());
  }

  /** The same with one of its numbers, by its place, so many times as much. */
  Figure raised(int which, String times) {
    Matcher number = NUMBER.matcher(text);
    for (int i = 0; i <= which; i++) {
      if (!number.find()) {
        throw new AssertionError("no number " + which + ": " + text);
      }
    }
    BigDecimal more = new BigDecimal(number.group()).multiply(new BigDecimal(times));
    return new Figure(
        text.substring(0, number.start()) + more.toPlainString() + text.substring(number.end()));
  }
}
