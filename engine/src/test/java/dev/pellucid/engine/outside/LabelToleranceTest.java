package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.Pantry;
import dev.pellucid.engine.data.Tolerance;
import dev.pellucid.engine.data.Tolerance.Band;
import dev.pellucid.engine.data.Tolerance.Side;
import dev.pellucid.measure.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tolerances of the example folder against the acts that they come from. */
class LabelToleranceTest {
  private static final Path EXAMPLE = Example.whole();
  private static final LabelRules EU = rules("eu-767-2009");
  private static final LabelRules US = rules("us-variations");

  private static LabelRules rules(String name) {
    Pantry pantry = Pantry.of(EXAMPLE);
    String settings = pantry.text("pellucid.yaml").replaceAll("label: \\S+", "label: " + name);
    return pantry.with("pellucid.yaml", settings).stocked().tables().label().orElseThrow();
  }

  /** Declared, and what is taken below and above it, all in percent; -1 is no limit. */
  @ParameterizedTest(name = "{0} {1} %: {2} below, {3} above")
  @DisplayName(
      "Reg. (EC) 767/2009 Annex IV part A, rows as published: inside each band and at each edge")
  @CsvSource({
    "crude-fat, 4, 1, 2",
    "crude-fat, 8, 1, 2",
    "crude-fat, 16, 2, 4",
    "crude-fat, 24, 3, 6",
    "crude-fat, 30, 3, 6",
    "crude-protein, 5, 1, 1",
    "crude-protein, 8, 1, 1",
    "crude-protein, 20, 2.5, 2.5",
    "crude-protein, 24, 3, 3",
    "crude-protein, 36, 3, 3",
    "crude-ash, 5, 2, 1",
    "crude-ash, 8, 2, 1",
    "crude-ash, 20, 5, 2.5",
    "crude-ash, 32, 8, 4",
    "crude-ash, 40, 8, 4",
    "crude-fibre, 4, 1.75, 1.75",
    "crude-fibre, 10, 1.75, 1.75",
    "crude-fibre, 16, 2.8, 2.8",
    "crude-fibre, 20, 3.5, 3.5",
    "crude-fibre, 25, 3.5, 3.5",
    "sugar, 5, 1.75, 3.5",
    "sugar, 16, 2.8, 5.6",
    "sugar, 25, 3.5, 7",
    "starch, 5, 3.5, 3.5",
    "starch, 16, 5.6, 5.6",
    "starch, 30, 7, 7",
    "calcium, 0.5, 0.3, 0.6",
    "calcium, 1, 0.3, 0.6",
    "calcium, 2, 0.6, 1.2",
    "calcium, 5, 1.5, 3",
    "calcium, 8, 1.5, 3",
    "magnesium, 2, 0.6, 1.2",
    "sodium, 0.3, 0.3, 0.6",
    "phosphorus, 0.9, 0.3, 0.3",
    "phosphorus, 2, 0.6, 0.6",
    "phosphorus, 6, 1.5, 1.5",
    "acid-insoluble-ash, 0.5, -1, 0.3",
    "acid-insoluble-ash, 2, -1, 0.6",
    "acid-insoluble-ash, 6, -1, 1.5",
    "potassium, 0.5, 0.2, 0.4",
    "potassium, 2, 0.4, 0.8",
    "potassium, 6, 1, 2",
    "moisture, 1, -1, 0.4",
    "moisture, 3, -1, 0.6",
    "moisture, 9, -1, 1",
    "moisture, 15, -1, 1.2"
  })
  void partA(String nutrient, double declared, double below, double above) {
    assertEquals(below, taken(EU, Side.BELOW, nutrient, declared, Unit.PERCENT), 1e-9);
    assertEquals(above, taken(EU, Side.ABOVE, nutrient, declared, Unit.PERCENT), 1e-9);
  }

  @ParameterizedTest(name = "{0} {1} MJ/kg: {2} below, {3} above")
  @DisplayName("Reg. (EC) 767/2009 Annex IV part A: energy value without a method of the Union")
  @CsvSource({"gross-energy, 20, 1, 2", "digestible-energy, 14, 0.7, 1.4"})
  void energy(String nutrient, double declared, double below, double above) {
    assertEquals(below, taken(EU, Side.BELOW, nutrient, declared, Unit.MJ_PER_KG), 1e-9);
    assertEquals(above, taken(EU, Side.ABOVE, nutrient, declared, Unit.MJ_PER_KG), 1e-9);
  }

  /** Declared in its unit, and what is taken below it; above it three times as much. */
  @ParameterizedTest(name = "{0} {1} {2}: {3} below")
  @DisplayName("Reg. (EC) 767/2009 Annex IV part B, steps by figure in the declared unit")
  @CsvSource({
    "vitamin-a, 8000, IU/kg, 800",
    "vitamin-a, 1000, IU/kg, 100",
    "vitamin-c, 999, mg/kg, 100",
    "vitamin-c, 600, mg/kg, 100",
    "vitamin-c, 500, mg/kg, 100",
    "vitamin-c, 120, mg/kg, 24",
    "zinc, 35, mg/kg, 7",
    "iodine, 1, mg/kg, 0.2",
    "biotin, 0.7, mg/kg, 0.2",
    "biotin, 0.5, mg/kg, 0.2",
    "selenium, 0.3, mg/kg, 0.12",
    "selenium, 300, µg/kg, 60"
  })
  void partB(String nutrient, double declared, String symbol, double below) {
    Unit unit = Unit.of(symbol).orElseThrow();
    assertEquals(below, taken(EU, Side.BELOW, nutrient, declared, unit), 1e-9 * declared);
    assertEquals(3 * below, taken(EU, Side.ABOVE, nutrient, declared, unit), 1e-9 * declared);
  }

  @Test
  @DisplayName("Reg. (EC) 767/2009 Annex IV: no band of the file begins with a step")
  void theBandsJoin() {
    int edges = 0;
    for (Map.Entry<String, Tolerance> row : new TreeMap<>(EU.tolerances()).entrySet()) {
      List<List<Band>> sides = new ArrayList<>();
      sides.add(row.getValue().below());
      sides.add(row.getValue().above());
      for (List<Band> bands : sides) {
        for (int i = 1; i < bands.size(); i++) {
          double edge = bands.get(i - 1).under().orElseThrow();
          double before = at(bands.get(i - 1), edge);
          assertEquals(before, at(bands.get(i), edge), 1e-12 * before, row.getKey());
          assertTrue(before > 0, row.getKey());
          edges++;
        }
      }
    }
    assertTrue(edges > 200, "edges looked at: " + edges);
  }

  private static double at(Band band, double declared) {
    return band.absolute() + band.relative() * declared;
  }

  @ParameterizedTest(name = "crude protein guaranteed {0} %: {1} points")
  @DisplayName("US analytical variations (from memory), 20 / X + 2 % of the guarantee")
  @CsvSource({"10, 0.40", "18, 0.56", "32, 0.84", "45, 1.10"})
  void ofTheGuarantee(double guaranteed, double points) {
    assertEquals(points, taken(US, Side.BELOW, "crude-protein", guaranteed, Unit.PERCENT), 1e-9);
    assertEquals(
        10 * points, taken(US, Side.BELOW, "crude-protein", 10 * guaranteed, Unit.G_PER_KG), 1e-9);
  }

  @ParameterizedTest(name = "calcium guaranteed {0} %: {1} points")
  @DisplayName("US analytical variations (from memory), calcium in three bands that need not join")
  @CsvSource({"1, 0.20", "9.9, 0.734", "10, 1.0", "20, 2.0", "30, 3.6"})
  void inBands(double guaranteed, double points) {
    assertEquals(points, taken(US, Side.BELOW, "calcium", guaranteed, Unit.PERCENT), 1e-9);
    assertEquals(points, taken(US, Side.ABOVE, "calcium", guaranteed, Unit.PERCENT), 1e-9);
  }

  @Test
  @DisplayName("Reg. (EC) 767/2009 Annex VI: what complete feed for food animals must declare")
  void compulsory() {
    List<String> always =
        EU.compulsory().stream()
            .filter(one -> one.above().isEmpty())
            .map(LabelRules.Compulsory::nutrient)
            .sorted()
            .toList();
    assertEquals(
        List.of(
            "calcium",
            "crude-ash",
            "crude-fat",
            "crude-fibre",
            "crude-protein",
            "phosphorus",
            "sodium"),
        always);
    assertTrue(
        EU.compulsory().stream()
            .anyMatch(one -> one.nutrient().equals("moisture") && one.above().orElse(0) == 0.14));
  }

  /** In the unit in which it is declared; -1 where any difference is taken. */
  private static double taken(
      LabelRules rules, Side side, String nutrient, double declared, Unit unit) {
    Tolerance tolerance = rules.tolerances().get(nutrient);
    assertTrue(tolerance != null, "no tolerance for " + nutrient);
    return tolerance.allowed(side, unit.toBase(declared), unit).stream()
        .map(unit::fromBase)
        .findFirst()
        .orElse(-1);
  }
}
