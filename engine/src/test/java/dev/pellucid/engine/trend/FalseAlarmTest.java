package dev.pellucid.engine.trend;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** How often something is told of batches that are left to chance, and how soon of a drift. */
class FalseAlarmTest {
  private static final int SERIES = 4000;

  /** As the page of the batches says: one in 65 or so. */
  @Test
  void ofSpreadsThatAreToldOneBatchInSixtyFiveIsMarked() {
    double marked = marked(Made::inSpreads, 20);
    assertTrue(marked > 0.012 && marked < 0.019, marked + " of all batches are marked");
  }

  /** A spread that ten batches show is itself unsure. */
  @Test
  void ofSpreadsofTheirOwnNotMoreAreMarked() {
    double marked = marked(Made::bare, 12);
    assertTrue(marked > 0.008 && marked < 0.02, marked + " of all batches are marked");
  }

  private static double marked(Function<double[], List<MeasuredBatch>> made, int length) {
    Random random = new Random(11);
    int told = 0;
    for (int i = 0; i < SERIES; i++) {
      double[] spreads = new double[length];
      for (int k = 0; k < length; k++) {
        spreads[k] = random.nextGaussian();
      }
      told += Made.course(made.apply(spreads)).now().isEmpty() ? 0 : 1;
    }
    return told / (double) SERIES;
  }

  /** A step of one spread and a half, and a slow rise, are told within so many batches. */
  @Test
  void aDriftIsToldSoon() {
    double step = untilTold(i -> 1.5);
    double rise = untilTold(i -> 0.2 * i);
    assertTrue(step < 8, "a step of a spread and a half after " + step + " batches");
    assertTrue(rise < 12, "a rise of a fifth of a spread a batch after " + rise + " batches");
  }

  private static double untilTold(Function<Integer, Double> drift) {
    Random random = new Random(12);
    double batches = 0;
    for (int i = 0; i < SERIES; i++) {
      double[] spreads = new double[60];
      for (int k = 0; k < spreads.length; k++) {
        spreads[k] = random.nextGaussian() + drift.apply(k);
      }
      batches += Made.course(Made.inSpreads(spreads)).runs().get(0).to() + 1;
    }
    return batches / SERIES;
  }
}
