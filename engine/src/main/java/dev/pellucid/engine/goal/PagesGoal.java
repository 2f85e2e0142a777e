package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.outcome.RecipeStanding;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.site.FeedView;
import dev.pellucid.engine.site.FeedView.Past;
import dev.pellucid.engine.site.FeedViews;
import dev.pellucid.engine.site.Site;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.Plural;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Writes pages about a folder: checks it, takes down what each page tells feed by feed, and writes
 * the page of a feed where its figures are worked out, so that memory holds what other pages need
 * of it and not the page.
 */
public final class PagesGoal {
  private final PrintedPaths paths;
  private final LocalDate day;
  private final Shared shared;
  private final Map<String, Map<String, FeedFigures>> past = new LinkedHashMap<>();
  private final Map<String, String> days = new TreeMap<>();

  public PagesGoal(Texts folder, PrintedPaths paths, LocalDate day, List<PastState> states)
      throws IOException {
    this.paths = paths;
    this.day = day;
    this.shared = Shared.of(ReadFolder.of(folder), Days.on(day));
    for (PastState state : states) {
      past.put(state.name(), state.folder().open(this::figures));
      days.put(state.name(), state.day());
    }
  }

  private Map<String, FeedFigures> figures(Texts then) {
    Map<String, FeedFigures> figures = new TreeMap<>();
    ComparedState.of(then, day)
        .byCode()
        .forEach((code, state) -> state.figures().ifPresent(all -> figures.put(code, all)));
    return figures;
  }

  /** What the check keeps of a recipe. */
  private record Taken(Summary summary, RecipeStanding standing) {
    static Taken of(Checked recipe) {
      return new Taken(Summary.of(recipe), Outcomes.of(recipe).standing());
    }
  }

  /**
   * Writes them.
   *
   * @param to where they go, {@code index.html} first
   * @throws IOException where the disk fails
   */
  public SiteReport write(Path to) throws IOException {
    List<Taken> recipes = Streamed.check(shared, Taken::of);
    Whole whole = Whole.of(shared, recipes.stream().map(Taken::summary).toList());
    CheckReport report = CheckReport.of(whole, shared.texts());
    Map<String, List<String>> findings = new TreeMap<>();
    for (Finding finding : report.shown()) {
      findings
          .computeIfAbsent(finding.span().file().path(), none -> new ArrayList<>())
          .add(FindingText.of(finding, paths).stripTrailing());
    }
    Map<String, RecipeStanding> standings = new TreeMap<>();
    recipes.forEach(one -> standings.put(one.standing().path(), one.standing()));
    MadeFeeds made = new MadeFeeds(whole.measured(), shared.tables(), findings);
    Site site = Site.open(shared.tables(), day, Outputs.into(to)::write);
    List<Site.Kept> kept =
        written(
            recipe -> {
              RecipeStanding standing = Objects.requireNonNull(standings.get(recipe.path()));
              List<String> own = new ArrayList<>();
              doubt(recipe).ifPresent(own::add);
              own.addAll(findings.getOrDefault(recipe.path(), List.of()));
              FeedView view = view(recipe, standing(standing, whole), standing, own);
              return site.add(view, made.of(view.code(), view.title()));
            },
            List.copyOf(standings.keySet()));
    findings.keySet().removeAll(standings.keySet());
    int pages =
        site.close(
            kept,
            shared.resolver().profiles(),
            report.tally(),
            findings.values().stream().flatMap(List::stream).toList());
    return new SiteReport(report, recipes.size(), pages);
  }

  /** How the page of a recipe is written. */
  private interface Written {
    Site.Kept of(Checked recipe) throws IOException;
  }

  /** Several recipes at a time; each page is on the disk before its recipe is let go. */
  private List<Site.Kept> written(Written way, List<String> paths) throws IOException {
    try {
      return Streamed.judge(
          shared,
          paths,
          recipe -> {
            try {
              return way.of(recipe);
            } catch (IOException broken) {
              throw new UncheckedIOException(broken);
            }
          });
    } catch (UncheckedIOException broken) {
      throw broken.getCause();
    }
  }

  /**
   * What is wrong with shared files that a recipe could hang on stands above all of its figures.
   */
  private Optional<String> doubt(Checked recipe) {
    DependsOn hangs = shared.dependsOn(recipe.path(), recipe.reads());
    List<Finding> errors =
        shared.findings().stream()
            .filter(one -> one.severity() == Severity.ERROR)
            .filter(one -> hangs.on(one.span().file().path()))
            .toList();
    return errors.stream()
        .findFirst()
        .map(
            first ->
                "NOT TO BE TRUSTED: "
                    + Plural.of(errors.size(), "error")
                    + " in files that feeds share, the first in "
                    + paths.place(first.span()));
  }

  private FeedView view(
      Checked recipe, FeedView.FeedStatus standing, RecipeStanding outcome, List<String> findings) {
    Optional<ComputedFeed> feed = recipe.feed();
    Optional<FeedView.Figured> figures = recipe.recipe().flatMap(this::figured);
    return new FeedView(
        outcome.code(),
        feed.map(one -> one.recipe().title()).orElse(""),
        outcome.path(),
        feed.flatMap(one -> one.recipe().species()).map(one -> one.title()).orElse(""),
        feed.flatMap(one -> one.recipe().fish()).map(one -> one.asWritten()).orElse(""),
        feed.map(one -> one.recipe().status()).orElse(""),
        standing,
        findings,
        figures,
        figures.map(now -> past(outcome.code(), now.taken())).orElse(List.of()));
  }

  private Optional<FeedView.Figured> figured(RuleContext recipe) {
    return recipe.feed().map(feed -> FeedViews.of(feed, recipe.judgement(), shared.tables()));
  }

  private static FeedView.FeedStatus standing(RecipeStanding outcome, Whole whole) {
    if (!outcome.checked()) {
      return FeedView.FeedStatus.NOT_CHECKED;
    }
    if (outcome.broken() > 0) {
      return FeedView.FeedStatus.BROKEN;
    }
    if (outcome.notJudged() > 0) {
      return FeedView.FeedStatus.NOT_JUDGED;
    }
    if (whole.faulty().contains(outcome.path())) {
      return FeedView.FeedStatus.FAULTY;
    }
    if (outcome.limits() == 0) {
      return FeedView.FeedStatus.NOTHING_ASKED;
    }
    return outcome.waived().isEmpty() ? FeedView.FeedStatus.KEPT : FeedView.FeedStatus.WAIVED;
  }

  /** The newest state with other figures than the one after it, and so on back. */
  private List<Past> past(String code, FeedFigures now) {
    List<Past> other = new ArrayList<>();
    FeedFigures after = now;
    for (Map.Entry<String, Map<String, FeedFigures>> state : past.entrySet()) {
      FeedFigures figures = state.getValue().get(code);
      if (figures != null && !Effect.between(figures, after).isNone()) {
        other.add(new Past(state.getKey(), days.getOrDefault(state.getKey(), ""), figures));
        after = figures;
      }
    }
    return other;
  }
}
