package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * {@code pellucid.yaml}.
 *
 * @param name what the folder is called on sheets
 * @param currency three capital letters
 * @param jurisdiction whose law applies, or empty where the file says {@code none}
 * @param plant the name of the plant file to use, or empty
 * @param label the name of the label rules to use, or empty
 * @param lawKeptIn the part of all batches that is to keep a limit of the law
 * @param maker who makes the feed, where the file says so
 * @param made how much of each feed is made, in the order of the file
 * @param place the file, or the line that names the jurisdiction
 */
public record Settings(
    String name,
    String currency,
    Optional<String> jurisdiction,
    Optional<String> plant,
    Optional<String> label,
    double lawKeptIn,
    Optional<Maker> maker,
    List<Made> made,
    Span place) {
  /** Where the file does not say it: nineteen batches of twenty. */
  static final double LAW_KEPT_IN = 0.95;

  public Settings {
    made = List.copyOf(made);
  }

  /**
   * How much of a feed is made in a month.
   *
   * @param code of a recipe, as it is written
   * @param asWritten how much, as it is written
   * @param place where the code stands
   */
  public record Made(String code, double kg, String asWritten, Span place) {}

  /** The tonnes that are made of a feed in a month, where the file says so. */
  public OptionalDouble tonnesPerMonth(String code) {
    for (Made one : made) {
      if (one.code().equals(code)) {
        return OptionalDouble.of(one.kg() / 1000);
      }
    }
    return OptionalDouble.empty();
  }
}
