package dev.pellucid.engine.outcome;

import java.util.List;
import java.util.Set;

/**
 * How one recipe stands with its limits, in numbers: what is kept of each until the last is looked
 * at.
 *
 * @param path below the folder, with {@code /}
 * @param checked whether its limits could be judged at all
 * @param mendFirst names of the files to be fixed before, where they are not its own
 * @param limits how many it is held to
 * @param broken how many of them an error says are broken
 * @param notJudged how many cannot be judged
 * @param keptAsTold how many are kept as far as they are told
 * @param beyondGuidance how many are values of guidance that it passes
 * @param waived limits that it breaks and that a waiver lets pass
 * @param told what is said of its limits, or of why they cannot be judged, in its own suite
 */
public record RecipeStanding(
    String path,
    String code,
    boolean checked,
    List<String> mendFirst,
    int limits,
    int broken,
    int notJudged,
    int keptAsTold,
    int beyondGuidance,
    List<WaivedFinding> waived,
    Set<ToldPlace> told) {
  public RecipeStanding {
    mendFirst = List.copyOf(mendFirst);
    waived = List.copyOf(waived);
    told = Set.copyOf(told);
  }

  /** How many are kept without a waiver's help, as far as they are told. */
  int kept() {
    return limits - broken - notJudged - beyondGuidance - waived.size();
  }
}
