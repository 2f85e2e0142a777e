package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The spread of a figure against lots drawn by chance, under the correlation that is stated:
 * ingredients apart; within one ingredient the contents of a sum together, each to the side that
 * moves the sum more; the two sides of a ratio apart, and what is on both sides apart from both.
 * Nothing here knows of net factors: each draw derives every figure anew from the contents that are
 * told, by the formulas of the folder.
 */
class SpreadByDrawingTest {
  private static final int DRAWS = 100_000;
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();

  /** The deviation of a deviation from so many draws is 0.22 %; this is five of them. */
  private static final double NEAR = 0.011;

  static List<String> recipes() {
    List<String> recipes = EXAMPLE.recipes().subList(0, 10);
    assertEquals(10, recipes.size());
    return recipes;
  }

  @ParameterizedTest
  @MethodSource("recipes")
  @DisplayName("the spread of sums agrees with 100,000 draws")
  void sums(String recipe) {
    ComputedFeed feed = EXAMPLE.feed(recipe, UnaryOperator.identity());
    for (List<String> names :
        List.of(
            List.of("gross-energy"),
            List.of("digestible-energy"),
            List.of("crude-protein", "nitrogen-free-extract"),
            List.of("methionine", "cystine"))) {
      Drawing over = new Drawing(feed, names);
      RandomGenerator random = new SplittableRandom(recipe.hashCode());
      double drawn =
          deviation(
              () -> {
                double sum = 0;
                for (Drawing.Lot lot : over.moving()) {
                  sum += lot.kg * lot.value(lot.together, random.nextGaussian());
                }
                return sum / feed.balances().expected().finished();
              });
      Subject.Nutrients subject = subject(feed, names);
      double ours =
          new Readings(feed).varying(subject, new Basis.AsFed(), Scenario.EXPECTED).deviation();
      assertEquals(drawn, ours, NEAR * drawn, recipe + " " + names);
      assertTrue(ours > 0);
    }
  }

  @ParameterizedTest
  @MethodSource("recipes")
  @DisplayName("the spread of ratios agrees with 100,000 draws")
  void ratios(String recipe) {
    ComputedFeed feed = EXAMPLE.feed(recipe, UnaryOperator.identity());
    ratio(feed, recipe, List.of("lysine"), List.of("crude-protein"), Subject.RatioKind.PLAIN, 1);
    ratio(
        feed,
        recipe,
        List.of("methionine", "cystine"),
        List.of("crude-protein"),
        Subject.RatioKind.PLAIN,
        1);
    ratio(
        feed,
        recipe,
        List.of("digestible-protein"),
        List.of("digestible-energy"),
        Subject.RatioKind.PER_ENERGY,
        1000);
  }

  private static void ratio(
      ComputedFeed feed,
      String recipe,
      List<String> above,
      List<String> below,
      Subject.RatioKind kind,
      double scale) {
    Drawing over = new Drawing(feed, above);
    Drawing under = new Drawing(feed, below);
    double mean = over.mean() / under.mean();
    RandomGenerator random = new SplittableRandom(recipe.hashCode() + 1);
    double drawn =
        deviation(
            () -> {
              double up = 0;
              double down = 0;
              for (int i = 0; i < over.lots.size(); i++) {
                Drawing.Lot top = over.lots.get(i);
                Drawing.Lot low = under.lots.get(i);
                if (!top.moves && !low.moves) {
                  up += top.still;
                  down += low.still;
                  continue;
                }
                double[] moved = moved(top, low, mean, random);
                up += top.kg * top.value(moved);
                down += low.kg * low.value(moved);
              }
              return scale * up / down;
            });
    Subject subject =
        new Subject.Ratio(subject(feed, above), subject(feed, below), kind, above + ":" + below);
    double ours =
        new Readings(feed).varying(subject, new Basis.AsFed(), Scenario.EXPECTED).deviation();
    // The delta method is a straight line to a curve: a little more room than for sums.
    assertEquals(drawn, ours, 2 * NEAR * drawn, recipe + " " + above + ":" + below);
  }

  /** Three draws for each ingredient: what is above alone, what is below alone, what is on both. */
  private static double[] moved(
      Drawing.Lot top, Drawing.Lot low, double mean, RandomGenerator random) {
    double above = random.nextGaussian();
    double below = random.nextGaussian();
    double both = random.nextGaussian();
    double[] moved = top.drawn;
    for (int[] which : new int[][] {top.moving, low.moving}) {
      for (int i : which) {
        double up = top.effect[i];
        double down = mean * low.effect[i];
        double z = down == 0 ? above : up == 0 ? below : both;
        moved[i] = Math.signum(up - down) * z;
      }
    }
    return moved;
  }

  private static double deviation(java.util.function.DoubleSupplier draw) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < DRAWS; i++) {
      double value = draw.getAsDouble();
      sum += value;
      squares += value * value;
    }
    double mean = sum / DRAWS;
    return Math.sqrt(squares / DRAWS - mean * mean);
  }

  private static Subject.Nutrients subject(ComputedFeed feed, List<String> names) {
    return new Subject.Nutrients(
        names.stream().map(name -> feed.nutrients().named(name).orElseThrow()).toList(),
        String.join(" + ", names));
  }

  /** A sum of nutrients of a feed, to be derived anew for each draw. */
  private static final class Drawing {
    private static final FeedTables LARDER = EXAMPLE.tables();
    private final List<Lot> lots = new ArrayList<>();

    Drawing(ComputedFeed feed, List<String> names) {
      Map<String, Double> kg = new TreeMap<>();
      Map<String, Ingredient> ingredients = new TreeMap<>();
      for (Row row : feed.rows()) {
        kg.merge(row.ingredient().name(), row.kg(), Double::sum);
        ingredients.put(row.ingredient().name(), row.ingredient());
      }
      kg.forEach((name, of) -> lots.add(new Lot(ingredients.get(name), of, feed, names)));
    }

    double mean() {
      return lots.stream().mapToDouble(lot -> lot.still).sum();
    }

    List<Lot> moving() {
      return lots.stream().filter(lot -> lot.moves).toList();
    }

    /** One ingredient of which every batch of feed has another lot. */
    static final class Lot {
      final double kg;
      final double[] means = new double[LARDER.nutrients().count()];
      final double[] spreads = new double[LARDER.nutrients().count()];
      final boolean[] told = new boolean[LARDER.nutrients().count()];
      final double[] drawn = new double[LARDER.nutrients().count()];
      final double[] effect = new double[LARDER.nutrients().count()];

      /** The side to which each content moves the sum up. */
      final double[] together = new double[LARDER.nutrients().count()];

      /** What it brings where nothing moves, and whether anything moves it. */
      final double still;

      final boolean moves;

      /** The contents that move it. */
      final int[] moving;

      private final List<Figure> figures = new ArrayList<>();

      Lot(Ingredient ingredient, double kg, ComputedFeed feed, List<String> names) {
        this.kg = kg;
        for (Nutrient nutrient : LARDER.nutrients().inOrder()) {
          told(ingredient, nutrient.name()).ifPresent(content -> take(nutrient, content));
        }
        names.forEach(name -> figure(name, ingredient, feed).ifPresent(figures::add));
        double[] none = new double[means.length];
        this.still = kg * value(none);
        List<Integer> any = new ArrayList<>();
        for (int i = 0; i < means.length; i++) {
          double[] moved = none.clone();
          moved[i] = 1;
          effect[i] = kg * value(moved) - still;
          effect[i] = Math.abs(effect[i]) < 1e-13 ? 0 : effect[i];
          together[i] = Math.signum(effect[i]);
          if (effect[i] != 0) {
            any.add(i);
          }
        }
        this.moving = any.stream().mapToInt(i -> i).toArray();
        this.moves = moving.length > 0;
      }

      private static Optional<Content> told(Ingredient ingredient, String nutrient) {
        return ingredient.contents().stream()
            .filter(block -> block.species().isEmpty())
            .flatMap(block -> Optional.ofNullable(block.byNutrient().get(nutrient)).stream())
            .findFirst();
      }

      private void take(Nutrient nutrient, Content content) {
        int i = nutrient.index();
        told[i] = true;
        means[i] = content.low();
        double usual = LARDER.practice().spread(nutrient.name()).orElse(0);
        spreads[i] = content.spread().orElse(content.high() * usual);
      }

      double value(double[] directions, double times) {
        for (int i : moving) {
          drawn[i] = directions[i] * times;
        }
        return value(drawn);
      }

      double value(double[] moved) {
        double sum = 0;
        for (Figure figure : figures) {
          sum += figure.of(moved);
        }
        return sum;
      }

      private interface Figure {
        double of(double[] moved);
      }

      /** What is told counts, then the formula, then the digestible part; else it is unknown. */
      private Optional<Figure> figure(String name, Ingredient ingredient, ComputedFeed feed) {
        Nutrient nutrient = LARDER.nutrients().named(name).orElseThrow();
        int i = nutrient.index();
        if (told[i]) {
          return Optional.of(moved -> means[i] + spreads[i] * moved[i]);
        }
        if (nutrient.formula().isPresent()) {
          return formula(nutrient.formula().get(), ingredient, feed);
        }
        return nutrient
            .digestibleOf()
            .flatMap(whole -> digestible(nutrient, whole, ingredient, feed));
      }

      private Optional<Figure> formula(
          Nutrient.Formula formula, Ingredient ingredient, ComputedFeed feed) {
        List<Figure> terms = new ArrayList<>();
        for (Nutrient.Formula.Term term : formula.terms()) {
          Optional<Figure> one = figure(term.nutrient(), ingredient, feed);
          if (one.isEmpty()) {
            return Optional.empty();
          }
          terms.add(moved -> term.factor() * one.get().of(moved));
        }
        Figure sum =
            moved -> {
              double all = formula.constant();
              for (Figure term : terms) {
                all += term.of(moved);
              }
              return all;
            };
        // A figure that is held at zero stays there.
        return Optional.of(sum.of(new double[means.length]) < -1e-9 ? moved -> 0 : sum);
      }

      private Optional<Figure> digestible(
          Nutrient part, String whole, Ingredient ingredient, ComputedFeed feed) {
        Optional<Double> coefficient =
            ingredient
                .coefficient(part, feed.recipe().species(), feed.recipe().process().kind())
                .map(one -> one.part());
        Optional<Figure> of = figure(whole, ingredient, feed);
        return coefficient.flatMap(times -> of.map(all -> moved -> times * all.of(moved)));
      }
    }
  }
}
