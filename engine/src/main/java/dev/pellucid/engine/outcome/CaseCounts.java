package dev.pellucid.engine.outcome;

/** How many cases a suite has, or all suites together, and how they end. */
record CaseCounts(int tests, int failures, int errors) {
  static final CaseCounts NONE = new CaseCounts(0, 0, 0);

  /** Of the limits of a recipe; one that could not be checked has a case that says so. */
  static CaseCounts of(RecipeStanding recipe) {
    int unchecked = recipe.checked() ? 0 : 1;
    return new CaseCounts(
        recipe.limits() + unchecked, recipe.broken(), recipe.notJudged() + unchecked);
  }

  CaseCounts plus(CaseCounts more) {
    return new CaseCounts(tests + more.tests, failures + more.failures, errors + more.errors);
  }

  void write(Xml xml) {
    xml.attribute("tests", tests);
    xml.attribute("failures", failures);
    xml.attribute("errors", errors);
  }
}
