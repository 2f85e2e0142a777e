package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Optimum;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Variable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The first published problem of least cost: dollars to spend on each food, nutrients per dollar.
 */
@DisplayName(
    "Stigler, The Cost of Subsistence, J. Farm Econ. 27(2) 1945; optimum as in Dantzig, Linear"
        + " Programming and Extensions, 1963, ch. 27-1")
class StiglerDietTest {
  private static final String TABLE = "/outside/stigler-diet.txt";
  private static final int FIRST_NUTRIENT = 3;
  private static final double DAYS = 365;

  /** What a person needs in a day, in the order and the units of the table. */
  private static final double[] NEEDS = {3, 70, 0.8, 12, 5, 1.8, 2.7, 18, 75};

  private final List<String> foods = new ArrayList<>();
  private final LinearProgram program = program(foods);
  private final Optimum optimum = Solver.standard().solve(program).optimum().orElseThrow();

  private static LinearProgram program(List<String> foods) {
    List<String[]> lines =
        text()
            .lines()
            .filter(line -> !line.startsWith("#"))
            .map(line -> line.split("\\|"))
            .toList();
    lines.forEach(line -> foods.add(line[0]));
    List<Variable> variables =
        lines.stream().map(line -> Variable.of(0, Double.POSITIVE_INFINITY, 1)).toList();
    List<Constraint> constraints = new ArrayList<>();
    for (int nutrient = 0; nutrient < NEEDS.length; nutrient++) {
      int column = FIRST_NUTRIENT + nutrient;
      double[] contents =
          lines.stream().mapToDouble(line -> Double.parseDouble(line[column])).toArray();
      constraints.add(Constraint.of(contents, NEEDS[nutrient], Double.POSITIVE_INFINITY));
    }
    return new LinearProgram(variables, constraints);
  }

  private static String text() {
    try (InputStream in = StiglerDietTest.class.getResourceAsStream(TABLE)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
  }

  @Test
  @DisplayName("39.66 dollars a year, 0.1086622782 a day")
  void cost() {
    assertEquals(77, foods.size());
    assertEquals(0.1086622782, optimum.cost(), 5e-11);
    assertEquals(39.6617315, DAYS * optimum.cost(), 5e-8);
    assertEquals(0, optimum.gap(), 1e-12);
  }

  @Test
  @DisplayName("of 77 foods five: wheat flour, liver, cabbage, spinach, navy beans")
  void foods() {
    Map<String, Double> eaten = new TreeMap<>();
    for (int j = 0; j < foods.size(); j++) {
      if (optimum.value(j) != 0) {
        eaten.put(foods.get(j), Math.rint(1e10 * optimum.value(j)) / 1e10);
      }
    }
    assertEquals(
        new TreeMap<>(
            Map.of(
                "Wheat Flour (Enriched)", 0.0295190617,
                "Liver (Beef)", 0.0018925573,
                "Cabbage", 0.0112144352,
                "Spinach", 0.0050076605,
                "Navy Beans, Dried", 0.0610285635)),
        eaten);
  }

  @Test
  @DisplayName("duals of calories, calcium, vitamin A, B2 and vitamin C, and what is supplied")
  void pricesOfNeeds() {
    double[] prices = {0.00876515, 0, 0.03173771, 0, 0.00040023, 0, 0.01635803, 0, 0.00014412};
    double[] supplied = {3, 147.4135, 0.8, 60.4669, 5, 4.1204, 2.7, 27.3160, 75};
    double paid = 0;
    for (int i = 0; i < NEEDS.length; i++) {
      assertEquals(prices[i], optimum.price(i), 5e-9, "need " + i);
      assertEquals(supplied[i], program.constraints().get(i).at(optimum.values()), 5e-5);
      paid += optimum.price(i) * NEEDS[i];
    }
    assertEquals(optimum.cost(), paid, 1e-15);
  }
}
