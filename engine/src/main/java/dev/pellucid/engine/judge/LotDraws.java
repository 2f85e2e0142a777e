package dev.pellucid.engine.judge;

import dev.pellucid.engine.compute.LotFigure;
import dev.pellucid.engine.compute.LotFigures;
import dev.pellucid.engine.compute.LotSum;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Batches drawn by chance: each has another lot of each ingredient, and one luck for each content
 * that a lot tells, which every limit shares that hangs on it.
 *
 * <p>A luck takes as many equal steps of the normal distribution as there are batches, each once,
 * in an order of its own: a Latin hypercube. So the batches of one limit lie as they should, and
 * only how lucks meet is left to chance. The order hangs on the names of the ingredient and the
 * content alone: the same feed gives the same figures, and two feeds that hardly differ meet the
 * same lots.
 *
 * <p>Source: McKay, Beckman and Conover, Technometrics 21 (1979), 239 to 245 (from memory).
 */
final class LotDraws {
  /** So many that a part of all batches is seldom off by two points of percent. */
  static final int BATCHES = 2000;

  /** The middle of each step, in deviations; nobody writes to it. */
  private static final double[] STEPS = Normal.middles(BATCHES);

  private static final double FURTHEST = STEPS[BATCHES - 1];

  private final LotFigures lots;
  private final Map<Integer, List<Move>> byLuck = new TreeMap<>();

  LotDraws(LotFigures lots) {
    this.lots = lots;
  }

  /** A sum of nutrients in each batch. */
  private static final class Sums {
    private final double[] byBatch = new double[BATCHES];

    Sums(LotSum sum) {
      Arrays.fill(byBatch, sum.mean());
    }

    double in(int batch) {
      return byBatch[batch];
    }

    void add(double moves, double[] deviations) {
      for (int i = 0; i < BATCHES; i++) {
        byBatch[i] += moves * deviations[i];
      }
    }
  }

  /** By how much a luck moves a sum. */
  private record Move(Sums sums, double moves) {}

  /** A figure in each batch. */
  private record Drawn(
      LotFigure figure, Bound.Side side, double bound, Sums above, Optional<Sums> below) {
    boolean keeps(int batch) {
      double under = below.isPresent() ? below.get().in(batch) : 0;
      return Judge.keeps(side, figure.of(above.in(batch), under), bound);
    }
  }

  /**
   * What is held against one bound.
   *
   * @param drawn the figures of it that may pass the bound
   */
  record Held(List<Drawn> drawn) {
    /** Whether some lots may bring it beyond the bound, or back. */
    boolean varies() {
      return !drawn.isEmpty();
    }

    /** Whether a batch keeps the bound; told once all is drawn. */
    boolean keeps(int batch) {
      for (Drawn one : drawn) {
        if (!one.keeps(batch)) {
          return false;
        }
      }
      return true;
    }
  }

  /** Holds some figures against a bound, in each batch that is drawn. */
  Held hold(List<LotFigure> figures, Bound.Side side, double bound) {
    List<Drawn> drawn = new ArrayList<>(figures.size());
    for (LotFigure figure : figures) {
      if (mayPass(figure, side, bound)) {
        Sums above = sums(figure.above());
        Optional<Sums> below =
            figure.below().isPresent() ? Optional.of(sums(figure.below().get())) : Optional.empty();
        drawn.add(new Drawn(figure, side, bound, above, below));
      }
    }
    return new Held(drawn);
  }

  /** Whether it passes the bound where all lucks are as bad as they can be. */
  private static boolean mayPass(LotFigure figure, Bound.Side side, double bound) {
    double off = side == Bound.Side.MIN ? -FURTHEST : FURTHEST;
    double above = figure.above().mean() + figure.above().reach(off);
    if (figure.below().isEmpty()) {
      return !Judge.keeps(side, figure.of(above, 0), bound);
    }
    double below = figure.below().get().mean() - figure.below().get().reach(off);
    return above < 0 || below <= 0 || !Judge.keeps(side, figure.of(above, below), bound);
  }

  private Sums sums(LotSum sum) {
    Sums sums = new Sums(sum);
    for (int i = 0; i < sum.count(); i++) {
      List<Move> moves = byLuck.get(sum.luck(i));
      if (moves == null) {
        moves = new ArrayList<>(2);
        byLuck.put(sum.luck(i), moves);
      }
      moves.add(new Move(sums, sum.moves(i)));
    }
    return sums;
  }

  /** Draws every luck that some figure hangs on, once for all of them. */
  void draw() {
    double[] deviations = new double[BATCHES];
    for (Map.Entry<Integer, List<Move>> luck : byLuck.entrySet()) {
      shuffle(deviations, lots.luck(luck.getKey()));
      for (Move move : luck.getValue()) {
        move.sums().add(move.moves(), deviations);
      }
    }
    byLuck.clear();
  }

  private static void shuffle(double[] deviations, LotSum.Luck luck) {
    System.arraycopy(STEPS, 0, deviations, 0, BATCHES);
    SplittableRandom random = new SplittableRandom(seed(luck));
    for (int i = BATCHES - 1; i > 0; i--) {
      int other = (int) ((random.nextLong() >>> 33) * (i + 1) >>> 31);
      double held = deviations[i];
      deviations[i] = deviations[other];
      deviations[other] = held;
    }
  }

  /** The same for the same names, on every machine. */
  private static long seed(LotSum.Luck luck) {
    String names = luck.ingredient() + '\n' + luck.nutrient();
    long seed = 1;
    for (int i = 0; i < names.length(); i++) {
      seed = seed * 0x100000001B3L + names.charAt(i);
    }
    return seed;
  }
}
