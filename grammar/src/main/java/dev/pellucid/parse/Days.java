package dev.pellucid.parse;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days of the calendar, written year, month, day: {@code 2027-03-31}. */
final class Days {
  private static final Pattern YEAR_FIRST =
      Pattern.compile("([0-9]{4})[./-]([0-9]{1,2})[./-]([0-9]{1,2})");
  private static final Pattern YEAR_LAST =
      Pattern.compile("([0-9]{1,2})[./-]([0-9]{1,2})[./-]([0-9]{4})");

  private Days() {}

  static boolean isDay(String text) {
    try {
      LocalDate.parse(text);
      return true;
    } catch (DateTimeParseException notOne) {
      return false;
    }
  }

  /** The day that was surely meant; none where day and month could change places. */
  static Optional<String> meant(String text) {
    Matcher first = YEAR_FIRST.matcher(text);
    if (first.matches()) {
      return day(first.group(1), first.group(2), first.group(3));
    }
    Matcher last = YEAR_LAST.matcher(text);
    if (!last.matches()) {
      return Optional.empty();
    }
    int a = Integer.parseInt(last.group(1));
    int b = Integer.parseInt(last.group(2));
    if (a > 12) {
      return day(last.group(3), last.group(2), last.group(1));
    }
    return b > 12 || a == b ? day(last.group(3), last.group(1), last.group(2)) : Optional.empty();
  }

  private static Optional<String> day(String year, String month, String day) {
    String text =
        String.format(
            Locale.ROOT, "%s-%02d-%02d", year, Integer.parseInt(month), Integer.parseInt(day));
    return Optional.of(text).filter(Days::isDay);
  }
}
