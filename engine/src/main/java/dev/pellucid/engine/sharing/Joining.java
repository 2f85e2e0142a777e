package dev.pellucid.engine.sharing;

import dev.pellucid.engine.optimise.JointTask;
import dev.pellucid.engine.optimise.JointTask.Scarce;
import dev.pellucid.engine.optimise.JointTask.Until;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What is wanted and what there is as one task. What premixes bring that are there already counts
 * as if there were so much more, for those that they go into.
 */
final class Joining {
  private Joining() {}

  /**
   * One task for all.
   *
   * @param reserved kg of each supply that are kept back
   */
  static JointTask of(List<Wanted> wanted, List<Supply> supplies, double[] reserved) {
    List<Scarce> scarce = new ArrayList<>();
    for (int s = 0; s < supplies.size(); s++) {
      Supply one = supplies.get(s);
      double kg = Math.max(0, one.kg() + spared(wanted, one, LocalDate.MIN) - reserved[s]);
      scarce.add(new Scarce(one.ingredient(), kg, until(wanted, one), Double.POSITIVE_INFINITY));
    }
    return new JointTask(wanted.stream().map(Wanted::made).toList(), scarce);
  }

  private static List<Until> until(List<Wanted> wanted, Supply supply) {
    List<Until> until = new ArrayList<>();
    for (Map.Entry<LocalDate, Double> day : supply.lasting().entrySet()) {
      double spoilt = supply.kg() - day.getValue();
      double before = spared(wanted, supply, LocalDate.MIN) - spared(wanted, supply, day.getKey());
      List<Double> parts = wanted.stream().map(one -> one.from(day.getKey())).toList();
      if (spoilt > 0 && parts.stream().anyMatch(part -> part > 0)) {
        until.add(new Until(spoilt + before, parts));
      }
    }
    return until;
  }

  /** What premixes bring into what is made from a day on. */
  static double spared(List<Wanted> wanted, Supply supply, LocalDate from) {
    return wanted.stream().mapToDouble(one -> one.spared(supply.ingredient(), from)).sum();
  }
}
