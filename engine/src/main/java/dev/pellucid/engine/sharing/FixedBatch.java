package dev.pellucid.engine.sharing;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Slopes;
import java.time.LocalDate;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A planned batch that is made as its record says, for somebody answers for its shares: it takes
 * before all others, and nothing of it is changed.
 *
 * @param kg of recipe
 * @param takes kg of all ingredients, premixes opened
 */
public record FixedBatch(
    String number, String code, LocalDate day, double kg, SortedMap<String, Double> takes) {
  private static final double WHOLE = 100;

  public FixedBatch {
    takes = Collections.unmodifiableSortedMap(new TreeMap<>(takes));
  }

  /**
   * One.
   *
   * @param feed as the record orders it
   */
  public static FixedBatch of(String number, LocalDate day, double kg, ComputedFeed feed) {
    Slopes slopes = new Slopes(feed);
    SortedMap<String, Double> takes = new TreeMap<>();
    for (Row row : feed.rows()) {
      String name = row.ingredient().name();
      double taken = slopes.taken(name).now() * kg / WHOLE;
      if (taken > 0) {
        takes.put(name, taken);
      }
    }
    return new FixedBatch(number, feed.recipe().code(), day, kg, takes);
  }
}
