package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The limits of one recipe as they stand in {@link LimitsJunit}, worded where the recipe is
 * checked: a suite, and a case for each limit. Of some thousands of recipes this is what is kept of
 * their limits, so it is kept as the bytes that are written.
 */
public final class LimitSuite {
  private static final String UNCHECKED = "its limits can be judged";
  private static final String NOT_JUDGED =
      "it cannot be judged, and what is not given may break it; the findings of the recipe say more";
  private static final String BEYOND =
      "beyond a value of guidance, which is no law; the findings of the recipe say more";
  private static final String AS_TOLD =
      "kept as far as it is given; the findings of the recipe say what is not";

  private final byte[] text;

  private LimitSuite(String text) {
    this.text = text.getBytes(StandardCharsets.UTF_8);
  }

  /**
   * The suite of a recipe.
   *
   * @param paths how files are called in it
   */
  public static LimitSuite of(RecipeOutcome recipe, PrintedPaths paths) {
    Suite suite = new Suite(recipe, paths);
    suite.write();
    return new LimitSuite(suite.xml.toString());
  }

  void writeTo(OutputStream out) throws IOException {
    out.write(text);
  }

  /** One that is being written. */
  private static final class Suite {
    private final Xml xml = new Xml();
    private final RecipeOutcome recipe;
    private final PrintedPaths paths;
    private final String code;

    Suite(RecipeOutcome recipe, PrintedPaths paths) {
      this.recipe = recipe;
      this.paths = paths;
      this.code = Xml.inAttribute(recipe.code());
    }

    void write() {
      RecipeStanding standing = recipe.standing();
      xml.line(1);
      xml.start("testsuite");
      xml.markedAttribute("name", code);
      CaseCounts.of(standing).write(xml);
      xml.attribute("skipped", standing.keptAsTold() + standing.beyondGuidance());
      xml.attribute("time", 0);
      xml.open();
      if (!recipe.checked()) {
        unchecked();
      }
      Set<String> names = new HashSet<>();
      for (LimitOutcome limit : recipe.limits()) {
        limit(limit, CaseNames.unlike(names, limit.name()));
      }
      xml.line(1);
      xml.end("testsuite");
    }

    private void unchecked() {
      startCase(UNCHECKED);
      xml.open();
      List<Finding> obstacles = recipe.obstacles();
      String fix = "fix " + String.join(", ", recipe.mendFirst()) + " first";
      String why = obstacles.isEmpty() ? fix : obstacles.get(0).headline();
      String type = obstacles.isEmpty() ? "not-checked" : obstacles.get(0).code().text();
      told("error", type, why, recipe.mendFirst().isEmpty() ? "" : fix + "\n", obstacles);
      endCase();
    }

    private void limit(LimitOutcome limit, String name) {
      startCase(name);
      if (limit.state() == LimitOutcome.State.KEPT) {
        xml.closeEmpty();
      } else {
        xml.open();
        why(limit);
        endCase();
      }
    }

    private void why(LimitOutcome limit) {
      switch (limit.state()) {
        case KEPT -> {}
        case BROKEN -> broken(limit.finding().orElseThrow());
        case NOT_JUDGED -> told("error", "not-judged", NOT_JUDGED, "", List.of());
        case BEYOND_GUIDANCE -> skipped(BEYOND);
        case KEPT_AS_TOLD -> skipped(AS_TOLD);
      }
    }

    private void broken(Finding finding) {
      told("failure", finding.code().text(), finding.headline(), "", List.of(finding));
    }

    private void skipped(String why) {
      xml.line(3);
      xml.start("skipped");
      xml.attribute("message", why);
      xml.closeEmpty();
    }

    private void told(
        String element, String type, String message, String first, List<Finding> said) {
      xml.line(3);
      xml.start(element);
      xml.attribute("type", type);
      xml.attribute("message", message);
      xml.open();
      xml.text("\n" + first + FindingText.of(said, paths));
      xml.end(element);
    }

    private void startCase(String name) {
      xml.line(2);
      xml.start("testcase");
      xml.markedAttribute("classname", code);
      xml.attribute("name", name);
      xml.attribute("time", 0);
    }

    private void endCase() {
      xml.line(2);
      xml.end("testcase");
    }
  }
}
