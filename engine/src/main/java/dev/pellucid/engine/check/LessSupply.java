package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * Less of what a premix supplies, where that is enough to keep a maximum in as many batches as are
 * asked, and no minimum of the same nutrient is broken by it. What the premix brings may vary too;
 * with less of it the spread can only become smaller.
 */
final class LessSupply {
  /** No more than is let pass. */
  private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.DOWN);

  /** A minimum is judged where the feed is poorest, so that the same amount is a larger part. */
  private static final double SPARE = 1.5;

  private LessSupply() {}

  /** Empty where no premix supplies so much. */
  static Optional<String> words(
      RuleContext recipe, ComputedFeed feed, LawMargin margin, Verdict asked) {
    List<Nutrient> addends = margin.limit().subject().addends();
    if (margin.limit().side() != Bound.Side.MAX || addends.size() != 1 || asked.keeps()) {
      return Optional.empty();
    }
    Nutrient nutrient = addends.get(0);
    double part = -asked.room() / margin.reading().value();
    for (Supplied one : Supplied.to(recipe.recipe())) {
      if (one.supply().nutrient().equals(nutrient)) {
        double ofPremix = part(feed, one, nutrient);
        double less = ofPremix > 0 ? part / ofPremix : 1;
        if (less < 1 && leavesMinima(recipe, nutrient, part)) {
          return Optional.of(words(one, less));
        }
      }
    }
    return Optional.empty();
  }

  private static String words(Supplied one, double less) {
    Unit unit = one.supply().written().amount().unit();
    double most = unit.fromBase(one.supply().amount() * (1 - less));
    return "let "
        + one.premix().code()
        + " supply no more than "
        + BigDecimal.valueOf(most).round(TWO_DIGITS).toPlainString()
        + " "
        + one.supply().written().amount().unitAsWritten()
        + " of "
        + one.supply().nutrient().name()
        + " in place of "
        + one.told(one.supply().amount())
        + ", where the other feeds that hold it can spare it";
  }

  /** What comes with a premix, of all that the feed holds. */
  private static double part(ComputedFeed feed, Supplied one, Nutrient nutrient) {
    double all = 0;
    double through = 0;
    for (Row row : feed.rows()) {
      double amount = row.amount(Scenario.RICHEST, nutrient.index());
      all += amount;
      through += isSupply(row, one) ? amount : 0;
    }
    return all > 0 ? through / all : 0;
  }

  private static boolean isSupply(Row row, Supplied one) {
    return row.path().contains(one.premix().code())
        && row.ingredient().name().equals(one.supply().from());
  }

  /** Whether every minimum that is kept is kept with so much less. */
  private static boolean leavesMinima(RuleContext recipe, Nutrient nutrient, double part) {
    for (LimitStatus status : recipe.limits()) {
      boolean about = status.limit().subject().nutrients().contains(nutrient);
      if (about && status.limit().side() == Bound.Side.MIN && status.state().isKept()) {
        double left = status.verdict().judged() * (1 - part * SPARE) - status.limit().inForce();
        if (left < 0) {
          return false;
        }
      }
    }
    return true;
  }
}
