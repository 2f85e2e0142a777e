package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures that were published, or follow from published ones, against what the engine says. */
class OutsideFactsTest {

  @ParameterizedTest(name = "Pearson square {0} and {1} % to {2} %: {3} % of the first")
  @DisplayName(
      "Pearson squares: Hardy, Fish Feed Formulation, FAO ADCP/REP/80/11; a maize-soya page")
  @CsvSource({"8.2, 44.0, 27.0, 47.486", "11, 44, 21, 69.697"})
  void pearson(double low, double high, double target, double share) {
    assertEquals(share, 100 * (high - target) / (high - low), 5e-4);
    String lines = String.format(Locale.ROOT, "mix%n  thin  %.9f %%%n  rich  rest%n", share);
    ComputedFeed feed =
        new Cooked()
            .ingredient("thin", "moisture: 10 %, crude-protein: " + low + " %")
            .ingredient("rich", "moisture: 10 %, crude-protein: " + high + " %")
            .feed(lines);
    double exact = (share * low + (100 - share) * high) / 100;
    assertEquals(exact / 100, Cooked.content(feed, "crude-protein"), 1e-12);
    assertEquals(target / 100, exact / 100, 2e-7 * 100);
  }

  @ParameterizedTest(name = "{0}: NFE {6} %, GE {7} MJ/kg")
  @DisplayName(
      "NFE by difference and gross energy: OMICS table 2157-7579-7-278-t001, factors NRC 2011")
  @CsvSource({
    "yellow-corn, 88.80, 8.75, 3.60, 2.10, 1.20, 73.15, 16.430",
    "wheat-flour, 89.00, 12.80, 2.50, 1.60, 1.60, 70.50, 16.410",
    "soya, 90.00, 43.70, 1.80, 6.10, 6.50, 31.90, 17.560",
    "fish, 94.60, 63.40, 8.70, 0.70, 20.50, 1.30, 18.743",
    "poultry, 92.60, 60.30, 12.70, 2.10, 14.70, 2.80, 20.090"
  })
  void difference(
      String name,
      double dry,
      double cp,
      double fat,
      double fibre,
      double ash,
      double nfe,
      double ge) {
    String contents =
        String.format(
            Locale.ROOT,
            "moisture: %.2f %%, crude-protein: %.2f %%, crude-fat: %.2f %%, crude-fibre: %.2f %%,"
                + " crude-ash: %.2f %%",
            100 - dry,
            cp,
            fat,
            fibre,
            ash);
    ComputedFeed feed = new Cooked().ingredient(name, contents).feed("mix\n  " + name + " 100 %\n");
    assertEquals(nfe / 100, Cooked.content(feed, "nitrogen-free-extract"), 1e-9);
    assertEquals(ge, Cooked.content(feed, "gross-energy"), 5e-4);
  }

  @ParameterizedTest(name = "{0} % of {1} % dry matter is {2} % on dry matter")
  @DisplayName("as fed to dry matter: INRAE-CIRAD-AFZ feed tables, four pages (within 0.1)")
  @CsvSource({"65.2, 92.1, 70.7", "44.6, 92.0, 48.4", "9.1, 87.4, 10.4", "18.9, 87.8, 21.6"})
  void dryMatter(double fed, double dry, double printed) {
    ComputedFeed feed = plain(100 - dry, "crude-protein: " + fed + " %");
    double told = Cooked.told(feed, "crude-protein", new Basis.DryMatter());
    assertEquals(printed, 100 * told, 0.1);
    assertEquals(fed / dry, told, 1e-12);
  }

  @Test
  @DisplayName("12 % basis: 155 mg/kg zinc at 8 % moisture is 148.3 and keeps Reg. (EU) 2016/1095")
  void twelvePercent() {
    ComputedFeed feed = plain(8, "zinc: 155 mg/kg");
    double told = Cooked.told(feed, "zinc", new Basis.AtMoisture(0.12, "12 %"));
    assertEquals(155e-6 * 88 / 92, told, 1e-15);
    assertTrue(told < 150e-6);
  }

  @Test
  @DisplayName(
      "energy basis: the proposed AAFCO example B1, calcium passes on dry matter and not per energy")
  void perEnergy() {
    ComputedFeed feed =
        new Cooked()
            .with(
                "nutrients/9-told.yaml",
                "told-energy: {title: Energy, unit: kcal/kg, stability: stable}\n")
            .ingredient("wet", "moisture: 75 %, calcium: 0.25 %, told-energy: 1120 kcal/kg")
            .feed("mix\n  wet 100 %\n");
    assertEquals(0.01, Cooked.told(feed, "calcium", new Basis.DryMatter()), 1e-12);
    Subject.Ratio ratio =
        new Subject.Ratio(
            Cooked.sum(feed, "calcium"),
            Cooked.sum(feed, "told-energy"),
            Subject.RatioKind.PER_ENERGY,
            "calcium : told-energy");
    double perMj =
        new dev.pellucid.engine.compute.Readings(feed)
            .at(ratio, new Basis.AsFed(), dev.pellucid.engine.compute.Scenario.EXPECTED)
            .value();
    double at4000 = perMj * 4000 * 0.004184 / 10;
    assertEquals(0.893, at4000, 5e-4);
    assertTrue(at4000 < 1.0);
  }

  @ParameterizedTest(name = "phytic acid {1} % of {0} % phosphorus")
  @DisplayName(
      "phytate: 28.2 % of phytic acid is phosphorus, PMC8363039 tables 3 and 4, rounded as printed")
  @CsvSource({
    "0.32, 0.80, 0.23, 0.09", "0.33, 0.78, 0.22, 0.11", "0.33, 0.83, 0.23, 0.10",
    "0.33, 0.80, 0.23, 0.10", "0.35, 0.79, 0.22, 0.13", "0.36, 0.82, 0.23, 0.13",
    "0.40, 1.05, 0.30, 0.10", "0.40, 1.04, 0.29, 0.11", "0.42, 1.01, 0.28, 0.14",
    "0.40, 1.03, 0.29, 0.11", "0.43, 1.00, 0.28, 0.15", "0.43, 1.04, 0.29, 0.14"
  })
  void phytate(double total, double acid, double printed, double left) {
    ComputedFeed feed =
        new Cooked()
            .with(
                "nutrients/9-told.yaml",
                """
                phytic-acid: {title: Phytic acid, unit: "%", stability: stable}
                phytate-p: {title: P, unit: "%", formula: 0.282 phytic-acid, source: workshop}
                """)
            .ingredient("grain", "moisture: 10 %, phytic-acid: " + acid + " %")
            .feed("mix\n  grain 100 %\n");
    double phytate = 100 * Cooked.content(feed, "phytate-p");
    assertEquals(0.282 * acid, phytate, 1e-9);
    double shown = Math.rint(phytate * 100) / 100;
    assertEquals(printed, shown, 0.0051);
    assertEquals(left, total - printed, 1e-9);
  }

  @ParameterizedTest(name = "mash at {0} % from {1} to {2} °C takes {3} kg of steam a tonne")
  @DisplayName("steam balance: computed from heat capacities 1.55 and 4.187 and 2675.5 kJ/kg")
  @CsvSource({
    "12, 25, 80, 43.8592, 15.6974",
    "12, 20, 85, 52.3014, 16.3738",
    "10, 30, 75, 34.5617, 13.0066"
  })
  void steam(double moisture, double from, double to, double steam, double after) {
    ComputedFeed feed =
        new Cooked()
            .with(
                "practice/steam.yaml",
                """
                source: workshop
                rows:
                  - {temperature: 0 °C, liquid: 0 kJ/kg, vapour: 2675.5 kJ/kg}
                  - {temperature: 100 °C, liquid: 418.7 kJ/kg, vapour: 2675.5 kJ/kg}
                """)
            .ingredient("mash", "moisture: " + moisture + " %")
            .feed(
                "mix\n  mash 100 %\nprocess\n  condition start "
                    + from
                    + " °C\n  condition temperature "
                    + to
                    + " °C\n  cool moisture 9 %\n");
    assertEquals(steam / 10, feed.balances().expected().steam(), 1e-4);
    assertEquals(after / 100, feed.balances().expected().atDie(), 1e-6);
  }

  @Test
  @DisplayName("common practice, no source: 18 kg water on 100 kg at 11 %, dried to 9 %")
  void waterAndDrying() {
    ComputedFeed feed = plain(11, "", "process\n  add-water on-mix 18 %\n  dry moisture 9 %\n");
    assertEquals(29.0 / 118, feed.balances().expected().atDie(), 1e-12);
    assertEquals(97.80, feed.balances().expected().finished(), 5e-3);
    assertEquals(20.20, feed.balances().expected().evaporated(), 5e-3);
  }

  @Test
  @DisplayName(
      "computed: water on mix and water to a moisture are two sums (25.83 %; 271.43 kg a tonne)")
  void twoMeaningsOfWater() {
    ComputedFeed onMix = plain(11, "", "process\n  add-water on-mix 20 %\n  dry moisture 9 %\n");
    assertEquals(31.0 / 120, onMix.balances().expected().atDie(), 1e-12);
    ComputedFeed to = plain(11, "", "process\n  add-water to-moisture 30 %\n  dry moisture 9 %\n");
    assertEquals(27.143, to.balances().expected().waterAdded(), 5e-4);
  }

  @Test
  @DisplayName(
      "computed: oil from 8 to 24 % fat is 210.526 kg a tonne, 45 % protein falls to 37.174 %")
  void oilCoat() {
    double oil = 100 * 210.526315789 / 1210.526315789;
    ComputedFeed feed =
        new Cooked()
            .ingredient("pellet", "moisture: 8 %, crude-protein: 45 %, crude-fat: 8 %")
            .ingredient("oil", "moisture: none, crude-protein: none, crude-fat: 100 %")
            .feed(
                String.format(
                    Locale.ROOT, "mix%n  pellet %.9f %%%ncoat%n  oil %.9f %%%n", 100 - oil, oil));
    assertEquals(0.24, Cooked.content(feed, "crude-fat"), 1e-9);
    assertEquals(0.37174, Cooked.content(feed, "crude-protein"), 5e-6);
  }

  @Test
  @DisplayName(
      "computed: vitamin C through a process of 0.70 and 3 months at 10 % needs 195.963 mg/kg")
  void vitaminCOverage() {
    ComputedFeed feed =
        new Cooked()
            .with(
                "practice/retention.yaml",
                """
                made-up:
                  source: workshop
                  dry: {60 °C: 70 %}
                  store: {25 °C: 90 %}
                """)
            .with(
                "nutrients/5-vitamins.yaml",
                """
                vitamin-c: {title: Vitamin C, unit: mg/kg, stability: made-up}
                vitamin-a: {title: A, unit: IU/kg, stability: stable}
                vitamin-d3: {title: D3, unit: IU/kg, stability: stable}
                """)
            .with("ingredients/ascorbyl-phosphate.yaml", source("vitamin-c: 35 %"))
            .with("ingredients/retinyl-acetate.yaml", source("vitamin-a: 500000 IU/g"))
            .ingredient("mash", "moisture: 10 %, vitamin-c: 195.963 mg/kg")
            .feed(
                """
                mix
                  mash 100 %
                process
                  dry temperature 60 °C
                  dry moisture 10 %
                  store shelf-life 3 months
                  store temperature 25 °C
                """);
    int c = feed.nutrients().named("vitamin-c").orElseThrow().index();
    assertEquals(100e-6, feed.content(dev.pellucid.engine.compute.Scenario.POOREST, c), 1e-10);
    assertEquals(
        195.963e-6 * 0.7, feed.content(dev.pellucid.engine.compute.Scenario.RICHEST, c), 1e-12);
  }

  private static String source(String content) {
    return "name: Source\ngroups: []\nform: powder\ncontents:\n  - source: workshop\n"
        + "    moisture: 5 %\n    "
        + content
        + "\n";
  }

  private static ComputedFeed plain(double moisture, String contents) {
    return plain(moisture, contents, "");
  }

  private static ComputedFeed plain(double moisture, String contents, String process) {
    String more = contents.isEmpty() ? "" : ", " + contents;
    String water = String.format(Locale.ROOT, "moisture: %.2f %%", moisture);
    return new Cooked().ingredient("stuff", water + more).feed("mix\n  stuff 100 %\n" + process);
  }
}
