package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Calendar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Numeral;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Span;
import java.util.Collection;
import java.util.List;

/** The sentences about a piece that fits the grammar and yet cannot be meant so. */
final class Complaints {
  static final Code NUMBER_LONG = new Code("number-long");
  static final Code UNIT_KIND = new Code("unit-kind");
  static final Code WEIGHT_FOR_SHARE = new Code("weight-for-share");
  static final Code RANGE_REVERSED = new Code("range-reversed");
  static final Code UNIT_MISSING = new Code("unit-missing");
  static final Code BOUND_TWICE = new Code("bound-twice");
  static final Code PHRASE_TWICE = new Code("phrase-twice");
  static final Code BOUND_MISSING = new Code("bound-missing");
  static final Code STEP_ZERO = new Code("step-zero");
  static final Code WORD_UNKNOWN = new Code("word-unknown");
  static final Code OUT_OF_BOUNDS = new Code("figure-out-of-bounds");
  static final Code DAY_FORM = new Code("day-form");

  private Complaints() {}

  static Finding numberTooLong(Numeral numeral) {
    return Finding.error(
            NUMBER_LONG, numeral.span(), numeral.text() + " has more digits than a number may have")
        .helping("write at most 12 digits before the point and 12 after it");
  }

  static Finding wrongKind(Amount amount, Expected expected) {
    return wrongKind(amount.asWritten(), amount.unit().kind(), amount.span(), expected);
  }

  static Finding wrongKind(Range range, Expected expected) {
    return wrongKind(range.asWritten(), range.unit().kind(), range.span(), expected);
  }

  private static Finding wrongKind(String written, Kind kind, Span span, Expected expected) {
    if (kind == Kind.MASS && expected.equals(Expected.SHARE)) {
      return weightForShare(written, span);
    }
    return Finding.error(
            UNIT_KIND,
            span,
            written + " is " + kind.phrase() + ", but " + expected.phrase() + " belongs here")
        .helping("for example: " + expected.example());
  }

  private static Finding weightForShare(String written, Span span) {
    return Finding.error(
            WEIGHT_FOR_SHARE, span, written + " is a weight, the figure of a line is a share")
        .helping(
            "write the part of everything weighed: "
                + "the weight of the line over the weight of the batch, times 100 %")
        .helping("the batch sheet turns shares into weights; batch 60 kg weighed says how much");
  }

  static Finding outOfBounds(String written, Span span, Extent extent) {
    return Finding.error(OUT_OF_BOUNDS, span, written + " " + extent.cannotBe())
        .helping(Extent.REMEDY);
  }

  static Finding dayOutOfBounds(Word day) {
    return Finding.error(OUT_OF_BOUNDS, day.span(), day.text() + " " + Calendar.cannotBe())
        .helping(Calendar.REMEDY);
  }

  static Finding reversed(Range range) {
    String fixed =
        range.high().text() + " to " + range.low().text() + " " + range.unitAsWritten().text();
    return Finding.error(
            RANGE_REVERSED, range.span(), range.asWritten() + " runs from the high end to the low")
        .helping("write " + fixed)
        .fixing(range.span(), fixed);
  }

  static Finding unitMissing(Numeral number) {
    return Finding.error(UNIT_MISSING, number.span(), number.text() + " has no unit")
        .helping(
            "write " + number.text() + " %, or another unit; only a ratio may stand without one");
  }

  static Finding boundTwice(String side, Span second, Span first) {
    return Finding.error(BOUND_TWICE, second, side + " stands twice on this line")
        .seeing("the first " + side, first)
        .helping("keep one; a line holds at most one min and one max");
  }

  static Finding phraseTwice(String phrase, Span second, Span first) {
    return Finding.error(PHRASE_TWICE, second, phrase + " stands twice on this line")
        .seeing("the first", first)
        .helping("keep one of the two");
  }

  static Finding stepZero(Amount size) {
    return Finding.error(STEP_ZERO, size.span(), "a step of " + size.asWritten() + " is no step")
        .helping(
            "say of what the share is a whole multiple, for example: step 0.5 %,"
                + " or take the step out");
  }

  static Finding boundMissing(String left, Span span) {
    return Finding.error(BOUND_MISSING, span, left + " has neither a min nor a max")
        .helping("say how much, for example: " + left + "  min 35 %");
  }

  /** A word that is none of those that may stand here. */
  static Finding unknownWord(String place, Word word, Collection<String> choices) {
    Finding finding =
        Finding.error(
            WORD_UNKNOWN,
            word.span(),
            place + " cannot be " + word.text() + ", it is " + Choices.of(choices));
    List<String> near = NearNames.of(word.text(), choices);
    return near.size() == 1
        ? finding.helping(Meant.question(near.get(0))).fixing(word.span(), near.get(0))
        : finding;
  }

  static Finding dayForm(Word day) {
    Finding finding =
        Finding.error(DAY_FORM, day.span(), day.text() + " is not a day of the calendar")
            .helping("write year, month and day: 2027-03-31");
    return Days.meant(day.text()).map(fix -> finding.fixing(day.span(), fix)).orElse(finding);
  }
}
