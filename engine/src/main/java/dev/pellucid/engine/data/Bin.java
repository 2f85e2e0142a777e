package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * A bin or tank that lots are put into on top of each other.
 *
 * @param emptied the days on which it was empty, in order
 */
public record Bin(String name, List<Located<LocalDate>> emptied) {
  public Bin {
    emptied = List.copyOf(emptied);
  }

  /** The letters of a name, by which bins are one: neither capitals nor blanks tell two apart. */
  public static String key(String name) {
    StringBuilder key = new StringBuilder();
    name.codePoints()
        .filter(letter -> !Character.isWhitespace(letter) && !Character.isSpaceChar(letter))
        .forEach(key::appendCodePoint);
    return key.toString().toLowerCase(Locale.ROOT);
  }

  /**
   * Whether what came into it on one day may still be in it on another. Where it was emptied on
   * either of the two days, nobody can say what came first, so it may be.
   */
  public boolean mayHold(LocalDate received, LocalDate day) {
    return !received.isAfter(day)
        && emptied.stream()
            .noneMatch(one -> one.thing().isAfter(received) && one.thing().isBefore(day));
  }
}
