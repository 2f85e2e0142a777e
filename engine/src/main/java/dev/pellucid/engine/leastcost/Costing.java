package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.quantity.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a recipe costs now and then, and when one cost is less than another. */
final class Costing {
  /** Money per kg below which nothing can be told apart: a cent for a tonne. */
  private static final double LITTLE = 1e-5;

  /** The part of a cost within which two ways of rounding the same shares come out. */
  private static final double LITTLE_PART = 5e-5;

  /** From which part on it is told what rounding costs. */
  private static final double MUCH = 1e-3;

  private static final double PERCENT = 100;

  private Costing() {}

  /** Whether it is less by more than rounding and solver can tell. */
  static boolean isLess(double cost, double than) {
    return than - cost > Math.max(LITTLE, LITTLE_PART * than);
  }

  static Costs of(
      Posed posed, Answer.Found found, Cheapest.Result result, OptionalDouble perMonth) {
    double then = result.cost();
    double least = found.feed().costPerKg();
    return new Costs(
        posed.recipe().feed().orElseThrow().costPerKg(),
        then,
        least,
        perMonth,
        then > least * (1 + MUCH) ? Optional.of(why(found, then / least - 1)) : Optional.empty());
  }

  private static String why(Answer.Found found, double part) {
    int decimals = ShareEdits.decimals(found.task().free());
    List<String> tight = tight(found);
    return "shares "
        + (decimals == 0
            ? "without decimals cost "
            : "with " + decimals + (decimals == 1 ? " decimal cost " : " decimals cost "))
        + Figures.fixed(part * PERCENT, 2)
        + " % more than shares with more of them would"
        + (tight.isEmpty()
            ? ", since what is weighed or warned of leaves none nearer"
            : ", since "
                + String.join(" and ", tight)
                + (tight.size() == 1 ? " leaves" : " leave")
                + " none nearer");
  }

  /** What the answer keeps with nothing to spare, in words. */
  private static List<String> tight(Answer.Found found) {
    List<String> tight = new ArrayList<>();
    for (int r = 0; r < found.rows().size(); r++) {
      if (found.optimum().price(r) != 0) {
        String name =
            found
                .rows()
                .get(r)
                .byKind(
                    limit -> limit.limit().name(),
                    practice -> practice.figure().bound().toString(),
                    cap -> cap.ingredient().name(),
                    label -> label.verdict().claim().nutrient().name(),
                    order -> order.more(),
                    stock -> stock.ingredient());
        if (!tight.contains(name)) {
          tight.add(name);
        }
      }
    }
    return tight;
  }
}
