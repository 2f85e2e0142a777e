package dev.pellucid.engine;

import dev.pellucid.engine.check.Inspection;
import dev.pellucid.engine.compare.Effect;
import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.compare.RecipeState;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.outcome.LimitOutcome;
import dev.pellucid.engine.outcome.RecipeOutcome;
import dev.pellucid.engine.site.FeedView;
import dev.pellucid.engine.site.FeedView.Past;
import dev.pellucid.engine.site.FeedViews;
import dev.pellucid.engine.site.Site;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Writes pages about a folder: checks it, takes down what each page tells feed by feed, and writes
 * the page of a feed before the next is looked at, so that memory holds what other pages need of it
 * and not the page.
 */
final class SiteRun {
  private final String prefix;
  private final LocalDate day;
  private final FolderRun<String> run;
  private final List<Finding> shared = new ArrayList<>();
  private final Map<String, Map<String, FeedFigures>> past = new LinkedHashMap<>();
  private final Map<String, String> days = new TreeMap<>();
  private final Set<String> faulty = new TreeSet<>();

  SiteRun(FeedFolder folder, String prefix, LocalDate day, List<PastState> states)
      throws IOException {
    this.prefix = prefix;
    this.day = day;
    this.run = FolderRun.recording(folder, day, FolderRun.Made::path);
    for (PastState state : states) {
      past.put(state.name(), state.folder().open(this::figures));
      days.put(state.name(), state.day());
    }
  }

  private Map<String, FeedFigures> figures(FeedFolder then) {
    Map<String, FeedFigures> figures = new TreeMap<>();
    for (RecipeState state : new ComparedFolder(then, day).states().values()) {
      state.figures().ifPresent(all -> figures.put(state.code(), all));
    }
    return figures;
  }

  SiteReport write(Path to) throws IOException {
    // Before the run, which adds what it finds in recipes.
    shared.addAll(run.sharedFindings());
    FolderRun.Result<String> result = run.run();
    Map<String, List<String>> findings = new TreeMap<>();
    for (Finding finding : result.report().findings()) {
      if (finding.severity() == Severity.ERROR) {
        faulty.add(finding.span().file().path());
      }
      findings
          .computeIfAbsent(finding.span().file().path(), none -> new ArrayList<>())
          .add(FindingText.of(finding).stripTrailing());
    }
    Site site = new Site(run.larder(), day, Outputs.into(to)::write);
    for (RecipeOutcome outcome : result.recorded()) {
      List<String> own = new ArrayList<>();
      doubt(run.opened(outcome.path()).read()).ifPresent(own::add);
      own.addAll(Optional.ofNullable(findings.remove(prefix + outcome.path())).orElse(List.of()));
      site.add(view(outcome, own));
    }
    int pages =
        site.close(
            run.profiles(),
            result.report().tally(),
            findings.values().stream().flatMap(List::stream).toList());
    return new SiteReport(result.report(), result.recorded().size(), pages);
  }

  /**
   * What is wrong with shared files that a recipe could hang on stands above all of its figures.
   */
  private Optional<String> doubt(SortedSet<String> read) {
    List<Finding> errors =
        shared.stream()
            .filter(one -> one.severity() == Severity.ERROR)
            .filter(one -> bearsOn(one.span().file(), read))
            .toList();
    return errors.stream()
        .findFirst()
        .map(
            first ->
                "NOT TO BE TRUSTED: "
                    + Counted.of(errors.size(), "error")
                    + " in files that feeds share, the first in "
                    + first.span().place());
  }

  /** Whether a recipe could hang on a shared file: one it looked up, or one that all hang on. */
  private boolean bearsOn(SourceFile file, SortedSet<String> read) {
    String path = file.path().substring(prefix.length());
    if (path.startsWith("lots/") || path.startsWith("batches/") || path.endsWith(".figures")) {
      return false;
    }
    boolean named = path.startsWith("ingredients/") || path.endsWith(".premix");
    return !named || read.contains(file.stem());
  }

  private FeedView view(RecipeOutcome outcome, List<String> findings) {
    Optional<Inspection> recipe = run.opened(outcome.path()).inspection();
    Optional<ComputedFeed> feed = recipe.flatMap(Inspection::feed);
    Optional<FeedView.Figured> figures = recipe.flatMap(this::figured);
    return new FeedView(
        outcome.code(),
        feed.map(one -> one.recipe().title()).orElse(""),
        outcome.path(),
        feed.flatMap(one -> one.recipe().species()).map(one -> one.title()).orElse(""),
        feed.flatMap(one -> one.recipe().fish()).map(one -> one.asWritten()).orElse(""),
        feed.map(one -> one.recipe().status()).orElse(""),
        standing(outcome),
        findings,
        figures,
        figures.map(now -> past(outcome.code(), now.taken())).orElse(List.of()));
  }

  private Optional<FeedView.Figured> figured(Inspection recipe) {
    return recipe.feed().map(feed -> FeedViews.of(feed, recipe.judgement(), run.larder(), day));
  }

  private FeedView.Standing standing(RecipeOutcome outcome) {
    if (!outcome.checked()) {
      return FeedView.Standing.NOT_CHECKED;
    }
    if (outcome.count(LimitOutcome.State.BROKEN) > 0) {
      return FeedView.Standing.BROKEN;
    }
    if (outcome.count(LimitOutcome.State.NOT_JUDGED) > 0) {
      return FeedView.Standing.NOT_JUDGED;
    }
    if (faulty.contains(prefix + outcome.path())) {
      return FeedView.Standing.FAULTY;
    }
    if (outcome.limits().isEmpty()) {
      return FeedView.Standing.NOTHING_ASKED;
    }
    return outcome.waived().isEmpty() ? FeedView.Standing.KEPT : FeedView.Standing.WAIVED;
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
