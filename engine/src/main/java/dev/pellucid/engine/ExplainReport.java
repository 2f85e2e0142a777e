package dev.pellucid.engine;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.explain.Explainer;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.report.ExplainText;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.NearNames;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What came of asking for an explanation.
 *
 * @param text the explanation; empty where there is a problem
 * @param problem why there is none, and what to do
 */
public record ExplainReport(String text, Optional<String> problem) {
  private static final String PAGES = "/dev/pellucid/rules/";

  /** The page of a rule: what it looks for, a wrong and a right example. */
  static ExplainReport ofRule(String code) throws IOException {
    if (code.matches("[a-z0-9-]+")) {
      try (InputStream page = ExplainReport.class.getResourceAsStream(PAGES + code + ".md")) {
        if (page != null) {
          String text = new String(page.readAllBytes(), StandardCharsets.UTF_8);
          return new ExplainReport(text, Optional.empty());
        }
      }
    }
    return problem(
        "no finding has the code "
            + code
            + "; it stands in square brackets behind a finding: below-minimum");
  }

  /** A figure of a recipe, down to its sources. */
  static ExplainReport ofFigure(Texts folder, LocalDate day, String recipe, String figure) {
    FolderRun<ComputedFeed> run = new FolderRun<>(folder, day, FolderRun.Made::feed);
    if (!run.recipes().contains(recipe)) {
      List<String> near = NearNames.of(recipe, run.recipes());
      return problem(
          recipe
              + " is not the code of a recipe of this folder"
              + (near.isEmpty() ? "" : "; did you mean " + Choices.of(near) + "?"));
    }
    List<String> mendFirst = run.larder().nutrients().mendFirst();
    if (!mendFirst.isEmpty()) {
      return problem(
          recipe + " cannot be computed: mend " + String.join(", ", mendFirst) + " first");
    }
    List<Finding> findings = new ArrayList<>();
    Optional<Subject> subject = run.subject(figure, findings);
    if (subject.isEmpty()) {
      return problem(
          findings.stream()
              .findFirst()
              .map(ExplainReport::inOneLine)
              .orElse(
                  "name a figure as a limit does: crude-protein, methionine + cystine,"
                      + " lysine : crude-protein, inclusion maize, or cost"));
    }
    return run.feed(recipe)
        .map(feed -> Explainer.of(feed, subject.get(), run.larder().settings().currency()))
        .map(explanation -> new ExplainReport(ExplainText.of(explanation), Optional.empty()))
        .orElseGet(
            () -> problem(recipe + " cannot be computed: mend what the goal check says first"));
  }

  private static String inOneLine(Finding finding) {
    return finding.helps().isEmpty()
        ? finding.headline()
        : finding.headline() + "; " + finding.helps().get(0);
  }

  private static ExplainReport problem(String words) {
    return new ExplainReport("", Optional.of(words));
  }
}
