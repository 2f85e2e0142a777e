package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a salt or a vitamin form can hold follows from its formula; the example's data keep to it.
 */
class MolarMassTest {
  /** Abridged standard atomic weights of IUPAC, g/mol. */
  private static final Map<String, Double> WEIGHTS =
      Map.ofEntries(
          Map.entry("H", 1.008),
          Map.entry("C", 12.011),
          Map.entry("N", 14.007),
          Map.entry("O", 15.999),
          Map.entry("Na", 22.990),
          Map.entry("Mg", 24.305),
          Map.entry("P", 30.974),
          Map.entry("S", 32.06),
          Map.entry("Cl", 35.45),
          Map.entry("K", 39.098),
          Map.entry("Ca", 40.078),
          Map.entry("Mn", 54.938),
          Map.entry("Fe", 55.845),
          Map.entry("Cu", 63.546),
          Map.entry("Zn", 65.38));

  private static final Pattern ATOM = Pattern.compile("([A-Z][a-z]?)([0-9]*)");

  private static FeedTables tables;

  @BeforeAll
  static void read() throws IOException {
    Texts folder = Texts.at(Example.whole());
    TreeMap<String, SourceFile> data = new TreeMap<>();
    for (String path : folder.data()) {
      data.put(path, folder.read(path, new ArrayList<>()).orElseThrow());
    }
    tables = TablesReader.read(data, new TreeMap<>()).tables();
  }

  @ParameterizedTest(name = "{0}: {1} is {5} % of what it is made of, times its purity")
  @DisplayName(
      "potency from molar mass: IUPAC abridged standard atomic weights; purity as its title says")
  @CsvSource({
    // ingredient, nutrient, salt, wanted part, how many of it, percent of the pure, purity, within
    "salt, sodium, NaCl, Na, 1, 39.34, 0.997, 0.01",
    "salt, chloride, NaCl, Cl, 1, 60.66, 0.997, 0.01",
    "potassium-chloride, potassium, KCl, K, 1, 52.45, 0.98, 0.01",
    "potassium-chloride, chloride, KCl, Cl, 1, 47.55, 0.98, 0.01",
    "monosodium-phosphate, phosphorus, NaH2PO4, P, 1, 25.82, 0.99, 0.01",
    "monosodium-phosphate, sodium, NaH2PO4, Na, 1, 19.16, 0.99, 0.01",
    "ascorbyl-phosphate-35, phosphorus, C6H6Na3O9P, P, 1, 9.62, 0.64, 0.01",
    "ascorbyl-phosphate-35, sodium, C6H6Na3O9P, Na, 3, 21.42, 0.64, 0.01",
    "limestone, calcium, CaCO3, Ca, 1, 40.04, 0.95, 0.01",
    "thiamine-mononitrate, thiamine, C12H17N5O4S, C12H17N4OS, 1, 81.06, 0.98, 0.002",
    "pyridoxine-hcl, pyridoxine, C8H12ClNO3, C8H11NO3, 1, 82.27, 0.98, 0.002",
    "calcium-pantothenate, pantothenic-acid, C18H32CaN2O10, C9H17NO5, 2, 92.01, 0.98, 0.002",
    "choline-chloride-60, choline, C5H14ClNO, C5H15NO2, 1, 86.79, 0.60, 0.002",
    "l-lysine-hcl, lysine, C6H15ClN2O2, C6H14N2O2, 1, 80.04, 0.985, 0.002",
    "l-lysine-hcl, chloride, C6H15ClN2O2, Cl, 1, 19.41, 0.985, 0.01"
  })
  void potency(
      String name,
      String nutrient,
      String salt,
      String part,
      int count,
      double pure,
      double purity,
      double within) {
    double percent = 100 * count * mass(part) / mass(salt);
    assertEquals(pure, percent, 0.006);
    double stated = 100 * content(name, nutrient);
    assertEquals(percent * purity, stated, within * stated);
  }

  @ParameterizedTest(name = "{0} holds {4} % {1} at least by the act, {3} % when pure")
  @DisplayName(
      "trace salts: Reg. (EU) 2016/1095, 2017/2330, 2018/1039, 2017/1490 at least; IUPAC weights")
  @CsvSource({
    "zinc-sulphate, zinc, ZnSO4H2O, Zn, 36.43, 34",
    "iron-sulphate, iron, FeSO4H2O, Fe, 32.87, 29",
    "copper-sulphate, copper, CuSO4H10O5, Cu, 25.45, 24",
    "manganese-sulphate, manganese, MnSO4H2O, Mn, 32.51, 31"
  })
  void traceSalts(
      String name, String nutrient, String salt, String metal, double pure, double least) {
    double percent = 100 * mass(metal) / mass(salt);
    assertEquals(pure, percent, 0.006);
    double stated = 100 * content(name, nutrient);
    assertTrue(stated >= least - 1e-9 && stated < percent, stated + " of " + percent);
  }

  @Test
  @DisplayName("protein of lysine hydrochloride: N x 6.25, IUPAC weights, 98.5 % pure")
  void proteinOfLysine() {
    double percent = 100 * 6.25 * 2 * mass("N") / mass("C6H15ClN2O2");
    assertEquals(95.86, percent, 0.006);
    assertEquals(percent * 0.985, 100 * content("l-lysine-hcl", "crude-protein"), 0.1);
  }

  @Test
  @DisplayName("vitamin A: 0.3 µg retinol is 1 IU (definition), so 0.344 µg of its acetate")
  void vitaminA() {
    double acetate = 0.3 * mass("C22H32O2") / mass("C20H30O");
    assertEquals(0.344, acetate, 5e-4);
    double partOfBeadlet = content("retinyl-acetate-500", "vitamin-a") * acetate * 1e-9;
    assertEquals(0.172, partOfBeadlet, 5e-4);
  }

  @Test
  @DisplayName("vitamin D3: 40 IU is 0.001 mg, Reg. (EU) 2017/1492, so a beadlet holds 1.25 %")
  void vitaminD3() {
    double partOfBeadlet = content("cholecalciferol-500", "vitamin-d3") / 40 * 1e-9;
    assertEquals(0.0125, partOfBeadlet, 1e-12);
  }

  @Test
  @DisplayName("vitamin C: the pure trisodium ascorbyl phosphate holds 54.7 %, the 35 % form less")
  void vitaminC() {
    double percent = 100 * mass("C6H8O6") / mass("C6H6Na3O9P");
    assertEquals(54.69, percent, 0.006);
    assertEquals(35, 100 * content("ascorbyl-phosphate-35", "vitamin-c"), 1e-9);
    assertTrue(35 < percent);
  }

  @Test
  @DisplayName("vitamin K3: the pure menadione nicotinamide bisulfite holds 45.7 and 32.4 %")
  void vitaminK3() {
    double salt = mass("C11H9O5S") + mass("C6H7N2O");
    assertEquals(45.75, 100 * mass("C11H8O2") / salt, 0.02);
    assertTrue(content("menadione-mnb", "vitamin-k3") < mass("C11H8O2") / salt);
    assertTrue(content("menadione-mnb", "niacin") < mass("C6H6N2O") / salt);
  }

  private static double mass(String formula) {
    double sum = 0;
    Matcher atoms = ATOM.matcher(formula);
    while (atoms.find()) {
      int count = atoms.group(2).isEmpty() ? 1 : Integer.parseInt(atoms.group(2));
      sum += count * WEIGHTS.get(atoms.group(1));
    }
    return sum;
  }

  /** As fed, in the base of its kind: parts of one, or IU/kg. */
  private static double content(String name, String nutrient) {
    Ingredient ingredient = tables.ingredients().get(name);
    return ingredient.contents().stream()
        .map(block -> block.byNutrient().get(nutrient))
        .filter(Objects::nonNull)
        .findFirst()
        .orElseThrow()
        .low();
  }
}
