package dev.pellucid.engine.records;

import java.util.Locale;

/**
 * What people write in one way or another, as it is held: capitals or not, blanks around or not.
 */
public final class ByLetters {
  private ByLetters() {}

  /** The number of a lot or a batch. */
  public static String number(String written) {
    return written.strip().toLowerCase(Locale.ROOT);
  }

  /** The name of a party; blanks within count once. */
  public static String party(String written) {
    return number(written).replaceAll("\\s+", " ");
  }
}
