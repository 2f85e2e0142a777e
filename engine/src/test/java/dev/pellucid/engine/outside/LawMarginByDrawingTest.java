package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The part of batches that passes a maximum of the law, against batches drawn by chance: every
 * batch has another lot of each ingredient, whose content lies around its mean as a normal
 * distribution does. The draws know nothing of deviations of a feed; they add up what each
 * ingredient brings.
 */
class LawMarginByDrawingTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final int DRAWS = 200_000;

  /** Of the share that is told. */
  private static final double NEAR = 0.02;

  /** How many deviations the bound lies above the mean. */
  private static final double[] ROOM = {0, 0.3, 0.8};

  private static final List<String> NUTRIENTS =
      List.of("selenium", "zinc", "copper", "manganese", "iron", "iodine", "arsenic", "cadmium");

  static List<String> recipes() {
    return EXAMPLE.recipes().subList(0, 8);
  }

  @ParameterizedTest
  @MethodSource("recipes")
  @DisplayName("the share of batches over a legal maximum agrees with 200,000 draws")
  void shares(String recipe) {
    ComputedFeed feed = EXAMPLE.feed(recipe, UnaryOperator.identity());
    Readings readings = new Readings(feed);
    int compared = 0;
    for (Limit limit : feed.recipe().limits()) {
      boolean law = limit.origin().kind() == Limit.Kind.LAW;
      if (!law
          || !NUTRIENTS.contains(limit.subject().text())
          || !readings.isTold(limit.subject())) {
        continue;
      }
      Drawn drawn = new Drawn(feed, limit);
      for (double deviations : drawn.deviation() > 0 ? ROOM : new double[0]) {
        double mean =
            readings.judged(limit.subject(), limit.basis(), limit.side(), false).reading().value();
        Limit moved = at(limit, mean + deviations * drawn.deviation());
        LawMargin margin = LawMargin.of(kept(readings, moved)).orElseThrow();
        double over = drawn.over(moved.bound(), recipe.hashCode());
        if (over > 0.02) {
          assertEquals(over, margin.beyond(), NEAR * over + 0.002, recipe + " " + limit.name());
          compared++;
        }
      }
    }
    assertTrue(compared >= 10, recipe + " " + compared);
  }

  private static LimitStatus kept(Readings readings, Limit limit) {
    return new LimitStatus(
        Judge.verdict(readings, limit),
        readings,
        LimitStatus.State.KEPT,
        OptionalDouble.empty(),
        Optional.empty());
  }

  private static Limit at(Limit limit, double bound) {
    return new Limit(
        limit.subject(),
        Bound.Side.MAX,
        bound,
        limit.written(),
        limit.basis(),
        limit.inBatches(),
        limit.origin(),
        limit.waiver());
  }

  /** Batches of one feed, each with lots of its own. */
  private static final class Drawn {
    private final double[] means;
    private final double[] deviations;

    Drawn(ComputedFeed feed, Limit limit) {
      Nutrient nutrient = limit.subject().addends().get(0);
      double per = factor(feed, limit);
      Map<String, Double> kg = new TreeMap<>();
      Map<String, Row> rows = new TreeMap<>();
      for (Row row : feed.rows()) {
        kg.merge(row.ingredient().name(), row.kgRichest(), Double::sum);
        rows.put(row.ingredient().name(), row);
      }
      List<double[]> lots = new ArrayList<>();
      kg.forEach(
          (name, all) -> {
            Optional<Content> told =
                rows.get(name)
                    .ingredient()
                    .telling(nutrient.name(), feed.recipe().species())
                    .map(block -> block.byNutrient().get(nutrient.name()));
            double usual = EXAMPLE.tables().practice().spread(nutrient.name()).orElse(0);
            told.ifPresent(
                it ->
                    lots.add(
                        new double[] {
                          it.high() * all * per, it.spread().orElse(it.high() * usual) * all * per
                        }));
          });
      means = lots.stream().mapToDouble(lot -> lot[0]).toArray();
      deviations = lots.stream().mapToDouble(lot -> lot[1]).toArray();
    }

    /** From an amount in 100 kg of recipe to the figure of the limit, at the richest end. */
    private static double factor(ComputedFeed feed, Limit limit) {
      var richest = feed.balances().at(Scenario.RICHEST);
      return limit.basis().fromAsFed(1 - richest.moisture()) / richest.finished();
    }

    double deviation() {
      double squares = 0;
      for (double one : deviations) {
        squares += one * one;
      }
      return Math.sqrt(squares);
    }

    double over(double bound, long seed) {
      SplittableRandom random = new SplittableRandom(seed);
      int over = 0;
      for (int draw = 0; draw < DRAWS; draw++) {
        double batch = 0;
        for (int i = 0; i < means.length; i++) {
          batch += means[i] + deviations[i] * random.nextGaussian();
        }
        over += batch > bound ? 1 : 0;
      }
      return (double) over / DRAWS;
    }
  }
}
