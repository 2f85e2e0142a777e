package dev.pellucid.engine.resolve;

import dev.pellucid.engine.resolve.ResolvedRecipe.Reviewed;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.HeadLine.Review;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The review behind a status; one without a name, or of a day that is not yet, is none. */
final class Reviews {
  static final Code INCOMPLETE = new Code("review-incomplete");
  static final Code TO_COME = new Code("review-to-come");

  private Reviews() {}

  /**
   * Who reviewed, and when.
   *
   * @param today the day of the run; the first of all days where what is written counts on any day
   */
  static Optional<Reviewed> of(Review written, LocalDate today, List<Finding> findings) {
    String by = written.by().text().strip();
    if (by.isEmpty()) {
      findings.add(
          Finding.error(INCOMPLETE, written.by().span(), "the review does not tell who reviewed")
              .helping("name a person: reviewed by \"NAME\" on " + written.day().text()));
      return Optional.empty();
    }
    return day(written.day().text())
        .filter(on -> hasCome(on, written, today, findings))
        .map(on -> new Reviewed(by, on));
  }

  /** Empty where it can be no day, which the parser has said. */
  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException noDay) {
      return Optional.empty();
    }
  }

  private static boolean hasCome(
      LocalDate on, Review written, LocalDate today, List<Finding> findings) {
    boolean isToCome = on.isAfter(today) && !today.equals(Days.AS_WRITTEN.waivers());
    if (isToCome) {
      findings.add(
          Finding.error(
                  TO_COME,
                  written.day().span(),
                  "the review is of " + on + ", and today is " + today)
              .helping("write the day on which somebody looked at the figures"));
    }
    return !isToCome;
  }
}
