package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.List;
import java.util.Map;

/**
 * What came of checking a folder, with paths below that folder wherever it lies.
 *
 * @param tally one line for people
 * @param batches how many batch records were held against their recipes
 * @param limits how many limits were judged
 * @param askers who asks for these limits
 * @param counts how many findings of each severity there are, also those that are not told
 * @param findings in the order of printing
 * @param recipes in the order of their paths
 * @param suites of the same recipes in the same order
 * @param failsFrom the least grave findings that a report of tests calls failures
 */
public record CheckOutcome(
    String tally,
    int batches,
    int limits,
    Askers askers,
    Map<Severity, Long> counts,
    List<Finding> findings,
    List<RecipeStanding> recipes,
    List<LimitSuite> suites,
    Severity failsFrom) {
  public CheckOutcome {
    counts = Map.copyOf(counts);
    findings = List.copyOf(findings);
    recipes = List.copyOf(recipes);
    suites = List.copyOf(suites);
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

  /** Codes of the recipes whose limits could not be judged. */
  List<String> notChecked() {
    return recipes.stream().filter(recipe -> !recipe.checked()).map(RecipeStanding::code).toList();
  }
}
