package dev.pellucid.engine.data;

import static dev.pellucid.engine.data.KeyFindings.shown;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Span;
import java.util.List;

/** What can be wrong with lots and batch records as they are written. */
final class LotFindings {
  static final Code NUMBER = new Code("data-lot-number");
  static final Code TWICE = new Code("data-lot-twice");
  static final Code DATES = new Code("data-lot-dates");
  static final Code UNKNOWN = new Code("data-unknown-lot");
  static final Code UNKNOWN_BATCH = new Code("data-unknown-batch");
  static final Code BATCH = new Code("data-batch-number");
  static final Code RECORD = new Code("data-record");

  static final List<Code> CODES =
      List.of(NUMBER, TWICE, DATES, UNKNOWN, UNKNOWN_BATCH, BATCH, RECORD);

  /** More numbers are no help. */
  private static final int FEW = 30;

  private LotFindings() {}

  static Finding number(Scalar number) {
    return Finding.error(NUMBER, number.span(), shown(number.text()) + " cannot be a lot number")
        .helping("use letters, digits, and . / _ - between them, without a blank");
  }

  static Finding twice(Scalar number, Span earlier) {
    return Finding.error(TWICE, number.span(), "two lots have the number " + number.text())
        .seeing("the other", earlier)
        .helping("one delivery is one lot: add the letter of the delivery, or fix the number");
  }

  static Finding numberOfBatch(Span number, String batch) {
    return Finding.error(TWICE, number, "a lot and a batch have the number " + batch)
        .helping("add a letter to the number of the lot: who names it could mean either");
  }

  static Finding dates(Scalar bestBefore, String received) {
    return Finding.error(
            DATES,
            bestBefore.span(),
            "the lot is best before " + bestBefore.text() + ", and was received on " + received)
        .helping("look at the label again: one of the days is wrong, or it was sold expired");
  }

  static Finding longDates(Scalar bestBefore, String received, int years) {
    return Finding.warning(
            DATES,
            bestBefore.span(),
            "the lot is best before "
                + bestBefore.text()
                + ", more than "
                + years
                + " years after it was received on "
                + received)
        .helping("look at the label again: the year of one of the days has slipped");
  }

  static Finding batch(Span file, String stem) {
    return Finding.error(BATCH, file, shown(stem) + " is not the number of a batch")
        .helping("name the file by recipe, day and serial of the day: CG-36-2027-03-31-1.yaml");
  }

  /**
   * @param earlier the batches that it could be
   * @param otherwise what to do where the batch has no record
   */
  static Finding unknownBatch(Scalar number, List<String> earlier, String otherwise) {
    Finding finding =
        Finding.error(
            UNKNOWN_BATCH, number.span(), shown(number.text()) + " is not a batch of this folder");
    List<String> near = BatchNumber.near(number.text(), earlier);
    if (!near.isEmpty()) {
      return KeyFindings.suggesting(finding, number, near, "").helping("or " + otherwise);
    }
    return earlier.isEmpty() || earlier.size() > FEW
        ? finding.helping(otherwise)
        : finding.helping("there are " + Choices.of(earlier)).helping("or " + otherwise);
  }

  static Finding record(Span place, String sentence, String help) {
    return Finding.error(RECORD, place, sentence).helping(help);
  }
}
