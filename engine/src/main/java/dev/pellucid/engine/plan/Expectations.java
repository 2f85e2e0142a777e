package dev.pellucid.engine.plan;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Demand;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Waiver;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Groups limits by what they are about. Cost has no place on the floor, and an inclusion is no
 * analysis; both stay out.
 */
public final class Expectations {
  private Expectations() {}

  /** What is told of a feed by its limits, in their order. */
  public static List<Expectation> of(Collection<Held> limits) {
    Map<String, List<Held>> bySubject = new LinkedHashMap<>();
    for (Held limit : limits) {
      if (limit.demand().isAnalysis()) {
        String key = limit.subject() + limit.demand().basis();
        bySubject.computeIfAbsent(key, none -> new ArrayList<>()).add(limit);
      }
    }
    return bySubject.values().stream().map(Expectation::new).toList();
  }

  /** The limits that another stands in for. */
  static List<Waived> waived(List<LimitStatus> limits) {
    return limits.stream()
        .map(LimitStatus::limit)
        .flatMap(limit -> limit.waiver().stream().map(waiver -> waived(limit, waiver)))
        .toList();
  }

  private static Waived waived(Limit limit, Waiver waiver) {
    Demand demand = limit.demand();
    return new Waived(
        demand.title() + demand.basis(),
        demand.boundNow(),
        demand.bound(),
        waiver.until(),
        waiver.by(),
        waiver.because());
  }
}
