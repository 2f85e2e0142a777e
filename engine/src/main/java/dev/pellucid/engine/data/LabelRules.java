package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One file of {@code label/}: what a label must tell, how far an analysis may lie from it, and the
 * words on the bag.
 *
 * @param jurisdiction whose rules they are, where the file says so
 * @param rounding the part of a tolerance that the rounding of a label may take without a word
 * @param tolerances by the name of the nutrient
 * @param additivesApart whether additives stand in a list of their own, with the added amount where
 *     the law has a maximum; else they stand among the ingredients
 * @param storage sentences on the bag
 * @param cautions sentences on the bag
 */
public record LabelRules(
    String name,
    String title,
    Optional<String> jurisdiction,
    Source source,
    double rounding,
    Map<String, Tolerance> tolerances,
    List<Compulsory> compulsory,
    boolean additivesApart,
    DayOrder dayOrder,
    Map<LabelWord, String> words,
    List<String> storage,
    List<String> cautions,
    Span declared) {
  public LabelRules {
    tolerances = Map.copyOf(tolerances);
    compulsory = List.copyOf(compulsory);
    words = Map.copyOf(words);
    storage = List.copyOf(storage);
    cautions = List.copyOf(cautions);
  }

  /**
   * What must be declared.
   *
   * @param nutrient its name
   * @param above only where the feed holds more than this, in the base of the kind
   * @param species only for this species or group
   */
  public record Compulsory(
      String nutrient, OptionalDouble above, Optional<String> species, Span place) {}

  /** How a day is written on the bag. */
  public enum DayOrder {
    DAY_MONTH_YEAR("%3$02d/%2$02d/%1$04d"),
    MONTH_DAY_YEAR("%2$02d/%3$02d/%1$04d"),
    YEAR_MONTH_DAY("%1$04d-%2$02d-%3$02d");

    private final String pattern;

    DayOrder(String pattern) {
      this.pattern = pattern;
    }

    /** {@code 24/01/2027}. */
    public String words(LocalDate day) {
      return String.format(
          Locale.ROOT, pattern, day.getYear(), day.getMonthValue(), day.getDayOfMonth());
    }
  }

  /** The words of the file, or ours where it has none. */
  public String words(LabelWord word) {
    return words.getOrDefault(word, word.ours());
  }
}
