package dev.pellucid.engine.compare;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * What one premix comes to in one state of the folder.
 *
 * @param path below the folder
 * @param words its text line by line, so laid out that white space is no change
 * @param hangsOn whether what a file tells, by its path below the folder, bears on it
 * @param figures absent where it cannot be reckoned
 * @param printed what stands on its sheet
 * @param found what its check says
 */
public record PremixState(
    String code,
    String path,
    List<String> words,
    Predicate<String> hangsOn,
    Optional<Figures> figures,
    Printed printed,
    List<Found> found) {
  public PremixState {
    words = List.copyOf(words);
    found = List.copyOf(found);
  }

  /**
   * Its figures, as on its sheet.
   *
   * @param batch kg that are made at once, for what the approved feeds take
   * @param weights kg of each line in it, by name
   * @param supplies what it is made to bring, by nutrient
   * @param costPerKg absent where a price is missing
   */
  public record Figures(
      double batch,
      Map<String, Double> weights,
      Map<String, Supply> supplies,
      OptionalDouble costPerKg) {
    public Figures {
      weights = Collections.unmodifiableMap(new LinkedHashMap<>(weights));
      supplies = Collections.unmodifiableMap(new LinkedHashMap<>(supplies));
    }
  }

  /**
   * What a kg of premix holds when it is made.
   *
   * @param asked per kg of feed
   */
  public record Supply(String unit, double asked, double fresh) {}
}
