package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The figures of a feed that vary from lot to lot, each as a linear form of what is left to luck:
 * the contents that ingredients tell. All figures of a feed share their lucks, so that a batch can
 * be drawn once and every limit be held against it.
 *
 * <p>A figure moves with a content as {@link Deviations} says. Ingredients move apart, and within
 * one ingredient each content that is told moves by itself.
 */
public final class LotFigures {
  private final ComputedFeed feed;
  private final Nutrients nutrients;
  private final List<List<Row>> byIngredient;
  private final LotMoves moves;

  public LotFigures(ComputedFeed feed) {
    this.feed = feed;
    this.nutrients = feed.nutrients();
    this.byIngredient = feed.rowsByIngredient();
    this.moves = new LotMoves(feed);
  }

  /** The luck of a number. */
  public LotSum.Luck luck(int number) {
    Row row = byIngredient.get(number / nutrients.count()).get(0);
    return new LotSum.Luck(
        row.ingredient().name(), nutrients.inOrder().get(number % nutrients.count()).name());
  }

  /**
   * What a side of a limit is judged by, at the end where it is judged: every one of these figures
   * must keep the bound. There are two where handling overage may be lost or not, and none for what
   * does not vary: an inclusion and the cost.
   */
  public List<LotFigure> judged(Subject subject, Basis basis, Bound.Side side) {
    return subject.byKind(
        sum -> ofSum(sum.indexes(), basis, side),
        ratio -> ofRatio(ratio, side),
        inclusion -> List.of(),
        cost -> List.of());
  }

  private List<LotFigure> ofSum(int[] sum, Basis basis, Bound.Side side) {
    Scenario end = side == Bound.Side.MIN ? Scenario.POOREST : Scenario.RICHEST;
    Balances balances = feed.balances();
    LotFigure with = ofSum(sum, basis, end, end, balances.at(end));
    return end == Scenario.RICHEST && balances.losesOverage()
        ? List.of(with, ofSum(sum, basis, end, Scenario.POOREST, balances.richestLost()))
        : List.of(with);
  }

  private LotFigure ofSum(
      int[] sum, Basis basis, Scenario content, Scenario mass, Balance balance) {
    double finished = balance.finished();
    double per = finished > 0 ? Readings.factor(basis, balance) / finished : 0;
    return new LotFigure(lotSum(sum, content, mass, finished), Optional.empty(), per);
  }

  private List<LotFigure> ofRatio(Subject.Ratio ratio, Bound.Side side) {
    boolean min = side == Bound.Side.MIN;
    Scenario above = min ? Scenario.POOREST : Scenario.RICHEST;
    Scenario below = min ? Scenario.RICHEST : Scenario.POOREST;
    return List.of(
        quotient(ratio, above, below, Scenario.POOREST),
        quotient(ratio, above, below, Scenario.RICHEST));
  }

  private LotFigure quotient(Subject.Ratio ratio, Scenario above, Scenario below, Scenario mass) {
    double finished = feed.balances().at(mass).finished();
    return new LotFigure(
        lotSum(ratio.over().indexes(), above, mass, finished),
        Optional.of(lotSum(ratio.under().indexes(), below, mass, finished)),
        ratio.kind().times());
  }

  private LotSum lotSum(int[] sum, Scenario content, Scenario mass, double finished) {
    List<Integer> lucks = new ArrayList<>();
    double[] by = new double[byIngredient.size() * sum.length];
    for (int i = 0; i < byIngredient.size(); i++) {
      moves.take(byIngredient.get(i), sum, content, mass);
      for (int told = moves.next(0); told >= 0; told = moves.next(told + 1)) {
        double moved = moves.taken(told);
        if (moved != 0) {
          by = lucks.size() < by.length ? by : Arrays.copyOf(by, 2 * by.length);
          by[lucks.size()] = moved;
          lucks.add(i * nutrients.count() + told);
        }
      }
    }
    int[] numbers = new int[lucks.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = lucks.get(i);
    }
    return new LotSum(
        mean(sum, content, mass, finished), numbers, Arrays.copyOf(by, numbers.length));
  }

  private double mean(int[] sum, Scenario content, Scenario mass, double finished) {
    double mean = 0;
    for (int nutrient : sum) {
      if (nutrients.isMoisture(nutrient)) {
        mean += feed.content(content, nutrient) * finished;
      } else {
        for (Row row : feed.rows()) {
          mean += row.amount(content, mass, nutrient);
        }
      }
    }
    return mean;
  }
}
