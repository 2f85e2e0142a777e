package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.KeyFindings.shown;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Calendar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.util.List;

/** What can be wrong with a number, a unit or a day in a data file. */
final class FigureFindings {
  static final Code COMMA = new Code("data-decimal-comma");
  static final Code GROUPED = new Code("data-grouped-number");
  static final Code ZEROS = new Code("data-leading-zero");
  static final Code EXPONENT = new Code("data-exponent");
  static final Code DATE = new Code("data-date-for-figure");
  static final Code NOT_FINITE = new Code("data-not-finite");
  static final Code LONG = new Code("data-long-number");
  static final Code FIGURE = new Code("data-figure");
  static final Code NO_UNIT = new Code("data-unit-missing");
  static final Code UNKNOWN_UNIT = new Code("data-unit-unknown");
  static final Code WRONG_KIND = new Code("data-unit-kind");
  static final Code NEGATIVE = new Code("data-negative");
  static final Code ABOVE_WHOLE = new Code("data-above-whole");
  static final Code OUT_OF_BOUNDS = new Code("data-out-of-bounds");
  static final Code RANGE = new Code("data-range");
  static final Code DAY = new Code("data-day");
  static final Code NOTHING = new Code("data-nothing");
  static final Code COUNT = new Code("data-count");
  static final Code CURRENCY = new Code("data-currency");

  static final List<Code> CODES =
      List.of(
          COMMA,
          GROUPED,
          ZEROS,
          EXPONENT,
          DATE,
          NOT_FINITE,
          LONG,
          FIGURE,
          NO_UNIT,
          UNKNOWN_UNIT,
          WRONG_KIND,
          NEGATIVE,
          ABOVE_WHOLE,
          OUT_OF_BOUNDS,
          RANGE,
          DAY,
          NOTHING,
          COUNT,
          CURRENCY);

  private FigureFindings() {}

  static Finding at(Code code, Scalar value, String sentence) {
    return Finding.error(code, value.span(), shown(value.text()) + " " + sentence);
  }

  static Finding comma(Scalar value, String fixed) {
    return at(COMMA, value, "has a comma, the decimal sign is a point")
        .helping("write " + fixed)
        .helping("if the comma parts thousands, leave it out");
  }

  static Finding nothing(Scalar value) {
    return at(NOTHING, value, "is nothing, and here something must be")
        .helping("write what it is, or leave the whole entry out");
  }

  static Finding count(Scalar value) {
    return at(COUNT, value, "is not a count of things")
        .helping("write a whole number without a unit, from 1 to 999999, such as 24");
  }

  static Finding oneAnalysis(Scalar value) {
    return at(COUNT, value, "is one analysis, and one cannot show how lots differ")
        .helping("write how many analyses the spread rests on, 2 or more")
        .helping("or leave the spread out: write the figure without ±");
  }

  static Finding unitMissing(Scalar value, Kind kind, String example) {
    return at(NO_UNIT, value, "has no unit")
        .helping(
            "write " + value.text() + " and a unit of " + kind.phrase() + ", such as " + example);
  }

  static Finding unitUnknown(Scalar value, String unit) {
    return Finding.error(
        UNKNOWN_UNIT, value.span(), shown(unit) + " is not a unit that is known here");
  }

  static Finding wrongKind(Scalar value, String unit, Kind found, Kind wanted, String example) {
    return Finding.error(
            WRONG_KIND,
            value.span(),
            unit + " measures " + found.phrase() + ", " + wanted.phrase() + " belongs here")
        .helping("write the figure in " + example);
  }

  static Finding aboveWhole(Scalar value) {
    return at(ABOVE_WHOLE, value, "is more than the whole, which is 100 %").helping(Extent.REMEDY);
  }

  static Finding outOfBounds(Scalar value, Extent extent) {
    return at(OUT_OF_BOUNDS, value, extent.cannotBe()).helping(Extent.REMEDY);
  }

  static Finding dayOutOfBounds(Scalar value) {
    return at(OUT_OF_BOUNDS, value, Calendar.cannotBe()).helping(Calendar.REMEDY);
  }

  static Finding day(Scalar value) {
    return at(DAY, value, "is not a day of the calendar as it is written here")
        .helping("write year, month and day with hyphens: 2027-03-31");
  }

  static Finding currency(Scalar value, String written, String currency) {
    return Finding.error(
            CURRENCY,
            value.span(),
            "the price is in " + written + ", the folder counts in " + currency)
        .helping("convert it and write it in " + currency)
        .helping("or change the currency in pellucid.yaml and all prices with it");
  }

  static Finding backwards(Scalar value) {
    return at(RANGE, value, "runs from the higher end to the lower")
        .helping("write the lower end first");
  }
}
