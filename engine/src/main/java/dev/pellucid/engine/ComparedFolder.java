package dev.pellucid.engine;

import dev.pellucid.engine.check.Inspection;
import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.compare.FigureTaking;
import dev.pellucid.engine.compare.RecipeState;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One of two states of a folder, with the figures of its recipes. */
final class ComparedFolder {
  private final FeedFolder folder;
  private final FolderRun<String> run;

  ComparedFolder(FeedFolder folder, LocalDate day) {
    this.folder = folder;
    this.run = new FolderRun<>(folder, day, FolderRun.Made::path);
  }

  FeedFolder folder() {
    return folder;
  }

  String currency() {
    return run.larder().settings().currency();
  }

  /** Every recipe, by its code. */
  Map<String, RecipeState> states() {
    return folder.ending(".recipe").parallelStream()
        .map(this::state)
        .collect(
            Collectors.toMap(
                RecipeState::code, Function.identity(), (one, other) -> one, TreeMap::new));
  }

  /** The figures of one recipe; empty where it is not there or cannot be computed. */
  Optional<FeedFigures> figures(String path) {
    return folder.has(path) ? figures(run.opened(path)) : Optional.empty();
  }

  /** Errors of files that recipes share, in one sentence; none where there are none. */
  Optional<String> doubt() {
    List<Finding> errors =
        run.sharedFindings().stream()
            .filter(one -> one.severity() == Severity.ERROR)
            .filter(one -> !one.span().file().path().matches("(lots|batches)/.*|.*\\.figures"))
            .toList();
    return errors.stream()
        .findFirst()
        .map(
            first ->
                Counted.of(errors.size(), "error")
                    + " in files that feeds share, the first in "
                    + first.span().place()
                    + ": "
                    + first.headline());
  }

  private RecipeState state(String path) {
    FolderRun.Opened opened = run.opened(path);
    Set<String> reads = new TreeSet<>(opened.read());
    opened.inspection().flatMap(Inspection::feed).stream()
        .flatMap(feed -> feed.rows().stream())
        .forEach(row -> reads.addAll(row.path()));
    Optional<FeedFigures> figures = figures(opened);
    String obstacle =
        opened.own().stream()
            .filter(one -> one.severity() == Severity.ERROR)
            .map(Finding::headline)
            .findFirst()
            .orElse("");
    return new RecipeState(
        new SourceFile(path, "").stem(),
        path,
        words(path),
        reads,
        figures,
        figures.isPresent() ? "" : obstacle);
  }

  private Optional<FeedFigures> figures(FolderRun.Opened opened) {
    return opened
        .inspection()
        .flatMap(
            recipe ->
                recipe.feed().map(feed -> FigureTaking.of(feed, recipe.judgement(), run.larder())));
  }

  /** The text of a file. */
  String text(String path) {
    return folder.read(path, new ArrayList<>()).map(SourceFile::text).orElse("");
  }

  /** Line by line: white space between words and empty lines are no change. */
  List<String> words(String path) {
    return text(path)
        .lines()
        .map(line -> line.strip().replaceAll("\\s+", " "))
        .filter(line -> !line.isEmpty())
        .toList();
  }
}
