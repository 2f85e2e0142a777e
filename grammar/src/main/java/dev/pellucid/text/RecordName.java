package dev.pellucid.text;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a file that begins with the number of a batch, whatever it ends in: {@code
 * CG-36-2027-03-31-1.txt}. Such a file may be the record of that batch, and a record that lies
 * where nobody reads it is missing in every recall. It may also be a photo or a signed sheet that
 * belongs to a record.
 *
 * @param number of the batch, in capitals
 * @param code of its recipe or premix, in capitals
 * @param mayBeRecord whether the file can be a record by its name alone: a text, its number in
 *     capitals, and not one that a program hides or lays by
 */
public record RecordName(String number, String code, boolean mayBeRecord) {
  /** Shorter names cannot hold a code, a day and a number. */
  private static final int SHORTEST = "A-2027-03-31-1".length();

  private static final Pattern BEGINNING =
      Pattern.compile(
          "(?<hidden>[.#]*)(?<number>(?<code>[A-Za-z][A-Za-z0-9]*(?:-[A-Za-z0-9]+)*?)"
              + "-[0-9]{4}-[0-9]{2}-[0-9]{2}-[1-9][0-9]{0,3})(?<more>(?![A-Za-z0-9]).*)",
          Pattern.DOTALL);

  /** What ends as texts do; a name without an ending is that of a text too. */
  private static final Set<String> TEXTS = Set.of("yaml", "yml", "txt", "text", "json");

  /**
   * Reads the name of a file, its folders left out.
   *
   * @return empty where it does not begin with such a number
   */
  public static Optional<RecordName> of(String name) {
    Matcher parts = BEGINNING.matcher(name);
    if (name.length() < SHORTEST || !parts.matches()) {
      return Optional.empty();
    }
    String number = parts.group("number");
    String more = parts.group("more");
    boolean text = !more.contains(".") || TEXTS.contains(ending(more));
    String capitals = number.toUpperCase(Locale.ROOT);
    return Optional.of(
        new RecordName(
            capitals,
            parts.group("code").toUpperCase(Locale.ROOT),
            text && parts.group("hidden").isEmpty() && number.equals(capitals)));
  }

  private static String ending(String more) {
    return more.substring(more.lastIndexOf('.') + 1).strip().toLowerCase(Locale.ROOT);
  }
}
