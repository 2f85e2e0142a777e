package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Why a figure is another at the end where it is judged than on target, in words. */
final class Ends {
  private static final int PERCENT_DECIMALS = 2;

  private final ComputedFeed feed;
  private final Scenario end;

  Ends(ComputedFeed feed, LimitStatus status) {
    this.feed = feed;
    this.end = status.verdict().end();
  }

  /**
   * @param mass of the feed at the end
   */
  List<String> reasons(Subject.Nutrients sum, Balance mass) {
    List<String> reasons = new ArrayList<>();
    Balance target = feed.balances().expected();
    if (!Closeness.same(mass.finished(), target.finished())) {
      reasons.add(moisture(target, mass));
    }
    if (end == Scenario.RICHEST
        && feed.balances().losesOverage()
        && mass.equals(feed.balances().richest())) {
      reasons.add("all that is weighed on top for handling is in it");
    }
    if (isLost(sum)) {
      reasons.add(
          end == Scenario.POOREST
              ? "with what heat and storage leave on the last day of the shelf life"
              : "fresh, and where heat destroys least");
    }
    return reasons;
  }

  private static String moisture(Balance target, Balance mass) {
    Optional<Pass> by = mass.moistureSet().map(Balance.MoistureSet::by);
    if (by.isPresent()) {
      OptionalDouble aim = after(target, by.get());
      OptionalDouble left = after(mass, by.get());
      if (aim.isPresent() && left.isPresent()) {
        return by.get().word()
            + " leaves "
            + percent(left.getAsDouble())
            + " moisture, not "
            + percent(aim.getAsDouble());
      }
    }
    return "moisture is " + percent(mass.moisture()) + ", on target " + percent(target.moisture());
  }

  private static OptionalDouble after(Balance balance, Pass pass) {
    for (Stage stage : balance.stages()) {
      if (stage.pass().equals(pass)) {
        return OptionalDouble.of(stage.moistureAfter());
      }
    }
    return OptionalDouble.empty();
  }

  private static String percent(double share) {
    return Figures.plain(Double.parseDouble(Figures.fixed(share * 100, PERCENT_DECIMALS))) + " %";
  }

  private boolean isLost(Subject.Nutrients sum) {
    for (Row row : feed.rows()) {
      for (Nutrient one : sum.nutrients()) {
        double there = row.amount(end, one.index()) / row.kg(end);
        double fresh = row.amount(Scenario.EXPECTED, one.index()) / row.kg();
        boolean decays = row.composition().stability().get(one.index()) != 0;
        if (decays && fresh > 0 && !Closeness.same(there, fresh)) {
          return true;
        }
      }
    }
    return false;
  }
}
