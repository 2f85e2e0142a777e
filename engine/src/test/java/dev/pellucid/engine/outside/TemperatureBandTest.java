package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What a band of temperatures leaves of a vitamin, reckoned beside the engine: tables of our own,
 * read at every tenth of a degree of the band. Only bands within the tables are drawn, as nothing
 * is known beyond them.
 */
class TemperatureBandTest {
  private static final int TRIALS = 300;

  /** One that bends and turns on purpose, so that the worst may lie inside a band. */
  private static final double[][] EXTRUDE = {{40, 97}, {80, 90}, {100, 93}, {120, 84}};

  private static final double[][] DRY = {{50, 95}, {60, 92}, {80, 88}};

  @Test
  @DisplayName("poorest, expected and richest agree with a reading of the tables by hand")
  void agrees() {
    Random random = new Random(7);
    Cooked pantry =
        new Cooked()
            .ingredient("meal", "moisture: 10 %, vitamin-a: 10000 IU/kg")
            .with("practice/retention.yaml", retention());
    for (int trial = 0; trial < TRIALS; trial++) {
      Band extrude = Band.within(40, 120, random);
      Band dry = Band.within(45, 80, random);
      ComputedFeed feed = pantry.feed(recipe(extrude, dry));
      int index = feed.nutrients().named("vitamin-a").orElseThrow().index();
      for (Scenario end : Scenario.values()) {
        double mass = feed.balances().at(end).finished();
        double storage = end == Scenario.POOREST ? Math.pow(0.92, 60 / 30.4375) : 1;
        double kept = kept(EXTRUDE, extrude, end) * kept(DRY, dry, end) * storage;
        double reckoned = 10000 * 100 / mass * kept;
        assertEquals(reckoned, feed.content(end, index), 2e-4 * reckoned, recipe(extrude, dry));
      }
    }
  }

  @Test
  @DisplayName("what is accepted counts, not only what is aimed at")
  void theAcceptedBandCounts() {
    Cooked pantry =
        new Cooked()
            .ingredient("meal", "moisture: 10 %, vitamin-a: 10000 IU/kg")
            .with("practice/retention.yaml", retention());
    ComputedFeed alone = pantry.feed(recipe(new Band(60, 60, ""), new Band(55, 55, "")));
    ComputedFeed taken =
        pantry.feed(recipe(new Band(60, 60, ""), new Band(55, 55, " accept 55 to 80 °C")));
    int index = alone.nutrients().named("vitamin-a").orElseThrow().index();
    double poorer = taken.content(Scenario.POOREST, index) / alone.content(Scenario.POOREST, index);
    assertEquals(88.0 / 93.5, poorer, 1e-9);
    assertEquals(
        alone.content(Scenario.EXPECTED, index), taken.content(Scenario.EXPECTED, index), 1e-9);
    assertEquals(
        alone.content(Scenario.RICHEST, index), taken.content(Scenario.RICHEST, index), 1e-9);
  }

  /** Nobody knows what is left above the hottest row, so that nothing is sure to be left. */
  @Test
  @DisplayName("a band that reaches beyond the table is a gap")
  void beyondTheTable() {
    Cooked pantry =
        new Cooked()
            .ingredient("meal", "moisture: 10 %, vitamin-a: 10000 IU/kg")
            .with("practice/retention.yaml", retention());
    ComputedFeed feed =
        pantry.feed(recipe(new Band(60, 60, ""), new Band(55, 55, " accept 50 to 81 °C")));
    int index = feed.nutrients().named("vitamin-a").orElseThrow().index();
    assertEquals(0, feed.content(Scenario.POOREST, index));
    assertEquals(1, feed.retentionGaps().size());
  }

  /** {@code text} is what is taken beside the aim. */
  private record Band(double low, double high, String text) {
    static Band within(double least, double most, Random random) {
      double one = tenth(least + random.nextDouble() * (most - least));
      double two = tenth(least + random.nextDouble() * (most - least));
      if (random.nextBoolean()) {
        return new Band(Math.min(one, two), Math.max(one, two), "");
      }
      double three = tenth(least + random.nextDouble() * (most - least));
      double low = Math.min(one, Math.min(two, three));
      double high = Math.max(one, Math.max(two, three));
      double aim = tenth(one + two + three - low - high);
      return new Band(aim, aim, String.format(Locale.ROOT, " accept %.1f to %.1f °C", low, high));
    }

    private static double tenth(double value) {
      return Math.round(value * 10) / 10.0;
    }

    String written() {
      String aim =
          low == high
              ? String.format(Locale.ROOT, "%.1f °C", low)
              : String.format(Locale.ROOT, "%.1f to %.1f °C", low, high);
      return aim + text;
    }

    /** Every tenth of a degree that may be. */
    List<Double> all() {
      List<Double> all = new ArrayList<>(List.of((low + high) / 2));
      double from = low;
      double to = high;
      if (!text.isEmpty()) {
        String[] words = text.strip().split(" ", -1);
        from = Math.min(from, Double.parseDouble(words[1]));
        to = Math.max(to, Double.parseDouble(words[3]));
      }
      for (int tenths = (int) Math.round(from * 10); tenths <= Math.round(to * 10); tenths++) {
        all.add(tenths / 10.0);
      }
      return all;
    }
  }

  private static double kept(double[][] table, Band band, Scenario end) {
    List<Double> all = band.all();
    return switch (end) {
      case EXPECTED -> read(table, all.get(0));
      case POOREST -> all.stream().mapToDouble(at -> read(table, at)).min().orElseThrow();
      case RICHEST -> all.stream().mapToDouble(at -> read(table, at)).max().orElseThrow();
    };
  }

  private static double read(double[][] table, double temperature) {
    if (temperature <= table[0][0]) {
      return table[0][1] / 100;
    }
    int i = 1;
    while (table[i][0] < temperature) {
      i++;
    }
    double part = (temperature - table[i - 1][0]) / (table[i][0] - table[i - 1][0]);
    return ((1 - part) * table[i - 1][1] + part * table[i][1]) / 100;
  }

  private static String recipe(Band extrude, Band dry) {
    return "mix\n  meal 100 %\nprocess\n  add-water on-mix 20 %\n  extrude temperature "
        + extrude.written()
        + "\n  dry temperature "
        + dry.written()
        + "\n  dry moisture 9 % accept 8 to 10 %\n  store shelf-life 60 d\n"
        + "  store temperature 25 °C\n";
  }

  private static String retention() {
    return "vitamin-a-beadlet:\n  source: handbook\n  extrude: "
        + row(EXTRUDE)
        + "\n  dry: "
        + row(DRY)
        + "\n  store: {25 °C: 92 %, 35 °C: 85 %}\n"
        + "vitamin-d3-beadlet:\n  source: handbook\n  store: {25 °C: 94 %}\n"
        + "vitamin-c-crystals:\n  source: handbook\n  store: {25 °C: 60 %}\n"
        + "vitamin-c-phosphate:\n  source: handbook\n  store: {25 °C: 96 %}\n";
  }

  private static String row(double[][] table) {
    List<String> rows = new ArrayList<>();
    for (double[] row : table) {
      rows.add(String.format(Locale.ROOT, "%.0f °C: %.0f %%", row[0], row[1]));
    }
    return "{" + String.join(", ", rows) + "}";
  }
}
