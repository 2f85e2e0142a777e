package dev.pellucid.engine.rebalance;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.rebalance.Rebalancing.LimitMove;
import dev.pellucid.engine.resolve.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which limits are shown of a batch: those that are missed, and those that bind afterwards. */
final class LimitMoves {
  /** In percent of the bound. */
  private static final double BINDS = 0.5;

  private LimitMoves() {}

  /**
   * In the order of the recipe.
   *
   * @param tried with other shares; absent where there are none
   */
  static List<LimitMove> of(
      RuleContext written, RuleContext laid, Optional<RuleContext> tried, List<Limit> missed) {
    List<LimitMove> moves = new ArrayList<>();
    for (LimitStatus status : laid.limits()) {
      Limit limit = status.limit();
      if (isShown(limit, tried, missed)) {
        moves.add(
            new LimitMove(
                held(written, limit),
                held(status),
                tried.flatMap(it -> held(it, limit)),
                missed.contains(limit)));
      }
    }
    return moves;
  }

  /** How many others are kept, before and after. */
  static int others(RuleContext laid, Optional<RuleContext> tried, List<Limit> missed) {
    int kept = 0;
    for (LimitStatus status : laid.limits()) {
      Limit limit = status.limit();
      boolean after =
          tried
              .map(it -> it.judgement().status(limit).filter(LimitMoves::isKept).isPresent())
              .orElse(true);
      kept += isKept(status) && after && !isShown(limit, tried, missed) ? 1 : 0;
    }
    return kept;
  }

  private static boolean isKept(LimitStatus status) {
    return status.state().isKept();
  }

  private static boolean isShown(Limit limit, Optional<RuleContext> tried, List<Limit> missed) {
    // That there is none of a thing binds always, and says nothing.
    return missed.contains(limit)
        || limit.inForce() != 0
            && tried
                .flatMap(it -> held(it, limit))
                .filter(it -> it.told() && Math.abs(it.roomPercent()) < BINDS)
                .isPresent();
  }

  private static Optional<Held> held(RuleContext batch, Limit limit) {
    return batch.judgement().status(limit).map(LimitMoves::held);
  }

  private static Held held(LimitStatus status) {
    return Held.all(List.of(status)).get(0);
  }
}
