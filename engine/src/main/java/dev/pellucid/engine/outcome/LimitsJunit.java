package dev.pellucid.engine.outcome;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Limits as JUnit XML, the form that build servers read: a suite for each recipe, a case for each
 * of its limits, those that are kept too. A broken limit is a failure; one that cannot be judged,
 * and a recipe that could not be checked, is an error; one that is kept only as far as it is told
 * and a value of guidance that is passed are skipped. Whatever else is wrong with a recipe is not
 * told here.
 *
 * <p>There is no published standard of this form. Elements and attributes are those that the report
 * of Maven's own test runner has.
 */
final class LimitsJunit implements Report {
  private final List<RecipeStanding> recipes;
  private final List<LimitSuite> suites;

  LimitsJunit(List<RecipeStanding> recipes, List<LimitSuite> suites) {
    this.recipes = recipes;
    this.suites = suites;
  }

  @Override
  public void writeTo(OutputStream out) throws IOException {
    out.write(head().getBytes(StandardCharsets.UTF_8));
    for (LimitSuite suite : suites) {
      suite.writeTo(out);
    }
    out.write("\n</testsuites>\n".getBytes(StandardCharsets.UTF_8));
  }

  private String head() {
    int limits = 0;
    int unchecked = 0;
    int broken = 0;
    int notJudged = 0;
    for (RecipeStanding recipe : recipes) {
      limits += recipe.limits();
      unchecked += recipe.checked() ? 0 : 1;
      broken += recipe.broken();
      notJudged += recipe.notJudged();
    }
    Xml xml = new Xml();
    xml.start("testsuites");
    xml.attribute("name", "limits");
    LimitSuite.counts(xml, limits, unchecked, broken, notJudged);
    xml.open();
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + xml;
  }
}
