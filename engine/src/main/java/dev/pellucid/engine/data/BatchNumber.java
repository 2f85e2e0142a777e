package dev.pellucid.engine.data;

import dev.pellucid.measure.Calendar;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The number of a batch taken apart: {@code CG-36-2027-03-31-1}. */
public record BatchNumber(String code, LocalDate day, int serial) {
  private static final Pattern NUMBER =
      Pattern.compile(
          "^([A-Z][A-Z0-9]*(?:-[A-Z0-9]+)*?)-([0-9]{4}-[0-9]{2}-[0-9]{2})-([1-9][0-9]{0,3})$");

  /** Empty where a text is no number of a batch, or of a day that is not in the calendar. */
  public static Optional<BatchNumber> of(String written) {
    Matcher number = NUMBER.matcher(written);
    if (!number.matches()) {
      return Optional.empty();
    }
    try {
      LocalDate day = LocalDate.parse(number.group(2));
      return Calendar.holds(day)
          ? Optional.of(new BatchNumber(number.group(1), day, Integer.parseInt(number.group(3))))
          : Optional.empty();
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** The day as a file name writes it; empty where it is no number of a batch. */
  static String day(String number) {
    Matcher parts = NUMBER.matcher(number);
    return parts.matches() ? parts.group(2) : "";
  }
}
