package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import java.util.List;

/**
 * What came of one recipe.
 *
 * @param path below the folder, with {@code /}
 * @param checked whether its limits could be judged at all
 * @param mendFirst names of the files to be mended before, where they are not its own
 * @param limits in the order in which they were judged
 * @param waived limits that it breaks and that a waiver lets pass
 * @param obstacles the errors of a recipe that could not be checked
 */
public record RecipeOutcome(
    String path,
    String code,
    boolean checked,
    List<String> mendFirst,
    List<LimitOutcome> limits,
    List<WaivedFinding> waived,
    List<Finding> obstacles) {
  public RecipeOutcome {
    mendFirst = List.copyOf(mendFirst);
    limits = List.copyOf(limits);
    waived = List.copyOf(waived);
    obstacles = List.copyOf(obstacles);
  }

  /** One whose limits could not be judged. */
  public static RecipeOutcome unchecked(
      String path, String code, List<String> mendFirst, List<Finding> obstacles) {
    return new RecipeOutcome(path, code, false, mendFirst, List.of(), List.of(), obstacles);
  }

  /** How many of its limits stand so. */
  public long count(LimitOutcome.State state) {
    return limits.stream().filter(limit -> limit.state() == state).count();
  }

  /** How many are kept without a waiver's help, as far as they are told. */
  public long kept() {
    return count(LimitOutcome.State.KEPT) + count(LimitOutcome.State.KEPT_AS_TOLD) - waived.size();
  }
}
