package dev.pellucid.engine.data;

import dev.pellucid.measure.Calendar;
import dev.pellucid.text.NearNames;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
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

  /**
   * The numbers that a mistyped one was probably meant to be, the nearest first: those of the same
   * recipe that are near, and any that is one slip away. All numbers look alike in their days.
   */
  public static List<String> near(String written, Collection<String> numbers) {
    String letters = letters(written);
    return NearNames.of(
        written.strip(),
        numbers.stream()
            .filter(one -> !code(one).isEmpty())
            .filter(
                one ->
                    letters.startsWith(letters(code(one)))
                        || NearNames.distance(letters, letters(one)) <= 1)
            .toList());
  }

  private static String letters(String written) {
    return written.replaceAll("[^\\p{L}\\p{N}]", "").toUpperCase(Locale.ROOT);
  }

  /** The code of the recipe or premix; empty where it is no number of a batch. */
  static String code(String number) {
    Matcher parts = NUMBER.matcher(number);
    return parts.matches() ? parts.group(1) : "";
  }

  /** The day as a file name writes it; empty where it is no number of a batch. */
  static String day(String number) {
    Matcher parts = NUMBER.matcher(number);
    return parts.matches() ? parts.group(2) : "";
  }
}
