package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.Plural;
import dev.pellucid.text.PrintedPaths;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * All that was found beside the limits of recipes, as a suite of {@link LimitsJunit}: a case for
 * each recipe, one for each other file of which something was found, and one that says whether
 * there was any recipe at all. What stands in a case of a limit already is not told again. A case
 * fails by what is an error, and by what fails the build.
 */
final class OtherSuite {
  private static final String NAME = "other rules";
  private static final String THERE = "recipes are there to check";

  private final Xml xml = new Xml();
  private final CheckOutcome outcome;
  private final PrintedPaths paths;
  private int tests;
  private int failures;

  private OtherSuite(CheckOutcome outcome, PrintedPaths paths) {
    this.outcome = outcome;
    this.paths = paths;
  }

  static OtherSuite of(CheckOutcome outcome, PrintedPaths paths) {
    OtherSuite suite = new OtherSuite(outcome, paths);
    suite.cases();
    return suite;
  }

  CaseCounts counts() {
    return new CaseCounts(tests, failures, 0);
  }

  /** The suite, on lines of its own. */
  String text() {
    Xml head = new Xml();
    head.line(1);
    head.start("testsuite");
    head.attribute("name", NAME);
    counts().write(head);
    head.attribute("skipped", 0);
    head.attribute("time", 0);
    head.open();
    Xml foot = new Xml();
    foot.line(1);
    foot.end("testsuite");
    return head.toString() + xml + foot;
  }

  private void cases() {
    Map<String, List<Finding>> byFile = byFile();
    Set<String> codes = new HashSet<>();
    for (RecipeStanding recipe : outcome.recipes()) {
      List<Finding> said = byFile.remove(recipe.path());
      // Two files may claim one code, and each has a case.
      one(CaseNames.unlike(codes, recipe.code()), said == null ? List.of() : said);
    }
    byFile.forEach((file, said) -> one(paths.of(file), said));
    there();
  }

  /** What no case of a limit tells, recipe by recipe and then in the order of paths. */
  private Map<String, List<Finding>> byFile() {
    Map<String, Set<ToldPlace>> told = new HashMap<>();
    for (RecipeStanding recipe : outcome.recipes()) {
      if (!recipe.told().isEmpty()) {
        told.put(recipe.path(), recipe.told());
      }
    }
    Map<String, List<Finding>> byFile = new TreeMap<>();
    for (Finding finding : outcome.findings()) {
      String file = finding.span().file().path();
      if (!told.getOrDefault(file, Set.of()).contains(ToldPlace.of(finding))) {
        byFile.computeIfAbsent(file, none -> new ArrayList<>()).add(finding);
      }
    }
    return new LinkedHashMap<>(byFile);
  }

  private void one(String name, List<Finding> said) {
    start(name);
    List<Finding> failing = failing(said);
    if (failing.isEmpty()) {
      xml.closeEmpty();
      return;
    }
    Finding first = failing.get(0);
    int more = failing.size() - 1;
    String message =
        first.headline() + (more == 0 ? "" : ", and " + Plural.of(more, "finding") + " more");
    failure(first.code().text(), message, FindingText.of(failing, paths));
  }

  private List<Finding> failing(List<Finding> said) {
    if (said.isEmpty()) {
      return said;
    }
    List<Finding> failing = new ArrayList<>();
    for (Finding finding : said) {
      if (finding.severity().compareTo(outcome.failsFrom()) <= 0) {
        failing.add(finding);
      }
    }
    return failing;
  }

  private void there() {
    start(THERE);
    if (outcome.recipes().isEmpty()) {
      failure("no-recipe", "no recipe was found to check", "");
    } else {
      xml.closeEmpty();
    }
  }

  private void start(String name) {
    tests++;
    xml.line(2);
    xml.start("testcase");
    // Readers put a case into the suite of its class.
    xml.attribute("classname", NAME);
    xml.attribute("name", name);
    xml.attribute("time", 0);
  }

  private void failure(String type, String message, String text) {
    failures++;
    xml.open();
    xml.line(3);
    xml.start("failure");
    xml.attribute("type", type);
    xml.attribute("message", message);
    xml.open();
    xml.text("\n" + text);
    xml.end("failure");
    xml.line(2);
    xml.end("testcase");
  }
}
