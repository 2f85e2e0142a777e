package dev.pellucid.engine.benchmark;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;

/**
 * Contenders run in turn, round after round in one warm JVM, each round beginning with another of
 * them, so that a machine that is busy with something else troubles all alike. What is told is the
 * median of the ratios of single rounds, by the clock and by the time that the processors spent
 * (garbage collection included), against the contender named as the measure.
 */
final class Rounds {
  private final List<Contender> contenders;
  private final int measure;
  private final int expected;
  private final OperatingSystemMXBean system =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  /** What one contender took in each round, in nanoseconds. */
  private static final class Times {
    final double[] clock;
    final double[] processor;

    Times(int rounds) {
      this.clock = new double[rounds];
      this.processor = new double[rounds];
    }
  }

  /**
   * @param measure the index of the contender that the others are held against
   * @param expected how many recipes each contender must have read
   */
  Rounds(List<Contender> contenders, int measure, int expected) {
    this.contenders = List.copyOf(contenders);
    this.measure = measure;
    this.expected = expected;
  }

  /** Runs all with so many threads and returns the table. */
  String run(int threads, int warmUp, int rounds) throws InterruptedException, ExecutionException {
    Times[] times = new Times[contenders.size()];
    Arrays.setAll(times, i -> new Times(rounds));
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      for (int round = -warmUp; round < rounds; round++) {
        for (int turn = 0; turn < contenders.size(); turn++) {
          int who = Math.floorMod(turn + round, contenders.size());
          time(pool, who, round, times[who]);
        }
      }
    } finally {
      pool.shutdown();
    }
    return table(threads, rounds, times);
  }

  private void time(ForkJoinPool pool, int who, int round, Times times)
      throws InterruptedException, ExecutionException {
    System.gc();
    long processor = system.getProcessCpuTime();
    long clock = System.nanoTime();
    int read = pool.submit(contenders.get(who).work()).get();
    if (round >= 0) {
      times.clock[round] = System.nanoTime() - clock;
      times.processor[round] = system.getProcessCpuTime() - processor;
    }
    if (read != expected) {
      throw new IllegalStateException(
          contenders.get(who).name() + " read " + read + " recipes of " + expected);
    }
  }

  private String table(int threads, int rounds, Times[] times) {
    StringBuilder table = new StringBuilder();
    table.append(
        String.format(
            Locale.ROOT,
            "%d %s, %d rounds: times the %s%n%-44s %-24s %s%n",
            threads,
            threads == 1 ? "thread" : "threads",
            rounds,
            contenders.get(measure).name(),
            "",
            "clock (least to most)",
            "processor (least to most)"));
    for (int who = 0; who < times.length; who++) {
      table.append(
          String.format(
              Locale.ROOT,
              "%-44s %-24s %s%n",
              contenders.get(who).name(),
              ratio(times[who].clock, times[measure].clock),
              ratio(times[who].processor, times[measure].processor)));
    }
    return table.toString();
  }

  private static String ratio(double[] times, double[] measure) {
    double[] ratios = new double[times.length];
    Arrays.setAll(ratios, i -> times[i] / measure[i]);
    Arrays.sort(ratios);
    return String.format(
        Locale.ROOT,
        "%.2f (%.2f to %.2f)",
        (ratios[(ratios.length - 1) / 2] + ratios[ratios.length / 2]) / 2,
        ratios[0],
        ratios[ratios.length - 1]);
  }
}
