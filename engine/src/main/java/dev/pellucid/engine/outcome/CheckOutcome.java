package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What came of checking a folder, with paths below that folder wherever it lies.
 *
 * @param tally one line for people
 * @param batches how many batch records were held against their recipes
 * @param limits how many limits were judged
 * @param counts how many findings of each severity there are, also those that are not told
 * @param findings in the order of printing
 * @param recipes in the order of their paths
 */
public record CheckOutcome(
    String tally,
    int batches,
    int limits,
    Map<Severity, Long> counts,
    List<Finding> findings,
    List<RecipeOutcome> recipes) {
  public CheckOutcome {
    counts = Map.copyOf(counts);
    findings = List.copyOf(findings);
    recipes = List.copyOf(recipes);
  }

  /** How many findings of a severity there are, also those that are not told. */
  public long count(Severity severity) {
    return counts.getOrDefault(severity, 0L);
  }

  public List<Finding> of(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).toList();
  }

  /** What waivers let pass, recipe by recipe. */
  public List<WaivedFinding> waived() {
    return recipes.stream().flatMap(recipe -> recipe.waived().stream()).toList();
  }

  /** The recipes whose limits could not be judged. */
  public Stream<RecipeOutcome> notChecked() {
    return recipes.stream().filter(recipe -> !recipe.checked());
  }
}
