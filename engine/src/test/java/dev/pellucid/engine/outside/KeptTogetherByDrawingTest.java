package dev.pellucid.engine.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.KeptTogether;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The part of batches that keeps each limit, and that keeps all of them, against batches drawn one
 * by one: every content that an ingredient tells is drawn, every figure is derived from them anew
 * by the formulas of the folder, and every limit is held against it. Nothing here knows of net
 * factors, of deviations of a feed, or of limits that cannot fail.
 */
class KeptTogetherByDrawingTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final int DRAWS = 5_000;

  /** Two deviations of what 2,000 batches tell of a half. */
  private static final double NEAR = 0.022;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "carp/KF-29.recipe",
        "carp/KS-42.recipe",
        "catfish/CF-32.recipe",
        "shrimp/SF-34.recipe",
        "trout/TF-40.recipe"
      })
  @DisplayName("the part of batches that keeps all limits agrees with 5,000 draws")
  void allLimits(String recipe) {
    ComputedFeed feed = EXAMPLE.feed(recipe, UnaryOperator.identity());
    KeptTogether ours = KeptTogether.of(feed, Judge.limits(feed));
    assertEquals(List.of(), ours.notJudged());
    List<Tried> limits = new ArrayList<>();
    Plain plain = new Plain(feed);
    for (KeptTogether.Alone one : ours.limits()) {
      limits.add(plain.tried(one.status().limit()));
    }
    int[] kept = new int[limits.size()];
    int all = 0;
    RandomGenerator random = new SplittableRandom(recipe.hashCode());
    for (int draw = 0; draw < DRAWS; draw++) {
      plain.draw(random);
      boolean each = true;
      for (int i = 0; i < kept.length; i++) {
        boolean keeps = limits.get(i).keeps();
        kept[i] += keeps ? 1 : 0;
        each &= keeps;
      }
      all += each ? 1 : 0;
    }
    int told = 0;
    for (int i = 0; i < kept.length; i++) {
      KeptTogether.Alone one = ours.limits().get(i);
      assertEquals(
          (double) kept[i] / DRAWS, one.kept(), NEAR, recipe + " " + one.status().limit().name());
      told += one.kept() < 1 ? 1 : 0;
    }
    assertTrue(told >= 5, recipe + " " + told);
    assertTrue(ours.all() > 0.2 && ours.all() < 0.8, recipe + " " + ours.all());
    assertEquals((double) all / DRAWS, ours.all(), NEAR, recipe);
  }

  /** Whether the batch that is drawn keeps a limit. */
  private interface Tried {
    boolean keeps();
  }

  /** A figure of the batch that is drawn. */
  private interface Figure {
    double now();
  }

  /** One batch after the other of a feed. */
  private static final class Plain {
    private final ComputedFeed feed;

    /** How many deviations each content of each ingredient is off, by its place. */
    private final Map<String, double[]> lots = new HashMap<>();

    /** Those that some limit hangs on. */
    private final Map<String, BitSet> drawn = new TreeMap<>();

    Plain(ComputedFeed feed) {
      this.feed = feed;
      for (Row row : feed.rows()) {
        lots.put(row.ingredient().name(), new double[feed.nutrients().count()]);
      }
    }

    void draw(RandomGenerator random) {
      for (Map.Entry<String, BitSet> one : drawn.entrySet()) {
        double[] lot = lots.get(one.getKey());
        for (int i = one.getValue().nextSetBit(0); i >= 0; i = one.getValue().nextSetBit(i + 1)) {
          lot[i] = random.nextGaussian();
        }
      }
    }

    Tried tried(Limit limit) {
      boolean min = limit.side() == Bound.Side.MIN;
      Scenario end = min ? Scenario.POOREST : Scenario.RICHEST;
      List<Figure> worst =
          limit
              .subject()
              .byKind(
                  sum -> sums(sum, limit.basis(), end),
                  ratio -> ratios(ratio, end),
                  inclusion -> List.<Figure>of(() -> included(inclusion)),
                  cost -> List.<Figure>of(feed::costPerKg));
      return () -> {
        for (Figure one : worst) {
          if (!Judge.keeps(limit.side(), one.now(), limit.inForce())) {
            return false;
          }
        }
        return true;
      };
    }

    private double included(Subject.Inclusion inclusion) {
      double kg = 0;
      for (Row row : feed.rows()) {
        boolean named =
            inclusion.names().stream()
                .anyMatch(
                    name -> row.path().contains(name) || row.ingredient().groups().contains(name));
        kg += named ? row.kg() : 0;
      }
      return kg / 100;
    }

    /** With all handling overage, and without it. */
    private List<Figure> sums(Subject.Nutrients sum, Basis basis, Scenario end) {
      List<Figure> figures = new ArrayList<>();
      figures.add(sum(sum, basis, end, end, feed.balances().at(end)));
      if (end == Scenario.RICHEST) {
        figures.add(sum(sum, basis, end, Scenario.POOREST, feed.balances().richestLost()));
      }
      return figures;
    }

    private Figure sum(
        Subject.Nutrients sum, Basis basis, Scenario end, Scenario mass, Balance balance) {
      Figure amount = amount(sum, end, mass, balance.finished());
      double per = basis.fromAsFed(1 - balance.moisture()) / balance.finished();
      return () -> amount.now() * per;
    }

    private List<Figure> ratios(Subject.Ratio ratio, Scenario end) {
      Scenario other = opposite(end);
      double times = ratio.kind() == Subject.RatioKind.PER_ENERGY ? 1000 : 1;
      List<Figure> figures = new ArrayList<>();
      for (Scenario mass : List.of(Scenario.POOREST, Scenario.RICHEST)) {
        double finished = feed.balances().at(mass).finished();
        Figure above = amount(ratio.over(), end, mass, finished);
        Figure below = amount(ratio.under(), other, mass, finished);
        figures.add(() -> times * above.now() / below.now());
      }
      return figures;
    }

    private static Scenario opposite(Scenario end) {
      return end == Scenario.POOREST ? Scenario.RICHEST : Scenario.POOREST;
    }

    private Figure amount(Subject.Nutrients sum, Scenario end, Scenario mass, double finished) {
      List<Figure> parts = new ArrayList<>();
      for (Nutrient nutrient : sum.nutrients()) {
        boolean water = nutrient.name().equals("moisture");
        if (water) {
          double mean = feed.content(end, nutrient.index()) * finished;
          parts.add(() -> mean);
        }
        for (Row row : feed.rows()) {
          if (!water || feed.keepsItsWater(row)) {
            Figure content = content(row, nutrient, end);
            double still = water ? row.amount(end, nutrient.index()) / row.kg(end) : 0;
            double kg = row.kg(mass);
            parts.add(() -> (content.now() - still) * kg);
          }
        }
      }
      return () -> {
        double all = 0;
        for (Figure part : parts) {
          all += part.now();
        }
        return all;
      };
    }

    /** Of one kg of a row: what is told counts, then the formula, then the digestible part. */
    private Figure content(Row row, Nutrient nutrient, Scenario end) {
      int i = nutrient.index();
      double mean = row.kg(end) > 0 ? row.amount(end, i) / row.kg(end) : 0;
      Optional<Content> told = told(row, nutrient);
      if (told.isPresent()) {
        double full = told.get().high();
        double left = full > 0 ? row.amount(Scenario.RICHEST, i) / row.kg(Scenario.RICHEST) : 0;
        double kept = full > 0 ? (mean > 0 ? mean : left) / full : 0;
        double usual = EXAMPLE.tables().practice().spread(nutrient.name()).orElse(0);
        double spread = told.get().spread().orElse(full * usual) * kept;
        double[] lot = lots.get(row.ingredient().name());
        drawn.computeIfAbsent(row.ingredient().name(), any -> new BitSet()).set(i);
        return () -> mean + spread * lot[i];
      }
      if (row.composition().isUnknown(i)) {
        return () -> mean;
      }
      if (nutrient.formula().isPresent() && isKnown(row, nutrient.formula().get())) {
        return formula(row, nutrient.formula().get(), end);
      }
      String whole = nutrient.digestibleOf().orElseThrow();
      Figure all = content(row, feed.nutrients().named(whole).orElseThrow(), end);
      double part =
          row.ingredient()
              .coefficient(nutrient, feed.recipe().species(), feed.recipe().process().kind())
              .map(one -> one.part())
              .orElse(0.0);
      return () -> part * all.now();
    }

    private boolean isKnown(Row row, Nutrient.Formula formula) {
      return formula.terms().stream()
          .map(term -> feed.nutrients().named(term.nutrient()).orElseThrow())
          .noneMatch(one -> row.composition().isUnknown(one.index()));
    }

    private Figure formula(Row row, Nutrient.Formula formula, Scenario end) {
      List<Figure> terms = new ArrayList<>();
      for (Nutrient.Formula.Term term : formula.terms()) {
        Scenario at = term.factor() >= 0 ? end : opposite(end);
        Figure one = content(row, feed.nutrients().named(term.nutrient()).orElseThrow(), at);
        terms.add(() -> term.factor() * one.now());
      }
      // A figure that is held at zero stays there.
      return isHeldAtZero(row, formula)
          ? () -> 0
          : () -> {
            double all = formula.constant();
            for (Figure term : terms) {
              all += term.now();
            }
            return all;
          };
    }

    private boolean isHeldAtZero(Row row, Nutrient.Formula formula) {
      double all = formula.constant();
      for (Nutrient.Formula.Term term : formula.terms()) {
        int i = feed.nutrients().named(term.nutrient()).orElseThrow().index();
        all += term.factor() * row.composition().expected().at(i);
      }
      return all < -1e-9;
    }

    private Optional<Content> told(Row row, Nutrient nutrient) {
      return row.ingredient()
          .telling(nutrient.name(), feed.recipe().species())
          .map(block -> block.byNutrient().get(nutrient.name()));
    }
  }
}
