package dev.pellucid.engine.goal;

import dev.pellucid.engine.explain.Explainer;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.report.ExplainText;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Explains a figure of a recipe, down to the source of each content, or what a finding means. */
public final class ExplainGoal {
  private static final String PAGES = "/dev/pellucid/rules/";

  private ExplainGoal() {}

  /** The page of a rule: what it looks for, a wrong and a right example. */
  public static ExplainReport ofRule(String code) throws IOException {
    if (code.matches("[a-z0-9-]+")) {
      try (InputStream page = ExplainGoal.class.getResourceAsStream(PAGES + code + ".md")) {
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
  public static ExplainReport ofFigure(Texts folder, LocalDate day, String recipe, String figure) {
    Shared shared = Shared.of(ReadFolder.of(folder), Days.on(day));
    Optional<String> path = shared.trees().path(recipe);
    if (path.isEmpty()) {
      List<String> near = NearNames.of(recipe, shared.trees().recipes());
      return problem(
          recipe
              + " is not the code of a recipe of this folder"
              + Meant.question(near).map(asked -> "; " + asked).orElse(""));
    }
    List<String> mendFirst = shared.tables().nutrients().mendFirst();
    if (!mendFirst.isEmpty()) {
      return problem(
          recipe + " cannot be computed: fix " + String.join(", ", mendFirst) + " first");
    }
    List<Finding> findings = new ArrayList<>();
    Optional<Subject> subject = subject(shared, figure, findings);
    if (subject.isEmpty()) {
      return problem(
          findings.stream()
              .findFirst()
              .map(ExplainGoal::inOneLine)
              .orElse(
                  "name a figure as a limit does: crude-protein, methionine + cystine,"
                      + " lysine : crude-protein, inclusion maize, or cost"));
    }
    return Streamed.judged(shared, path.get())
        .feed()
        .map(feed -> Explainer.of(feed, subject.get(), shared.tables().settings().currency()))
        .map(explanation -> new ExplainReport(ExplainText.of(explanation), Optional.empty()))
        .orElseGet(
            () -> problem(recipe + " cannot be computed: fix what the goal check says first"));
  }

  /** What a limit of these words would be about. */
  private static Optional<Subject> subject(Shared shared, String words, List<Finding> found) {
    String bound = words.equals("cost") ? " EUR/kg\n" : " %\n";
    String text = "profile one\nlimits\n  " + words + "  max 1" + bound;
    ProfileFile file = (ProfileFile) FeedParser.parse(new SourceFile("one.limits", text)).file();
    return file.limits().stream()
        .flatMap(section -> section.lines().stream())
        .findFirst()
        .flatMap(line -> shared.resolver().subject(line.left(), found));
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
