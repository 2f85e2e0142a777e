package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What came of one recipe, limit by limit. It is let go as soon as its part of the reports is made.
 *
 * @param path below the folder, with {@code /}
 * @param checked whether its limits could be judged at all
 * @param mendFirst names of the files to be fixed before, where they are not its own
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

  /** The same in numbers. */
  public RecipeStanding standing() {
    int broken = 0;
    int notJudged = 0;
    int keptAsTold = 0;
    int beyondGuidance = 0;
    for (LimitOutcome limit : limits) {
      switch (limit.state()) {
        case KEPT -> {}
        case BROKEN -> broken++;
        case NOT_JUDGED -> notJudged++;
        case KEPT_AS_TOLD -> keptAsTold++;
        case BEYOND_GUIDANCE -> beyondGuidance++;
      }
    }
    return new RecipeStanding(
        path,
        code,
        checked,
        mendFirst,
        limits.size(),
        broken,
        notJudged,
        keptAsTold,
        beyondGuidance,
        waived,
        told());
  }

  /** What its suite tells. */
  private Set<ToldPlace> told() {
    Set<ToldPlace> told = new HashSet<>();
    for (LimitOutcome limit : limits) {
      if (limit.finding().isPresent()) {
        told.add(ToldPlace.of(limit.finding().get()));
      }
    }
    for (Finding obstacle : obstacles) {
      told.add(ToldPlace.of(obstacle));
    }
    return told;
  }
}
