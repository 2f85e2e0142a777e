package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.compute.ComputedFeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Diets and foods as they were printed: the shares close, and the tables' own sums are ours. */
class PublishedDietsTest {
  private static final String BASAL =
      "178.5 378.9 13.1 195 177.3 25.7 8.7 9.3 2.2 4.3 5.9 1.1 g/kg";
  private static final String TROUT_FISH_MEAL =
      "15 5 3 8 13.1 2 2 12.6 9.1 5 6.5 12.15 3 1 0.2 0.2 0.1 1.2 0.4 0.1 0.2 0.15 %";
  private static final String TROUT_POULTRY_MEAL =
      "15 5 3 16.75 5.35 2 2 12 7.1 5 6.5 12.73 3 1 0.2 0.2 0.1 1.65 0.8 0.27 0.2 0.15 %";
  private static final String LIPID_HIGH = "250 240 161.6 60 120 60 70 38.4 g/kg";
  private static final String LIPID_LOW = "250 240 241.6 70 110 30 20 38.4 g/kg";

  @ParameterizedTest(name = "{0}")
  @DisplayName("printed shares make 100 % exactly, and one more in the last place does not")
  @CsvSource({
    "'basal diet, Scientific Reports 2025 s41598-025-09715-3 Table 1', " + BASAL,
    "'trout on fish meal, BMC Vet Res 2024 10.1186/s12917-024-04324-0', " + TROUT_FISH_MEAL,
    "'trout on poultry meal, BMC Vet Res 2024 10.1186/s12917-024-04324-0', " + TROUT_POULTRY_MEAL,
    "'trout, high lipid, PMC10415086 Table 1', " + LIPID_HIGH,
    "'trout, low lipid, PMC10415086 Table 1', " + LIPID_LOW
  })
  void close(String source, String shares) {
    List<String> words = new ArrayList<>(List.of(shares.split(" ", -1)));
    String unit = words.remove(words.size() - 1);
    Cooked kitchen = new Cooked();
    for (int i = 0; i < words.size(); i++) {
      kitchen.ingredient("stuff-" + i, "moisture: 10 %");
    }
    assertEquals(words.size(), kitchen.resolved(lines(words, unit)).lines().size());
    words.set(0, words.get(0) + (words.get(0).contains(".") ? "1" : ".01"));
    AssertionError off =
        assertThrows(AssertionError.class, () -> kitchen.resolved(lines(words, unit)));
    assertTrue(String.valueOf(off.getMessage()).contains("total-is-off"), source);
  }

  private static String lines(List<String> shares, String unit) {
    StringBuilder lines = new StringBuilder("mix\n");
    for (int i = 0; i < shares.size(); i++) {
      lines.append("  stuff-").append(i).append(' ').append(shares.get(i)).append(' ');
      lines.append(unit).append('\n');
    }
    return lines.toString();
  }

  @Test
  @DisplayName(
      "basal diet, Scientific Reports 2025: its meals bring 281.02 g of the protein per kg")
  void knownProtein() {
    ComputedFeed feed =
        new Cooked()
            .ingredient("fish-meal", "moisture: 8 %, crude-protein: 60 %")
            .ingredient("soya", "moisture: 10 %, crude-protein: 44 %")
            .ingredient("meat", "moisture: 7 %, crude-protein: 55 %")
            .ingredient("others", "moisture: 10 %, crude-protein: none")
            .feed(
                "mix\n  fish-meal 178.5 g/kg\n  soya 378.9 g/kg\n  meat 13.1 g/kg\n  others rest\n");
    assertEquals(0.281021, Cooked.content(feed, "crude-protein"), 1e-9);
  }

  @ParameterizedTest(name = "{0}: {6} g per 100 g by difference")
  @DisplayName(
      "carbohydrate by difference: Indian Food Composition Tables 2017 (seven rows, within 0.02)")
  @CsvSource({
    "a006-maize, 9.26, 8.80, 3.77, 12.24, 1.17, 64.77",
    "a005-sorghum, 9.01, 9.97, 1.73, 10.22, 1.39, 67.68",
    "a015-rice, 9.93, 7.94, 0.52, 2.81, 0.56, 78.24",
    "a020-wheat, 10.58, 10.59, 1.47, 11.23, 1.42, 64.72",
    "b025-soya, 5.47, 37.80, 19.42, 22.63, 4.52, 10.16",
    "f015-cassava, 75.23, 1.03, 0.20, 4.61, 1.12, 17.81",
    "h020-sunflower, 3.53, 23.53, 51.85, 10.80, 3.44, 6.85"
  })
  void indianFoods(
      String name,
      double water,
      double protein,
      double fat,
      double fibre,
      double ash,
      double printed) {
    ComputedFeed feed =
        new Cooked()
            .ingredient(
                name,
                String.format(
                    Locale.ROOT,
                    "moisture: %.2f %%, crude-protein: %.2f %%, crude-fat: %.2f %%,"
                        + " crude-fibre: %.2f %%, crude-ash: %.2f %%",
                    water,
                    protein,
                    fat,
                    fibre,
                    ash))
            .feed("mix\n  " + name + " 100 %\n");
    assertEquals(printed, 100 * Cooked.content(feed, "nitrogen-free-extract"), 0.02);
  }

  @Test
  @DisplayName(
      "PMC10128191 Table 1: carbohydrate 24.02 % by difference, energy 19.72 (within 0.05)")
  void printedDiet() {
    ComputedFeed feed =
        new Cooked()
            .ingredient(
                "diet",
                "moisture: 7.00 %, crude-protein: 48.56 %, crude-fat: 10.38 %, crude-fibre: none,"
                    + " crude-ash: 10.04 %")
            .feed("mix\n  diet 100 %\n");
    assertEquals(0.2402, Cooked.content(feed, "nitrogen-free-extract"), 1e-9);
    assertEquals(19.72, Cooked.content(feed, "gross-energy"), 0.05);
  }
}
