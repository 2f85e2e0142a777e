package dev.pellucid.engine.plan;

import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Optional;

/**
 * One pass through one step, for the whole batch. Handling overage counts as lost on the way to the
 * mixer and is in none of the masses; moistures are shares. What comes in and what is added less
 * what goes off is what goes out, to the last decimal.
 *
 * @param milled what goes to the mill in this pass; empty for other steps
 * @param before what comes in
 * @param added water, steam or coat
 * @param addedPerKg of what comes in, a share
 * @param evaporated water that goes off
 * @param after what goes out
 */
public record Task(
    Step step,
    List<Asked> asked,
    Mass before,
    Mass added,
    double addedPerKg,
    Mass evaporated,
    Mass after,
    double moistureBefore,
    double moistureAfter,
    Warned warned,
    List<Milled> milled,
    Optional<Drying> drying) {
  public Task {
    asked = List.copyOf(asked);
    milled = List.copyOf(milled);
  }

  /**
   * What goes through the mill.
   *
   * @param kg for the whole batch
   * @param screens in their order, the widest first; at least one
   */
  public record Milled(String title, Mass kg, List<String> screens) {
    public Milled {
      screens = List.copyOf(screens);
    }
  }

  /**
   * What the recipe asks of the step, as written.
   *
   * @param what the property, before the ingredient where it is for one
   * @param accept what is still taken; empty where nothing is said
   */
  public record Asked(String what, String target, String accept) {}

  /**
   * How drying is followed.
   *
   * @param checks hours after the start
   */
  public record Drying(TrayChart chart, List<Double> checks) {
    public Drying {
      checks = List.copyOf(checks);
    }
  }
}
