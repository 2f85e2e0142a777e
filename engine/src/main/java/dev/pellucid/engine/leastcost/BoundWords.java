package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.ProgramPrices;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.syntax.Bound;
import java.util.Set;
import java.util.TreeSet;

/** What a bound is called, as its file calls it. */
final class BoundWords {
  private static final double NONE = 1e-12;

  private BoundWords() {}

  /** Without its side: {@code crude-protein}. */
  static String name(Requirement one) {
    return one.byKind(
        limit -> limit.limit().subject().text(),
        practice -> practice.figure().bound().word(),
        cap -> cap.ingredient().name(),
        label -> label.verdict().claim().nutrient().name(),
        order -> order.more(),
        stock -> stock.ingredient());
  }

  /** With its side, and what it is where its name does not say so: {@code crude-protein min}. */
  static String inFull(Requirement one) {
    return one.byKind(
        limit -> limit.limit().demand().about(),
        practice -> name(one) + " " + practice.side().word(),
        cap -> "cap of " + name(one),
        label -> "label " + name(one) + " " + label.side().word(),
        order -> order.more() + " before " + order.less(),
        stock -> "stock of " + name(one));
  }

  /** Whether a person means it by this: its name with the side, and with what it says besides. */
  static boolean isCalled(Requirement one, String words) {
    return inFull(one).equals(words)
        || one.byKind(
            limit -> limit.limit().name().equals(words),
            practice -> false,
            cap -> false,
            label -> false,
            order -> false,
            stock -> false);
  }

  /** What has a price in an answer, each by its name in full. */
  static Set<String> binding(Answer.Found found) {
    Set<String> names = new TreeSet<>();
    ProgramPrices prices = new ProgramPrices(found);
    for (Requirement one : prices.binding()) {
      names.add(inFull(one));
    }
    for (int i = 0; i < found.shares().length; i++) {
      Free free = found.task().free().get(i);
      double price = prices.perPoint(i);
      if (free.low() < free.high() && Math.abs(price) > NONE) {
        Bound.Side side = price > 0 ? Bound.Side.MIN : Bound.Side.MAX;
        names.add(within(free.line().material().name(), side));
      }
    }
    return names;
  }

  /** Of the bounds of a line: {@code maize within max}. */
  static String within(String ingredient, Bound.Side side) {
    return ingredient + " within " + side.word();
  }
}
