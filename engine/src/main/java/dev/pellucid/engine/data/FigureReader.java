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

  /** The same of a value that may be absent. */
  OptionalDouble share(Optional<Scalar> value) {
    return value.isPresent() ? share(value.get()) : OptionalDouble.empty();
  }

  /** {@code 18 %} in the base of the kind. */
  OptionalDouble base(Scalar value, Kind kind) {
    Optional<Figure> figure = figure(value, kind);
    return figure.isPresent() ? OptionalDouble.of(figure.get().base()) : OptionalDouble.empty();
  }

  /** The same of a value that may be absent. */
  OptionalDouble base(Optional<Scalar> value, Kind kind) {
    return value.isPresent() ? base(value.get(), kind) : OptionalDouble.empty();
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

  /** The same of a value that may be absent. */
  OptionalDouble positive(Optional<Scalar> value, Extent extent) {
    return value.isPresent() ? positive(value.get(), extent) : OptionalDouble.empty();
  }

  /** Whether a figure can be at all; a finding where not. */
  private boolean holds(Scalar value, double base, Optional<Extent> extent) {
    boolean holds = extent.isEmpty() || extent.get().holds(base);
    if (!holds) {
      remarks.add(FigureFindings.outOfBounds(value, extent.get()));
    }
    return holds;
  }

  /** {@code 24}, a count of things. */
  OptionalInt count(Scalar value) {
    if (!value.text().matches("[1-9][0-9]{0,5}")) {
      remarks.add(FigureFindings.count(value));
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(value.text()));
  }

  /** The same of what is left, of which there may be none. */
  OptionalInt countOrNone(Optional<Scalar> value) {
    boolean none = value.filter(one -> one.text().equals("0")).isPresent();
    return none ? OptionalInt.of(0) : count(value);
  }

  /** The same of a value that may be absent. */
  OptionalInt count(Optional<Scalar> value) {
    return value.isPresent() ? count(value.get()) : OptionalInt.empty();
  }

  /**
   * How many analyses a block says that it rests on.
   *
   * @param spread whether it tells how lots differ, for which one analysis is too few
   */
  OptionalInt analyses(Fields block, boolean spread) {
    Optional<Scalar> written = block.text(Vocabulary.ANALYSES);
    OptionalInt analyses = count(written);
    if (written.isPresent() && spread && analyses.orElse(0) == 1) {
      remarks.add(FigureFindings.oneAnalysis(written.get()));
      return OptionalInt.empty();
    }
    return analyses;
  }

  /** {@code 50 to 250 g}: the low and the high end in the base of the kind. */
  Optional<Ends> range(Scalar value, Kind kind) {
    Matcher range = RANGE.matcher(spaced(value));
    if (!range.matches()) {
      if (Amount.of(spaced(value)).isPresent()) {
        remarks.add(NumberSlips.oneFigureForRange(value));
      } else {
        remarks.add(NumberSlips.explain(value));
      }
      return Optional.empty();
    }
    Optional<Figure> low = checked(value, range.group(1), range.group(3), kind);
    Optional<Figure> high =
        low.isPresent() ? checked(value, range.group(2), range.group(3), kind) : Optional.empty();
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    if (low.get().base() > high.get().base()) {
      remarks.add(FigureFindings.backwards(value));
      return Optional.empty();
    }
    return Optional.of(new Ends(low.get().base(), high.get().base()));
  }

  /** The same of a value that may be absent. */
  Optional<Ends> range(Optional<Scalar> value, Kind kind) {
    return value.isPresent() ? range(value.get(), kind) : Optional.empty();
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
    if (text.equals(Vocabulary.NONE)) {
      return Optional.of(content(value, 0, 0, OptionalDouble.empty(), source));
    }
    Matcher below = text.startsWith("below") ? BELOW.matcher(text) : null;
    if (below != null && below.matches()) {
      Optional<Figure> most = withinWhole(value, amount(value, below.group(1), kind));
      return most.isPresent()
          ? Optional.of(content(value, 0, most.get().base(), OptionalDouble.empty(), source))
          : Optional.empty();
    }
    Matcher spread = mayHaveSpread(text) ? SPREAD.matcher(text) : null;
    if (spread != null && spread.matches()) {
      return spreadContent(value, spread, kind, source);
    }
    Optional<Figure> figure = withinWhole(value, amount(value, text, kind));
    return figure.isPresent()
        ? Optional.of(flat(value, figure.get(), OptionalDouble.empty(), source))
        : Optional.empty();
  }

  private static boolean mayHaveSpread(String text) {
    return text.indexOf('±') >= 0 || text.indexOf('+') >= 0;
  }

  private Optional<Content> spreadContent(Scalar value, Matcher spread, Kind kind, Source source) {
    Optional<Figure> width = checked(value, spread.group(2), spread.group(3), kind);
    if (width.isEmpty()) {
      return Optional.empty();
    }
    Optional<Figure> mean =
        withinWhole(value, checked(value, spread.group(1), spread.group(3), kind));
    return mean.isPresent()
        ? Optional.of(flat(value, mean.get(), OptionalDouble.of(width.get().base()), source))
        : Optional.empty();
  }

  private static Content flat(Scalar value, Figure mean, OptionalDouble spread, Source source) {
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
    Optional<Amount> amount = Amount.of(text);
    if (amount.isEmpty() || (amount.get().mayBeExponent() && NumberSlips.isExponent(text))) {
      remarks.add(NumberSlips.explain(value));
      return Optional.empty();
    }
    return checked(value, amount.get().number(), amount.get().unit(), kind);
  }

  /** A bare number before a name, as formulas write it; empty where it breaks the number rule. */
  Optional<String> number(Scalar value, String number) {
    Optional<Finding> slip = NumberSlips.inDigits(value, number, MOST_DIGITS);
    if (slip.isPresent()) {
      remarks.add(slip.get());
      return Optional.empty();
    }
    return Optional.of(number);
  }

  private Optional<Figure> checked(Scalar value, String number, @Nullable String unit, Kind kind) {
    if (number(value, number).isEmpty()) {
      return Optional.empty();
    }
    if (unit == null) {
      remarks.add(FigureFindings.unitMissing(value, kind, Units.example(kind)));
      return Optional.empty();
    }
    Optional<Unit> known = Units.of(value, unit.strip(), kind, remarks);
    if (known.isEmpty()) {
      return Optional.empty();
    }
    Figure figure = Figure.of(number, known.get());
    return holds(value, figure.base(), Extent.of(kind)) ? Optional.of(figure) : Optional.empty();
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

  /** The same of a value that may be absent. */
  Optional<LocalDate> day(Optional<Scalar> value) {
    return value.isPresent() ? day(value.get()) : Optional.empty();
  }

  /** Every blank of the language is white space here too. */
  static String spaced(Scalar value) {
    return Blanks.plain(value.text());
  }

  /** The currency code of a price, where it has one. */
  static Optional<String> currency(Scalar value) {
    Optional<Amount> amount = Amount.of(spaced(value));
    String unit = amount.isPresent() ? amount.get().unit() : null;
    return unit == null || unit.length() < 3 ? Optional.empty() : Optional.of(unit.substring(0, 3));
  }

  /** The unit that a symbol means, for those who need no figure. */
  Optional<Unit> unit(Scalar value) {
    return Units.ofNutrient(value, remarks);
  }
}
