package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Calendar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Blanks;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Figures of the data files, by the number rule of the language: a point, no grouping, no exponent,
 * at most 12 digits on either side, and always a unit. What cannot be read is a finding and absent;
 * nothing is guessed.
 */
final class FigureReader {
  private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?)";

  /** A unit begins with a letter or its own sign, so that {@code 15,7 %} is no 15 of ",7 %". */
  private static final String UNIT = "((?!to\\s)[\\p{L}%°℃].*)?";

  private static final Pattern AMOUNT = Pattern.compile("^" + NUMBER + "\\s*" + UNIT + "$");
  private static final Pattern SPREAD =
      Pattern.compile("^" + NUMBER + "\\s*(?:±|\\+/-)\\s*" + NUMBER + "\\s*" + UNIT + "$");
  private static final Pattern RANGE =
      Pattern.compile("^" + NUMBER + "\\s+to\\s+" + NUMBER + "\\s*" + UNIT + "$");
  private static final Pattern BELOW = Pattern.compile("^below\\s+(.*)$");
  private static final Pattern DAY = Pattern.compile("^([0-9]{4})-([0-9]{2})-([0-9]{2})$");
  private static final int MOST_DIGITS = 12;

  private final Remarks remarks;

  FigureReader(Remarks remarks) {
    this.remarks = remarks;
  }

  /** {@code 18 %}. */
  Optional<Figure> figure(Scalar value, Kind kind) {
    return amount(value, spaced(value), kind);
  }

  /** {@code 18 %}, not more than the whole. */
  OptionalDouble share(Scalar value) {
    Optional<Figure> figure = figure(value, Kind.SHARE);
    if (figure.isPresent() && figure.get().base() > 1) {
      remarks.add(FigureFindings.aboveWhole(value));
      return OptionalDouble.empty();
    }
    return figure.isPresent() ? OptionalDouble.of(figure.get().base()) : OptionalDouble.empty();
  }

  /** {@code 18 %} in the base of the kind. */
  OptionalDouble base(Scalar value, Kind kind) {
    Optional<Figure> figure = figure(value, kind);
    return figure.isPresent() ? OptionalDouble.of(figure.get().base()) : OptionalDouble.empty();
  }

  /** {@code 5 g} in the base of the kind, more than nothing and within what can be. */
  OptionalDouble positive(Scalar value, Extent extent) {
    OptionalDouble base = base(value, extent.kind());
    if (base.isPresent() && base.getAsDouble() <= 0) {
      remarks.add(FigureFindings.nothing(value));
      return OptionalDouble.empty();
    }
    return base.isPresent() && !holds(value, base.getAsDouble(), Optional.of(extent))
        ? OptionalDouble.empty()
        : base;
  }

  /** Whether a figure can be at all; a finding where not. */
  private boolean holds(Scalar value, double base, Optional<Extent> extent) {
    Optional<Extent> broken = extent.filter(one -> !one.holds(base));
    broken.ifPresent(one -> remarks.add(FigureFindings.outOfBounds(value, one)));
    return broken.isEmpty();
  }

  /** {@code 24}, a count of things. */
  OptionalInt count(Scalar value) {
    if (!value.text().matches("[1-9][0-9]{0,5}")) {
      remarks.add(FigureFindings.count(value));
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(value.text()));
  }

  /** {@code 50 to 250 g}: the low and the high end in the base of the kind. */
  Optional<Ends> range(Scalar value, Kind kind) {
    Matcher range = RANGE.matcher(spaced(value));
    if (!range.matches()) {
      if (AMOUNT.matcher(spaced(value)).matches()) {
        remarks.add(NumberSlips.oneFigureForRange(value));
      } else {
        remarks.add(NumberSlips.explain(value));
      }
      return Optional.empty();
    }
    Optional<Figure> low = checked(value, range.group(1), range.group(3), kind);
    Optional<Figure> high = low.flatMap(l -> checked(value, range.group(2), range.group(3), kind));
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    if (low.get().base() > high.get().base()) {
      remarks.add(FigureFindings.backwards(value));
      return Optional.empty();
    }
    return Optional.of(new Ends(low.get().base(), high.get().base()));
  }

  /** {@code 40 to 75 %}: more than nothing, not more than the whole. */
  Optional<Ends> part(Scalar value) {
    Optional<Ends> ends = range(value, Kind.SHARE);
    if (ends.isPresent() && ends.get().high() > 1) {
      remarks.add(FigureFindings.aboveWhole(value));
      return Optional.empty();
    }
    if (ends.isPresent() && ends.get().high() <= 0) {
      remarks.add(FigureFindings.nothing(value));
      return Optional.empty();
    }
    return ends;
  }

  /** The ends of a range. */
  record Ends(double low, double high) {}

  /** {@code 47.5 ± 1.2 %}, {@code none} or {@code below 0.1 %}. */
  Optional<Content> content(Scalar value, Kind kind, Source source) {
    String text = spaced(value);
    if (text.equals("none")) {
      return Optional.of(content(value, 0, 0, OptionalDouble.empty(), source));
    }
    Matcher below = BELOW.matcher(text);
    Matcher spread = SPREAD.matcher(text);
    if (below.matches()) {
      return withinWhole(value, amount(value, below.group(1), kind))
          .map(most -> content(value, 0, most.base(), OptionalDouble.empty(), source));
    }
    if (spread.matches()) {
      Optional<Figure> width = checked(value, spread.group(2), spread.group(3), kind);
      return width
          .flatMap(w -> withinWhole(value, checked(value, spread.group(1), spread.group(3), kind)))
          .map(m -> spreadContent(value, m, width, source));
    }
    return withinWhole(value, amount(value, text, kind))
        .map(it -> content(value, it.base(), it.base(), OptionalDouble.empty(), source));
  }

  private static Content spreadContent(
      Scalar value, Figure mean, Optional<Figure> width, Source source) {
    OptionalDouble spread =
        width.isPresent() ? OptionalDouble.of(width.get().base()) : OptionalDouble.empty();
    return content(value, mean.base(), mean.base(), spread, source);
  }

  private static Content content(
      Scalar value, double low, double high, OptionalDouble spread, Source source) {
    return new Content(low, high, spread, value.text(), value.span(), source);
  }

  private Optional<Figure> withinWhole(Scalar value, Optional<Figure> figure) {
    if (figure.isPresent() && figure.get().unit().kind() == Kind.SHARE && figure.get().base() > 1) {
      remarks.add(FigureFindings.aboveWhole(value));
      return Optional.empty();
    }
    return figure;
  }

  private Optional<Figure> amount(Scalar value, String text, Kind kind) {
    Matcher amount = AMOUNT.matcher(text);
    if (NumberSlips.isExponent(text) || !amount.matches()) {
      remarks.add(NumberSlips.explain(value));
      return Optional.empty();
    }
    return checked(value, amount.group(1), amount.group(2), kind);
  }

  /** A bare number before a name, as formulas write it; empty where it breaks the number rule. */
  Optional<String> number(Scalar value, String number) {
    Optional<Finding> slip = NumberSlips.inDigits(value, number, MOST_DIGITS);
    slip.ifPresent(remarks::add);
    return slip.isPresent() ? Optional.empty() : Optional.of(number);
  }

  private Optional<Figure> checked(Scalar value, String number, @Nullable String unit, Kind kind) {
    if (number(value, number).isEmpty()) {
      return Optional.empty();
    }
    if (unit == null) {
      remarks.add(FigureFindings.unitMissing(value, kind, Units.example(kind)));
      return Optional.empty();
    }
    return Units.of(value, unit.strip(), kind, remarks)
        .map(known -> new Figure(number, known))
        .filter(figure -> holds(value, figure.base(), Extent.of(kind)));
  }

  /** {@code 2026-11-01}. */
  Optional<LocalDate> day(Scalar value) {
    Matcher day = DAY.matcher(value.text());
    if (day.matches()) {
      try {
        LocalDate read =
            LocalDate.of(
                Integer.parseInt(day.group(1)),
                Integer.parseInt(day.group(2)),
                Integer.parseInt(day.group(3)));
        if (!Calendar.holds(read)) {
          remarks.add(FigureFindings.dayOutOfBounds(value));
          return Optional.empty();
        }
        return Optional.of(read);
      } catch (DateTimeException noSuchDay) {
        remarks.add(FigureFindings.day(value));
        return Optional.empty();
      }
    }
    remarks.add(FigureFindings.day(value));
    return Optional.empty();
  }

  /** Every blank of the language is white space here too. */
  static String spaced(Scalar value) {
    return Blanks.plain(value.text());
  }

  /** The currency code of a price, where it has one. */
  static Optional<String> currency(Scalar value) {
    Matcher amount = AMOUNT.matcher(spaced(value));
    if (!amount.matches() || amount.group(2) == null || amount.group(2).length() < 3) {
      return Optional.empty();
    }
    return Optional.of(amount.group(2).substring(0, 3));
  }

  /** The unit that a symbol means, for those who need no figure. */
  Optional<Unit> unit(Scalar value) {
    return Units.ofNutrient(value, remarks);
  }
}
