package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.compare.FigureTaking;
import dev.pellucid.engine.compare.RecipeState;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.resolve.Reads;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.Kept;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** One state of a folder, with the figures of its recipes. */
final class ComparedState {
  private final Kept<Figured> kept;
  private final Map<String, List<String>> words = new ConcurrentHashMap<>();

  /**
   * A recipe in it.
   *
   * @param figures absent where it cannot be computed
   * @param obstacle the first thing that keeps it from being computed; empty where nothing does
   */
  record Figured(String path, Optional<FeedFigures> figures, String obstacle, Reads reads) {
    static Figured of(Checked recipe) {
      Optional<FeedFigures> figures = recipe.recipe().flatMap(Figured::figures);
      String obstacle =
          recipe.findings().stream()
              .filter(one -> one.severity() == Severity.ERROR)
              .map(Finding::headline)
              .findFirst()
              .orElse("");
      return new Figured(
          recipe.path(), figures, figures.isPresent() ? "" : obstacle, recipe.reads());
    }

    private static Optional<FeedFigures> figures(RuleContext recipe) {
      return recipe
          .feed()
          .map(
              feed ->
                  FigureTaking.of(
                      feed, recipe.judgement(), recipe.tables(), recipe.floor().plan()));
    }
  }

  private ComparedState(Kept<Figured> kept) {
    this.kept = kept;
  }

  static ComparedState of(Texts texts, LocalDate day) {
    return new ComparedState(Kept.of(texts, Days.on(day), Kept.Route.JUDGE, Figured::of));
  }

  /**
   * Another state of the same folder, on the same day; what hangs on nothing that is otherwise in
   * it is not worked out again.
   */
  ComparedState other(Texts texts) {
    return new ComparedState(kept.with(texts.held().sharing(texts())));
  }

  /** This state with some files as another has them. */
  ComparedState with(Collection<String> paths, ComparedState other) {
    return new ComparedState(kept.with(texts().with(paths, other.texts())));
  }

  Texts texts() {
    return kept.shared().texts();
  }

  String currency() {
    return kept.shared().tables().settings().currency();
  }

  /** Every recipe, by its code. */
  Map<String, RecipeState> byCode() {
    Map<String, RecipeState> states = new TreeMap<>();
    kept.recipes().parallelStream().forEach(this::words);
    for (Figured one : kept.all()) {
      String code = new SourceFile(one.path(), "").stem();
      states.putIfAbsent(
          code,
          new RecipeState(
              code,
              one.path(),
              words(one.path()),
              kept.shared().dependsOn(one.path(), one.reads())::on,
              one.figures(),
              one.obstacle()));
    }
    return states;
  }

  /** The figures of one recipe; empty where it is not there or cannot be computed. */
  Optional<FeedFigures> figures(String path) {
    return kept.recipe(path).flatMap(Figured::figures);
  }

  /** Errors of files that recipes share, in one sentence; none where there are none. */
  Optional<String> doubt() {
    List<Finding> errors =
        kept.shared().findings().stream()
            .filter(one -> one.severity() == Severity.ERROR)
            .filter(one -> DependsOn.bearsOnFeeds(one.span().file().path()))
            .toList();
    return errors.stream()
        .findFirst()
        .map(
            first ->
                Plural.of(errors.size(), "error")
                    + " in files that feeds share, the first in "
                    + first.span().place()
                    + ": "
                    + first.headline());
  }

  /** The text of a file. */
  String text(String path) {
    return texts().read(path, new ArrayList<>()).map(SourceFile::text).orElse("");
  }

  /** Line by line: white space between words and empty lines are no change. */
  List<String> words(String path) {
    return words.computeIfAbsent(path, one -> SpacedLines.of(text(one)));
  }
}
