package dev.pellucid.engine.goal;

import dev.pellucid.engine.account.Account;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.figures.FiguresRecord;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Trees;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The record of figures of a recipe, as the folder is written and not as on a day.
 *
 * @param text empty where it cannot be made
 * @param mendFirst names of the files to be fixed before, where they are not its own
 */
record FeedRecord(Optional<String> text, List<String> mendFirst) {
  FeedRecord {
    mendFirst = List.copyOf(mendFirst);
  }

  /** What recipes share on no day. */
  static Shared shared(ReadFolder folder) {
    return Shared.of(folder, Days.AS_WRITTEN);
  }

  /**
   * The record of a recipe.
   *
   * @param shared of no day
   */
  static FeedRecord of(Shared shared, Checked recipe) {
    Set<String> mendFirst = new TreeSet<>(shared.mendFirst(recipe.path(), recipe.reads()));
    DependsOn hangs = shared.dependsOn(recipe.path(), recipe.reads());
    shared.findings().stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .map(finding -> finding.span().file())
        .filter(file -> !file.path().endsWith(Trees.RECIPE) && hangs.on(file.path()))
        .filter(file -> !isOfOthers(recipe, file))
        .forEach(file -> mendFirst.add(file.fileName()));
    boolean sound = recipe.findings().stream().noneMatch(FeedRecord::isError);
    return new FeedRecord(
        recipe.recipe().filter(one -> sound && mendFirst.isEmpty()).flatMap(one -> text(one)),
        List.copyOf(mendFirst));
  }

  /** A profile, of law perhaps, that this feed is not held against has no part in its figures. */
  private static boolean isOfOthers(Checked recipe, SourceFile file) {
    return file.path().endsWith(Trees.PROFILE)
        && recipe.recipe().stream()
            .flatMap(one -> one.recipe().profiles().stream())
            .noneMatch(met -> met.profile().name().equals(file.stem()));
  }

  private static boolean isError(Finding finding) {
    return finding.severity() == Severity.ERROR;
  }

  private static Optional<String> text(RuleContext recipe) {
    return recipe
        .feed()
        .map(
            feed ->
                FiguresRecord.of(
                    recipe.recipe(),
                    Account.of(feed, recipe.limits()),
                    recipe.tables().settings().currency()));
  }

  /** The path of the record of a recipe. */
  static String beside(String recipe) {
    return recipe.substring(0, recipe.length() - Trees.RECIPE.length()) + FiguresRecord.ENDING;
  }

  /** The path of the recipe of a record. */
  static String recipeOf(String figures) {
    return figures.substring(0, figures.length() - FiguresRecord.ENDING.length()) + Trees.RECIPE;
  }
}
