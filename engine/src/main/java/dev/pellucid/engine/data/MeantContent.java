package dev.pellucid.engine.data;

import dev.pellucid.measure.Unit;
import dev.pellucid.text.Blanks;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * What was probably meant by a content that cannot be so: the same digits with another unit, or
 * with the point elsewhere.
 */
final class MeantContent {
  private static final List<Unit> UNITS =
      List.of(
          Unit.PERCENT,
          Unit.G_PER_KG,
          Unit.MG_PER_KG,
          Unit.UG_PER_KG,
          Unit.IU_PER_KG,
          Unit.IU_PER_G);

  /** The nearest first. */
  private static final int[] SHIFTS = {-1, 1, -2, 2, -3, 3};

  private MeantContent() {}

  /**
   * @param printed the unit in which the nutrient is printed
   * @param fits whether a content, in the base of its kind, can be so
   */
  static Optional<String> of(Content content, Unit printed, DoublePredicate fits) {
    Optional<Written> read = Written.of(content.asWritten());
    Optional<String> meant = read.isPresent() ? of(read.get(), printed, fits) : Optional.empty();
    return meant.isPresent() && content.isBound() ? Optional.of("below " + meant.get()) : meant;
  }

  /** The same of any figure. */
  static Optional<String> of(Written written, Unit printed, DoublePredicate fits) {
    for (Written other : others(written, printed)) {
      if (fits.test(other.base())) {
        return Optional.of(other.words());
      }
    }
    return Optional.empty();
  }

  /** Who writes another unit than the usual one may have taken the figure and not the unit. */
  private static List<Written> others(Written written, Unit printed) {
    List<Written> others = new ArrayList<>();
    if (written.unit() != printed && written.unit().kind() == printed.kind()) {
      others.add(new Written(written.number(), printed));
    }
    for (int shift : SHIFTS) {
      others.add(new Written(written.number().scaleByPowerOfTen(shift), written.unit()));
    }
    for (Unit unit : UNITS) {
      if (unit.kind() == written.unit().kind()) {
        others.add(new Written(written.number(), unit));
      }
    }
    return others;
  }

  /** A number and its unit as they were written. */
  record Written(BigDecimal number, Unit unit) {
    static Optional<Written> of(String asWritten) {
      String text = Blanks.plain(asWritten);
      String value = text.startsWith("below ") ? text.substring("below ".length()).strip() : text;
      int digits = 0;
      while (digits < value.length() && isOfNumber(value.charAt(digits))) {
        digits++;
      }
      int last = value.length();
      while (last > digits && !isBeforeUnit(value.charAt(last - 1))) {
        last--;
      }
      Optional<Unit> unit = Unit.of(value.substring(last));
      return digits == 0 || unit.isEmpty()
          ? Optional.empty()
          : Optional.of(new Written(new BigDecimal(value.substring(0, digits)), unit.get()));
    }

    private static boolean isOfNumber(char c) {
      return c == '.' || (c >= '0' && c <= '9');
    }

    private static boolean isBeforeUnit(char c) {
      return c == ' ' || (c >= '0' && c <= '9');
    }

    /** The same with the point elsewhere. */
    Written times(double shift) {
      return new Written(number.multiply(BigDecimal.valueOf(shift)), unit);
    }

    double base() {
      return unit.toBase(number);
    }

    String words() {
      return number.stripTrailingZeros().toPlainString() + " " + unit.symbol();
    }
  }
}
