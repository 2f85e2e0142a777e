package dev.pellucid.engine;

import dev.pellucid.engine.check.Inspection;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.figures.FiguresFindings;
import dev.pellucid.engine.figures.FiguresRecord;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Records of figures of a folder: what each would be, and what of those that are kept is not so any
 * more. It reads the folder for itself, as it is written and not as on a day, so it costs nothing
 * where no record is kept.
 */
final class FiguresRun {
  private static final String RECIPE = ".recipe";

  private final FeedFolder folder;
  private final FolderRun<String> run;
  private final Set<String> recipes;
  private final List<Finding> shared;

  /**
   * What a recipe comes to.
   *
   * @param text its record; empty where it cannot be made
   * @param mendFirst names of the files to be mended before, where they are not its own
   */
  record Made(Optional<String> text, List<String> mendFirst) {}

  FiguresRun(FeedFolder folder) {
    this.folder = folder;
    this.recipes = new TreeSet<>(folder.ending(RECIPE));
    this.run = FolderRun.asWritten(folder);
    this.shared =
        run.sharedFindings().stream()
            .filter(finding -> finding.severity() == Severity.ERROR)
            .toList();
  }

  /** What is wrong with the records that a folder keeps. */
  static List<Finding> findings(FeedFolder folder) {
    List<String> kept = folder.ending(FiguresRecord.ENDING);
    if (kept.isEmpty()) {
      return List.of();
    }
    FiguresRun run = new FiguresRun(folder);
    List<List<Finding>> each = new ArrayList<>();
    kept.parallelStream().map(run::findings).forEachOrdered(each::add);
    return each.stream().flatMap(List::stream).toList();
  }

  private List<Finding> findings(String path) {
    List<Finding> found = new ArrayList<>();
    Optional<SourceFile> recorded = folder.read(path, found);
    String recipe = recipeOf(path);
    if (!recipes.contains(recipe)) {
      SourceFile named = recorded.orElseGet(() -> new SourceFile(folder.printed(path), ""));
      found.add(FiguresFindings.withoutRecipe(named, elsewhere(named.stem())));
    } else if (recorded.isPresent() && found.isEmpty()) {
      made(recipe)
          .text()
          .flatMap(now -> FiguresFindings.stale(recorded.get(), now))
          .ifPresent(found::add);
    }
    return found;
  }

  private Set<String> elsewhere(String code) {
    Set<String> paths = new TreeSet<>();
    for (String path : recipes) {
      SourceFile named = new SourceFile(folder.printed(path), "");
      if (named.stem().equals(code)) {
        paths.add(named.path());
      }
    }
    return paths;
  }

  /** The record of the recipe at a path. */
  Made made(String path) {
    FolderRun.Opened opened = run.opened(path);
    Set<String> mendFirst = new TreeSet<>(run.brokenBefore(path, opened.read()));
    shared.stream()
        .map(finding -> finding.span().file())
        .filter(file -> bearsOn(opened, file))
        .forEach(file -> mendFirst.add(file.fileName()));
    boolean sound = opened.own().stream().noneMatch(one -> one.severity() == Severity.ERROR);
    return new Made(
        opened.inspection().filter(one -> sound && mendFirst.isEmpty()).flatMap(this::text),
        List.copyOf(mendFirst));
  }

  private Optional<String> text(Inspection recipe) {
    return recipe
        .feed()
        .map(feed -> FiguresRecord.of(feed, recipe.limits(), run.larder().settings().currency()));
  }

  /** Whether a recipe hangs on a shared file: on its own ingredients, premixes and limits only. */
  private boolean bearsOn(FolderRun.Opened opened, SourceFile file) {
    String name = file.fileName();
    if (file.path().startsWith(folder.printed("lots/"))
        || file.path().startsWith(folder.printed("batches/"))
        || name.endsWith(FiguresRecord.ENDING)
        || name.endsWith(RECIPE)) {
      return false;
    }
    if (name.endsWith(".limits")) {
      return opened.inspection().stream()
          .flatMap(one -> one.recipe().profiles().stream())
          .anyMatch(met -> met.profile().name().equals(file.stem()));
    }
    boolean named =
        name.endsWith(".premix") || file.path().startsWith(folder.printed("ingredients/"));
    return !named || reads(opened, file.stem());
  }

  private static boolean reads(FolderRun.Opened opened, String name) {
    Optional<ComputedFeed> feed = opened.inspection().flatMap(Inspection::feed);
    return opened.read().contains(name)
        || feed.stream()
            .flatMap(one -> one.rows().stream())
            .anyMatch(row -> row.path().contains(name));
  }

  /** The path of the record of a recipe. */
  static String beside(String recipe) {
    return recipe.substring(0, recipe.length() - RECIPE.length()) + FiguresRecord.ENDING;
  }

  /** The path of the recipe of a record. */
  static String recipeOf(String figures) {
    return figures.substring(0, figures.length() - FiguresRecord.ENDING.length()) + RECIPE;
  }
}
