package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.OnScales;
import dev.pellucid.engine.plan.Premixing;
import dev.pellucid.engine.plan.Task;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What each part of a batch sheet is made of, by the heading of the part, as numbers that are other
 * where anything of it is other. So two sheets are held against each other without being written.
 */
public final class SheetParts {
  private static final long PRIME = 1_099_511_628_211L;

  private SheetParts() {}

  /** The parts in their order; two of one heading are one. */
  public static Map<String, Long> of(BatchPlan plan) {
    Map<String, Long> parts = new LinkedHashMap<>();
    String dose = plan.premixing().map(Premixing::dose).orElse("");
    parts.put(
        "head",
        number(
            plan.house(),
            plan.jurisdiction(),
            plan.reviewed(),
            plan.code(),
            plan.title(),
            plan.fish(),
            dose));
    parts.put(
        "what it is made for",
        number(
            plan.status(),
            plan.sizeTold(),
            plan.draftBecause(),
            plan.rebalanced(),
            plan.premixing().map(Premixing::needs).orElse(List.of())));
    parts.put("before the start", number(plan.line(), plan.inspection()));
    parts.put(
        "weigh the mix",
        number(
            plan.weighing(),
            plan.scales(),
            plan.premixCodes(),
            plan.mixCautions(),
            plan.fromStore()));
    for (Task task : plan.tasks()) {
      parts.merge(TaskWords.title(task.step()), number(task), (first, then) -> number(first, then));
    }
    parts.put("mass balance and bags", number(plan.balance(), plan.packing(), plan.storing()));
    parts.put(
        "for the laboratory",
        number(
            plan.expected(),
            plan.waived(),
            plan.moisture(),
            plan.premixing().map(Premixing::supplied).orElse(List.of())));
    return parts;
  }

  /** {@code 34 trays of 2 kg in 2 rounds, 12 to 24 h}. */
  public static String dryer(OnScales.DryerFilled dryer) {
    return DryerWords.ofCompare(dryer);
  }

  /** A number for values. */
  public static long number(Object... values) {
    long number = PRIME;
    for (Object one : List.of(values)) {
      number = number * PRIME + one.hashCode();
      number ^= number >>> 29;
    }
    return number;
  }
}
