package dev.pellucid.engine.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.plan.ExamplePlans;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Where no lot differs, the figures of lots are those that limits are judged by. */
class LotFiguresTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();

  @Test
  void onAverageTheyAreTheFiguresThatAreJudged() {
    int looked = 0;
    for (String recipe : EXAMPLE.recipes()) {
      ComputedFeed feed = EXAMPLE.feed(recipe, UnaryOperator.identity());
      LotFigures lots = new LotFigures(feed);
      for (LimitStatus status : Judge.limits(feed)) {
        Limit limit = status.limit();
        List<LotFigure> figures = lots.judged(limit.subject(), limit.basis(), limit.side());
        if (!figures.isEmpty()) {
          double judged = status.verdict().reading().value();
          String which = recipe + " " + limit.name();
          assertEquals(judged, worst(figures, limit.side()), 1e-12 * Math.abs(judged), which);
          looked++;
        }
      }
    }
    assertTrue(looked > 1000, looked + " limits");
  }

  private static double worst(List<LotFigure> figures, Bound.Side side) {
    double worst = mean(figures.get(0));
    for (LotFigure one : figures) {
      worst = side == Bound.Side.MIN ? Math.min(worst, mean(one)) : Math.max(worst, mean(one));
    }
    return worst;
  }

  private static double mean(LotFigure figure) {
    return figure.of(
        figure.above().mean(), figure.below().isPresent() ? figure.below().get().mean() : 0);
  }

  /**
   * Of one nutrient that is told, each ingredient moves by one content: the root of the squares.
   */
  @Test
  void theyMoveAsFarAsAMarginSays() {
    int looked = 0;
    for (String recipe : EXAMPLE.recipes()) {
      ComputedFeed feed = EXAMPLE.feed(recipe, UnaryOperator.identity());
      LotFigures lots = new LotFigures(feed);
      for (LimitStatus status : Judge.limits(feed)) {
        Limit limit = status.limit();
        List<LotFigure> figures = lots.judged(limit.subject(), limit.basis(), limit.side());
        boolean alone = limit.subject().addends().size() == 1;
        if (alone && figures.size() == 1 && !isDerived(feed, limit)) {
          double deviation =
              status
                  .readings()
                  .judged(limit.subject(), limit.basis(), limit.side(), true)
                  .reading()
                  .deviation();
          assertEquals(
              deviation, deviation(figures.get(0)), 1e-12 * deviation, recipe + " " + limit.name());
          looked++;
        }
      }
    }
    assertTrue(looked > 500, looked + " limits");
  }

  private static boolean isDerived(ComputedFeed feed, Limit limit) {
    int index = limit.subject().addends().get(0).index();
    for (Row row : feed.rows()) {
      for (Composition.Derived.Term term : row.composition().net().get(index)) {
        if (term.nutrient() != index) {
          return true;
        }
      }
    }
    return false;
  }

  private static double deviation(LotFigure figure) {
    double squares = 0;
    for (int i = 0; i < figure.above().count(); i++) {
      squares += figure.above().moves(i) * figure.above().moves(i);
    }
    return Math.sqrt(squares) * figure.times();
  }

  @Test
  void aLuckHasTheNamesOfItsIngredientAndItsContent() {
    ComputedFeed feed = EXAMPLE.feed("catfish/CG-36.recipe", UnaryOperator.identity());
    LotFigures lots = new LotFigures(feed);
    for (LimitStatus status : Judge.limits(feed)) {
      Limit limit = status.limit();
      if (limit.subject().text().equals("crude-protein") && limit.side() == Bound.Side.MIN) {
        LotSum sum = lots.judged(limit.subject(), limit.basis(), limit.side()).get(0).above();
        assertEquals(new LotSum.Luck("fish-meal-65", "crude-protein"), lots.luck(sum.luck(0)));
        assertEquals(2 * sum.reach(1), sum.reach(2), 1e-12);
        return;
      }
    }
    throw new AssertionError("CG-36 asks for no protein");
  }
}
