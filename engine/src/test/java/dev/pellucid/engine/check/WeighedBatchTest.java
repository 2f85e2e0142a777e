package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Pantry;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.WeighingPlanner;
import dev.pellucid.syntax.Bound;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Of a limit that is far from its bound nothing is computed again; here it is, for all recipes of
 * the example in batches that small scales round much, with bounds moved to all distances.
 */
class WeighedBatchTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final double[] BATCHES = {0.7, 3, 11, 60, 400};
  private static final int BOUNDS_EACH = 20;

  private final FeedTables tables = Pantry.of(Example.whole()).stocked().tables();
  private final Random random = new Random(20_261_128);
  private int far;
  private int broken;

  @Test
  void whatIsCalledFarFromItsBoundKeepsItOnceRounded() {
    for (String path : EXAMPLE.recipes()) {
      ComputedFeed feed = EXAMPLE.feed(path, UnaryOperator.identity());
      for (double kg : BATCHES) {
        WeighingPlan plan = WeighingPlanner.plan(feed, kg, tables).orElseThrow();
        Optional<ComputedFeed> rounded = feed.weighed(plan.asRounded(feed.recipe())).feed();
        if (rounded.isPresent()) {
          WeighedBatch batch = new WeighedBatch(feed, feed.recipe().plant().orElseThrow(), plan);
          for (Limit limit : feed.recipe().limits()) {
            look(batch, new Readings(feed), new Readings(rounded.get()), limit);
          }
        }
      }
    }
    assertTrue(far > 10_000, far + " were far from their bounds");
    assertTrue(broken > 1_000, broken + " were broken by rounding");
  }

  private void look(WeighedBatch batch, Readings written, Readings rounded, Limit limit) {
    double judged = Judge.verdict(written, limit).judged();
    for (int i = 0; i < BOUNDS_EACH; i++) {
      double off = Math.pow(10, -6 * random.nextDouble()) * judged;
      Limit moved = moved(limit, limit.side() == Bound.Side.MIN ? judged - off : judged + off);
      Verdict kept = Judge.verdict(written, moved);
      boolean keeps = Judge.verdict(rounded, moved).keeps();
      if (kept.keeps() && batch.isFarFromBound(kept)) {
        far++;
        assertTrue(keeps, () -> moved + " is broken by rounding");
      }
      broken += kept.keeps() && !keeps ? 1 : 0;
    }
  }

  private static Limit moved(Limit limit, double bound) {
    return new Limit(
        limit.subject(),
        limit.side(),
        bound,
        limit.written(),
        limit.basis(),
        limit.inBatches(),
        limit.origin(),
        Optional.empty());
  }
}
