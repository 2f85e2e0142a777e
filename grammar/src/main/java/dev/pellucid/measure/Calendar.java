package dev.pellucid.measure;

import java.time.LocalDate;

/** The days that can stand in a folder of feeds: those of this century, the last and the next. */
public final class Calendar {
  /** The first day. */
  public static final LocalDate FIRST = LocalDate.of(1900, 1, 1);

  /** The last day; the end of the longest shelf life begun on it is a day still. */
  public static final LocalDate LAST = LocalDate.of(2199, 12, 31);

  /** What to do about a day that cannot be. */
  public static final String REMEDY = "look for a slip in the year: 2027-03-31";

  private Calendar() {}

  public static boolean holds(LocalDate day) {
    return !day.isBefore(FIRST) && !day.isAfter(LAST);
  }

  /** {@code a day is from 1900-01-01 to 2199-12-31}. */
  public static String sentence() {
    return "a day is from " + FIRST + " to " + LAST;
  }

  /** Behind a day: {@code cannot be, a day is from 1900-01-01 to 2199-12-31}. */
  public static String cannotBe() {
    return "cannot be, " + sentence();
  }
}
