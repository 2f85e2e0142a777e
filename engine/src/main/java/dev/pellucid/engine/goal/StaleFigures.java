package dev.pellucid.engine.goal;

import dev.pellucid.engine.figures.FiguresFindings;
import dev.pellucid.engine.figures.FiguresRecord;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Trees;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What of the records of figures that a folder keeps is not so any more. It costs nothing where no
 * record is kept; where one is, what recipes share is resolved once more, as on no day.
 */
final class StaleFigures {
  private StaleFigures() {}

  /**
   * @param said what was found in the folder: where a file on which a recipe hangs has an error,
   *     its figures are not so because of that, and are looked at when it is fixed
   */
  static List<Finding> of(ReadFolder folder, List<Finding> said) {
    Texts texts = folder.texts();
    List<String> kept = texts.ending(FiguresRecord.ENDING);
    if (kept.isEmpty()) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    List<String> beside = new ArrayList<>();
    for (String path : kept) {
      if (texts.has(FeedRecord.recipeOf(path))) {
        beside.add(FeedRecord.recipeOf(path));
      } else {
        findings.addAll(withoutRecipe(texts, path));
      }
    }
    Shared shared = FeedRecord.shared(folder);
    Set<String> doubted = new TreeSet<>();
    for (Finding one : said) {
      if (one.severity() == Severity.ERROR) {
        doubted.add(one.span().file().path());
      }
    }
    Streamed.judge(shared, beside, recipe -> stale(shared, recipe, doubted))
        .forEach(findings::addAll);
    return findings;
  }

  private static List<Finding> withoutRecipe(Texts texts, String path) {
    List<Finding> found = new ArrayList<>();
    SourceFile named = texts.read(path, found).orElseGet(() -> new SourceFile(path, ""));
    Set<String> elsewhere = new TreeSet<>();
    for (String recipe : texts.ending(Trees.RECIPE)) {
      if (new SourceFile(recipe, "").stem().equals(named.stem())) {
        elsewhere.add(recipe);
      }
    }
    found.add(FiguresFindings.withoutRecipe(named, elsewhere));
    return found;
  }

  private static List<Finding> stale(Shared shared, Checked recipe, Set<String> doubted) {
    List<Finding> found = new ArrayList<>();
    DependsOn hangs = shared.dependsOn(recipe.path(), recipe.reads());
    for (String path : doubted) {
      if (hangs.on(path)) {
        return found;
      }
    }
    String path = FeedRecord.beside(recipe.path());
    Optional<SourceFile> recorded = shared.texts().read(path, found);
    if (recorded.isPresent() && found.isEmpty()) {
      FeedRecord.of(shared, recipe)
          .text()
          .flatMap(now -> FiguresFindings.stale(recorded.get(), now))
          .ifPresent(found::add);
    }
    return found;
  }
}
