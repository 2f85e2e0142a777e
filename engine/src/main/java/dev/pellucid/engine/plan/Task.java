package dev.pellucid.engine.plan;

import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Optional;

/**
 * One pass through one step, in kg for the whole batch without handling overage; moistures are
 * shares.
 *
 * @param before what comes in
 * @param added water, steam or coat
 * @param evaporated water that goes off
 * @param after what goes out
 */
public record Task(
    Step step,
    List<Asked> asked,
    double before,
    double added,
    double evaporated,
    double after,
    double moistureBefore,
    double moistureAfter,
    List<Caution> cautions,
    Optional<Drying> drying) {
  public Task {
    asked = List.copyOf(asked);
    cautions = List.copyOf(cautions);
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
