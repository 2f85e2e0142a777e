package dev.pellucid.engine.rebalance;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.rebalance.Rebalancing.Cause;
import dev.pellucid.engine.rebalance.Rebalancing.LotIn;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the lots of each line do to a limit: the figure that is judged, less what it is with all
 * lots but these.
 */
final class Causes {
  /** Less than this part of the figure is not worth a word. */
  private static final double LITTLE = 1e-4;

  private static final int NAMED = 3;

  private Causes() {}

  /** Those that move it to the wrong side, the worst first. */
  static List<Cause> of(BatchTrials trials, RuleContext laid, Limit limit, List<LotIn> lots) {
    Optional<LimitStatus> status = laid.judgement().status(limit);
    List<Cause> causes = new ArrayList<>();
    if (status.isEmpty()) {
      return causes;
    }
    double with = judged(status.get());
    byLine(lots)
        .forEach(
            (line, numbers) -> {
              OptionalDouble without = judged(trials.without(line), limit);
              if (without.isPresent() && harms(limit, with - without.getAsDouble(), with)) {
                causes.add(cause(status.get(), numbers, line, with - without.getAsDouble()));
              }
            });
    causes.sort(Comparator.comparingDouble((Cause one) -> -Math.abs(one.moves())));
    return causes.subList(0, Math.min(NAMED, causes.size()));
  }

  private static boolean harms(Limit limit, double moves, double figure) {
    boolean wrong = limit.side() == Bound.Side.MIN ? moves < 0 : moves > 0;
    return wrong && Math.abs(moves) > LITTLE * Math.abs(figure);
  }

  private static Cause cause(LimitStatus status, String lots, String line, double moves) {
    Bound.Limit written = status.limit().writtenInForce();
    return new Cause(
        status.limit().demand().lineNow(),
        lots,
        line,
        written.fromBase(moves),
        written.unitOfParts());
  }

  private static Map<String, String> byLine(List<LotIn> lots) {
    Map<String, String> byLine = new LinkedHashMap<>();
    lots.forEach(
        one -> byLine.merge(one.line(), one.number(), (first, next) -> first + " and " + next));
    return byLine;
  }

  private static OptionalDouble judged(RuleContext batch, Limit limit) {
    Optional<LimitStatus> status = batch.judgement().status(limit);
    return status.isPresent() ? OptionalDouble.of(judged(status.get())) : OptionalDouble.empty();
  }

  private static double judged(LimitStatus status) {
    return status.verdict().judged();
  }
}
