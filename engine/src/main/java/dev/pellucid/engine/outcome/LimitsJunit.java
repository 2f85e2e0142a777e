package dev.pellucid.engine.outcome;

import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * A check as JUnit XML, the form that build servers read: a suite for each recipe, a case for each
 * of its limits, those that are kept too. A broken limit is a failure; one that cannot be judged,
 * and a recipe that could not be checked, is an error; one that is kept only as far as it is told
 * and a value of guidance that is passed are skipped. Whatever else was found stands in a last
 * suite, {@link OtherSuite}, so that a build that fails has a failure here.
 *
 * <p>There is no published standard of this form. Elements and attributes are those that the report
 * of Maven's own test runner has.
 */
final class LimitsJunit implements Report {
  private final CheckOutcome outcome;
  private final PrintedPaths paths;

  LimitsJunit(CheckOutcome outcome, PrintedPaths paths) {
    this.outcome = outcome;
    this.paths = paths;
  }

  @Override
  public void writeTo(OutputStream out) throws IOException {
    OtherSuite others = OtherSuite.of(outcome, paths);
    out.write(head(others.counts()).getBytes(StandardCharsets.UTF_8));
    for (LimitSuite suite : outcome.suites()) {
      suite.writeTo(out);
    }
    out.write(others.text().getBytes(StandardCharsets.UTF_8));
    out.write("\n</testsuites>\n".getBytes(StandardCharsets.UTF_8));
  }

  private String head(CaseCounts others) {
    CaseCounts all = others;
    for (RecipeStanding recipe : outcome.recipes()) {
      all = all.plus(CaseCounts.of(recipe));
    }
    Xml xml = new Xml();
    xml.start("testsuites");
    xml.attribute("name", "feeds");
    all.write(xml);
    xml.open();
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + xml;
  }
}
