package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.account.PriceStanding;
import dev.pellucid.engine.account.RestsOn;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Source;
import dev.pellucid.engine.judge.KeptTogether;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.resolve.Limit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** How far an answer is to be trusted: what it rests on, and in how many batches it holds. */
final class Caring {
  /** A price below this, per unit of the room, is no more than the noise of solving. */
  private static final double SOME = 1e-12;

  private Caring() {}

  /**
   * @param then the recipe as it would be
   */
  static Care of(Posed posed, Answer.Found found, RuleContext then) {
    ComputedFeed feed = then.feed().orElseThrow();
    KeptTogether together = KeptTogether.of(feed, then.limits());
    PriceStanding prices = PriceStanding.of(feed, then.day());
    return new Care(
        OptionalDouble.of(together.all()),
        together.failsMost().map(one -> one.status().limit().name()),
        onAverageOnly(found),
        standings(then, feed),
        prices.oldest().isPresent()
            ? OptionalInt.of((int) prices.oldest().get().days())
            : OptionalInt.empty(),
        prices.invented().size(),
        LaterPrices.from(then, feed),
        posed.held(),
        LabelAnew.of(posed.recipe(), then));
  }

  private static Map<String, Integer> standings(RuleContext then, ComputedFeed feed) {
    RestsOn rests = RestsOn.of(feed, then.limits(), then.tables().practice());
    Map<String, Integer> standings = new LinkedHashMap<>();
    for (Source.Reliability one : Source.Reliability.values()) {
      standings.put(one.word(), rests.count(one));
    }
    return standings;
  }

  /** Limits on contents that bind and say nothing of batches, where no margin of law stands by. */
  private static List<String> onAverageOnly(Answer.Found found) {
    List<String> only = new ArrayList<>();
    for (int i = 0; i < found.rows().size(); i++) {
      Optional<Limit> limit = isBinding(found, i) ? plain(found.rows().get(i)) : Optional.empty();
      if (limit.isPresent()
          && !only.contains(limit.get().name())
          && !hasMargin(found, limit.get())) {
        only.add(limit.get().name());
      }
    }
    return only;
  }

  private static boolean isBinding(Answer.Found found, int row) {
    return Math.abs(found.optimum().price(row)) > SOME;
  }

  /** A limit on contents that is kept by its mean alone. */
  private static Optional<Limit> plain(Requirement one) {
    return one.byKind(
        limit ->
            limit.deviations() == 0 && !limit.limit().subject().nutrients().isEmpty()
                ? Optional.of(limit.limit())
                : Optional.empty(),
        practice -> Optional.empty(),
        cap -> Optional.empty(),
        label -> Optional.empty(),
        order -> Optional.empty(),
        stock -> Optional.empty());
  }

  private static boolean hasMargin(Answer.Found found, Limit limit) {
    for (Requirement row : found.rows()) {
      boolean margin =
          row.byKind(
              of -> of.deviations() != 0 && of.limit().equals(limit),
              practice -> false,
              cap -> false,
              label -> false,
              order -> false,
              stock -> false);
      if (margin) {
        return true;
      }
    }
    return false;
  }
}
