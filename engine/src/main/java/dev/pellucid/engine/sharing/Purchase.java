package dev.pellucid.engine.sharing;

import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.Wanted.Due;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What is to be bought of an ingredient for all that is made, premixes opened.
 *
 * @param needed kg in all
 * @param lacking kg that the store does not give by the days on which they are needed
 * @param perKg its price on the day of the run
 */
public record Purchase(String ingredient, double needed, double lacking, OptionalDouble perKg) {
  private static final double LEAST = 0.01;

  /** What the folder knows of ingredients. */
  public interface Known {
    /** The kg of lots that may be used on a day; zero where the folder keeps none. */
    double inStore(String ingredient, LocalDate day);

    OptionalDouble perKg(String ingredient);
  }

  /** Whether there is anything to buy. */
  public boolean isSome() {
    return lacking >= LEAST;
  }

  /** Money for what is to be bought. */
  public double money() {
    return lacking * perKg.orElse(0);
  }

  /** The dearest first, then what is in the store. */
  public static List<Purchase> of(SharedOut out, Known known) {
    Map<String, TreeMap<LocalDate, Double>> needed = new TreeMap<>();
    for (SharedFeed feed : out.feeds()) {
      for (Due due : feed.made()) {
        double part = feed.kg() > 0 ? due.kg() / feed.kg() : 0;
        feed.takesThen()
            .forEach(
                (name, kg) ->
                    needed
                        .computeIfAbsent(name, none -> new TreeMap<>())
                        .merge(due.day(), kg * part, Double::sum));
      }
    }
    List<Purchase> all = new ArrayList<>();
    needed.forEach((name, days) -> all.add(of(name, days, known)));
    all.sort(
        Comparator.comparingDouble((Purchase one) -> -one.money())
            .thenComparing(Purchase::ingredient));
    return all;
  }

  private static Purchase of(String name, TreeMap<LocalDate, Double> days, Known known) {
    double needed = days.values().stream().mapToDouble(Double::doubleValue).sum();
    double lacking = 0;
    for (LocalDate day : days.keySet()) {
      double late = days.tailMap(day).values().stream().mapToDouble(Double::doubleValue).sum();
      lacking = Math.max(lacking, late - known.inStore(name, day));
    }
    return new Purchase(name, needed, lacking, known.perKg(name));
  }
}
