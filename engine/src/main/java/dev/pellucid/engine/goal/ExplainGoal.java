package dev.pellucid.engine.goal;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.explain.Explainer;
import dev.pellucid.engine.explain.Explanation;
import dev.pellucid.engine.folder.RulePages;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.report.ExplainText;
import dev.pellucid.engine.report.RulePageText;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.workspace.Checked;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Explains a figure of a recipe, down to the source of each content, or what a finding means. */
public final class ExplainGoal {
  private static final String COST = "cost";
  private static final String YIELD = "yield";

  /** So many figures are named where one was not known. */
  private static final int FEW = 16;

  private final Shared shared;
  private final String recipe;

  private ExplainGoal(Shared shared, String recipe) {
    this.shared = shared;
    this.recipe = recipe;
  }

  /** The page of a rule: what it looks for, a wrong and a right example. */
  public static ExplainReport ofRule(String code) throws IOException {
    Optional<String> page = RulePages.of(code);
    if (page.isPresent()) {
      return new ExplainReport(RulePageText.of(page.get()), Optional.empty());
    }
    return problem(
        "no finding has the code "
            + code
            + "; "
            + Meant.question(near(code, RulePages.codes()))
                .orElse("it stands in square brackets behind a finding: below-minimum"));
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
    return new ExplainGoal(shared, recipe).of(Streamed.judged(shared, path.get()), figure);
  }

  private ExplainReport of(Checked checked, String figure) {
    List<Finding> findings = new ArrayList<>();
    Optional<Subject> subject = subject(figure, findings);
    boolean isYield = subject.isEmpty() && figure.equals(YIELD);
    if (subject.isEmpty() && !isYield) {
      return problem(unknown(figure, findings, checked.feed()));
    }
    if (checked.feed().isEmpty()) {
      return problem(recipe + " cannot be computed: fix what the goal check says first");
    }
    ComputedFeed feed = checked.feed().get();
    return isYield
        ? report(Explainer.ofYield(feed))
        : report(
            Explainer.of(
                feed,
                checked.recipe().orElseThrow().limits(),
                subject.orElseThrow(),
                shared.tables()));
  }

  private static ExplainReport report(Explanation explanation) {
    return new ExplainReport(ExplainText.of(explanation), Optional.empty());
  }

  /** What a limit of these words would be about. */
  private Optional<Subject> subject(String words, List<Finding> found) {
    String bound = words.equals(COST) ? " EUR/kg\n" : " %\n";
    String text = "profile one\nlimits\n  " + words + "  max 1" + bound;
    ProfileFile file = (ProfileFile) FeedParser.parse(new SourceFile("one.limits", text)).file();
    return file.limits().stream()
        .flatMap(section -> section.lines().stream())
        .findFirst()
        .flatMap(line -> shared.resolver().subject(line.left(), found));
  }

  /** What was probably meant, and what can be asked: the figures that are limited first. */
  private String unknown(String figure, List<Finding> findings, Optional<ComputedFeed> feed) {
    Set<String> limited = new LinkedHashSet<>();
    if (feed.isPresent()) {
      List<Limit> limits = feed.get().recipe().limits();
      for (boolean own : new boolean[] {true, false}) {
        for (Limit limit : limits) {
          if (own == (limit.origin().kind() == Limit.Kind.RECIPE)) {
            limited.add(limit.subject().text());
          }
        }
      }
    }
    List<String> words = new ArrayList<>();
    words.add(first(figure, findings, limited));
    if (!limited.isEmpty()) {
      List<String> few = List.copyOf(limited).subList(0, Math.min(FEW, limited.size()));
      int more = limited.size() - few.size();
      words.add(
          "Limits of "
              + recipe
              + " are on: "
              + String.join(", ", few)
              + (more > 0 ? " and " + more + " more" : ""));
    }
    words.add(
        "Ask also for: cost, yield, inclusion and an ingredient or a group, any nutrient in"
            + " nutrients/, a sum such as methionine + cystine, a ratio such as calcium :"
            + " phosphorus");
    return String.join("\n", words);
  }

  private String first(String figure, List<Finding> findings, Set<String> limited) {
    String word = findings.isEmpty() ? figure : findings.get(0).span().text();
    if (shared.tables().ingredients().containsKey(word)
        || shared.tables().groups().containsKey(word)) {
      return word + " is no nutrient; ask for its share: inclusion " + word;
    }
    Set<String> names = new LinkedHashSet<>(limited);
    names.addAll(shared.tables().nutrients().names());
    names.add(COST);
    names.add(YIELD);
    return word
        + " is no figure of "
        + recipe
        + Meant.question(near(word, names)).map(asked -> "; " + asked).orElse("");
  }

  /** Names that are nearly the word, else those of which it is a part: crude-protein of protein. */
  private static List<String> near(String word, Collection<String> names) {
    List<String> near = NearNames.of(word, names);
    return near.isEmpty()
        ? NearNames.holding(word, names.stream().filter(one -> one.indexOf(' ') < 0).toList())
        : near;
  }

  private static ExplainReport problem(String words) {
    return new ExplainReport("", Optional.of(words));
  }
}
