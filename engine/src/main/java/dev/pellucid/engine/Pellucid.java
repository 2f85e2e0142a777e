package dev.pellucid.engine;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.AskedOn;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.goal.CompareGoal;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.ExplainGoal;
import dev.pellucid.engine.goal.ExplainReport;
import dev.pellucid.engine.goal.FiguresGoal;
import dev.pellucid.engine.goal.FiguresReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.InitGoal;
import dev.pellucid.engine.goal.InitReport;
import dev.pellucid.engine.goal.LeastCostGoal;
import dev.pellucid.engine.goal.LeastCostReport;
import dev.pellucid.engine.goal.NewGoal;
import dev.pellucid.engine.goal.NewReport;
import dev.pellucid.engine.goal.PagesGoal;
import dev.pellucid.engine.goal.PastState;
import dev.pellucid.engine.goal.RebalanceGoal;
import dev.pellucid.engine.goal.RebalanceReport;
import dev.pellucid.engine.goal.RecallGoal;
import dev.pellucid.engine.goal.RecallReport;
import dev.pellucid.engine.goal.ReportSettings;
import dev.pellucid.engine.goal.ShareOutGoal;
import dev.pellucid.engine.goal.ShareOutReport;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.SheetsGoal;
import dev.pellucid.engine.goal.SiteReport;
import dev.pellucid.engine.goal.TraceGoal;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.measure.Calendar;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.BiPredicate;

/**
 * What the toolkit does, one method for each goal; a class of {@code goal} does each of them. A
 * folder is a {@link FolderState}, with the data under it that come with this program.
 *
 * <p>The route of a check: {@code folder} lists the files; {@code workspace} reads what all recipes
 * share, and then checks each recipe by itself: parsed, resolved, computed at three ends, judged
 * limit by limit and looked at by every rule. A goal takes down what it wants of each.
 */
public final class Pellucid {
  private Pellucid() {}

  /** Why a run cannot be of this day; empty where it can. */
  public static Optional<String> noDay(LocalDate day) {
    return Calendar.holds(day) ? Optional.empty() : Optional.of(Calendar.sentence());
  }

  /**
   * Plans what a folder of feeds begins with; writes nothing.
   *
   * @param wishes what is wished, in words, by the name of the parameter behind {@code pellucid.}
   * @param day from which its prices are
   * @param version of the plugin that the folder is tied to
   * @throws IOException where the disk fails
   */
  public static InitReport init(
      Path root, Map<String, String> wishes, LocalDate day, String version) throws IOException {
    return InitGoal.of(root, wishes, day, version);
  }

  /**
   * Makes a new file of one thing, complete but for what a person must give; writes nothing.
   *
   * @param day on which a lot comes in and a batch is planned
   * @param typed what is asked for, in words, by the name of the parameter behind {@code pellucid.}
   * @throws IOException where the disk fails
   */
  public static NewReport newFile(FolderState folder, LocalDate day, Map<String, String> typed)
      throws IOException {
    return folder.open(texts -> NewGoal.of(texts, day, typed));
  }

  /**
   * Checks a folder; writes nothing. Paths in findings are below the folder.
   *
   * @param day judges waivers and prices
   * @throws IOException where the disk fails
   */
  public static CheckReport check(FolderState folder, LocalDate day) throws IOException {
    return folder.open(texts -> CheckGoal.check(texts, day));
  }

  /**
   * Checks a folder and makes the reports of it for machines; writes nothing.
   *
   * @param paths how files are called in the reports
   * @param day judges waivers and prices
   * @throws IOException where the disk fails
   */
  public static CheckReports checkWithReports(FolderState folder, PrintedPaths paths, LocalDate day)
      throws IOException {
    return checkWithReports(folder, ReportSettings.of(paths), day, day);
  }

  /**
   * The same of a day that was given, with a warning where it lies far from today.
   *
   * @param today the day by the clock
   * @throws IOException where the disk fails
   */
  public static CheckReports checkWithReports(
      FolderState folder, ReportSettings settings, LocalDate day, LocalDate today)
      throws IOException {
    return folder.open(texts -> CheckGoal.withReports(texts, settings, day, today));
  }

  /**
   * Makes the batch sheet of every recipe and premix that no error keeps from being made; writes
   * nothing.
   *
   * @param version what the version control says of the folder
   * @throws IOException where the disk fails
   */
  public static SheetReport batchSheets(FolderState folder, LocalDate day, Version version)
      throws IOException {
    return folder.open(texts -> new SheetsGoal(texts, day, version).run());
  }

  /**
   * Tells what a change of a folder does to its feeds; writes nothing.
   *
   * @param from the folder as it was
   * @param to the folder as it is
   * @param day judges waivers and prices of both
   * @param fullAt where a reader of the short form finds the full one
   * @throws IOException where the disk fails
   */
  public static CompareReport compare(
      FolderState from, FolderState to, LocalDate day, String fullAt) throws IOException {
    return compare(from, to, PrintedPaths.BELOW_FOLDER, day, fullAt);
  }

  /**
   * The same.
   *
   * @param paths how files are called for scripts
   * @throws IOException where the disk fails
   */
  public static CompareReport compare(
      FolderState from, FolderState to, PrintedPaths paths, LocalDate day, String fullAt)
      throws IOException {
    return from.open(before -> to.open(after -> CompareGoal.of(before, after, paths, day, fullAt)));
  }

  /**
   * Makes the record of figures of each recipe that can be computed, whatever its limits say;
   * writes nothing. It is the same on every day.
   *
   * @param recipe the code of the only one that is asked for; empty for all
   * @param kept whether only those are asked for that have a record already
   * @throws IOException where the disk fails
   */
  public static FiguresReport figures(FolderState folder, String recipe, boolean kept)
      throws IOException {
    return folder.open(texts -> FiguresGoal.of(texts, recipe, kept));
  }

  /**
   * Writes pages about a folder, to be opened from the disk.
   *
   * @param paths how files are called on the pages
   * @param day judges waivers and prices, in the past states too
   * @param past earlier states, the newest first
   * @param to where the pages go, {@code index.html} first
   * @throws IOException where the disk fails
   */
  public static SiteReport report(
      FolderState folder, PrintedPaths paths, LocalDate day, List<PastState> past, Path to)
      throws IOException {
    return folder.open(texts -> new PagesGoal(texts, paths, day, past).write(to));
  }

  /**
   * Explains a figure of a recipe, down to the source of each content; writes nothing.
   *
   * @param day judges prices
   * @param recipe its code
   * @param figure named as a limit names it: {@code lysine : crude-protein}
   * @throws IOException where the disk fails
   */
  public static ExplainReport explain(
      FolderState folder, LocalDate day, String recipe, String figure) throws IOException {
    return folder.open(texts -> ExplainGoal.ofFigure(texts, day, recipe, figure));
  }

  /**
   * Finds the cheapest recipe that keeps every limit as it is judged, as a change of its text with
   * its reasons; writes nothing.
   *
   * @param day judges waivers and prices
   * @param recipe the code of the only one that is asked for; empty for all
   * @param wishes what is wished beside, in words, by the name of the parameter behind {@code
   *     pellucid.}
   * @param paths how files are called for scripts
   * @throws IOException where the disk fails
   */
  public static LeastCostReport leastCost(
      FolderState folder,
      LocalDate day,
      String recipe,
      Map<String, String> wishes,
      PrintedPaths paths)
      throws IOException {
    return folder.open(texts -> LeastCostGoal.of(texts, day, recipe, wishes, paths));
  }

  /**
   * Holds a planned batch against every limit with what was measured of its lots, and finds the
   * smallest change of its shares that keeps them all, as an edit of its record; writes nothing.
   *
   * @param day on which the shares are given; judges waivers and prices
   * @param batch its number
   * @param free lines that may move though they tell no within, parted by commas; empty for none
   * @throws IOException where the disk fails
   */
  public static RebalanceReport rebalance(
      FolderState folder, LocalDate day, String batch, String free) throws IOException {
    return folder.open(texts -> RebalanceGoal.of(texts, day, batch, free));
  }

  /**
   * Shares out what is short over the feeds of a plan, or over the batches that are planned. It
   * writes nothing.
   *
   * @param day judges waivers, prices and what the store holds
   * @param plan the name of a file of {@code plans/}; empty for the batches that are planned
   * @param wishes what is wished beside, in words, by the name of the parameter behind {@code
   *     pellucid.}
   * @param paths how files are called for scripts
   * @throws IOException where the disk fails
   */
  public static ShareOutReport shareOut(
      FolderState folder,
      LocalDate day,
      String plan,
      Map<String, String> wishes,
      PrintedPaths paths)
      throws IOException {
    return folder.open(texts -> ShareOutGoal.of(texts, day, plan, wishes, paths));
  }

  /**
   * Explains what a finding means.
   *
   * @param code as it stands in square brackets behind a finding
   * @throws IOException where the page cannot be read
   */
  public static ExplainReport explainRule(String code) throws IOException {
    return ExplainGoal.ofRule(code);
  }

  /**
   * Tells which lots are in which batches, through premixes and rework; writes nothing.
   *
   * @param paths how files are called in the answer
   * @param lot the number of a lot, or of a batch made here, to see the batches that hold it; empty
   *     for none
   * @param batch the number of a batch, to see the lots in it and where it went; empty for none,
   *     and with {@code lot} empty for all
   * @throws IOException where the disk fails
   */
  public static TraceReport trace(FolderState folder, PrintedPaths paths, String lot, String batch)
      throws IOException {
    return folder.open(texts -> new TraceGoal(texts).answer(lot, batch, paths));
  }

  /**
   * Tells of a lot or a batch what to stop and whom to call; writes nothing.
   *
   * @param paths how files are called in the answer
   * @param day which one stands on it
   * @param lot the number of a lot, or of a batch made here; empty for none
   * @param batch the number of a batch, to see what is in it too; empty for none
   * @throws IOException where the disk fails
   */
  public static RecallReport recall(
      FolderState folder, PrintedPaths paths, AskedOn day, String lot, String batch)
      throws IOException {
    return folder.open(texts -> RecallGoal.of(texts, day, lot, batch, paths));
  }

  /**
   * Recipes, premixes, profiles and data files of a folder that are not exactly as they were
   * committed, new and missing ones too.
   *
   * @param committed what each was called for its content, by its path below the folder
   * @param bears whether a content is called so
   * @return their paths below the folder
   * @throws IOException where the disk fails
   */
  public static SortedSet<String> uncommitted(
      Path root, Map<String, String> committed, BiPredicate<byte[], String> bears)
      throws IOException {
    return Texts.at(root).differing(committed, bears);
  }

  /**
   * Refuses a folder to write into that bears its name below a project but lies, through a link,
   * outside of it. One that bears its name outside was chosen by a person.
   *
   * @param parameter that names another folder
   * @throws IOException where it leads out, with a sentence that says what to do
   */
  public static void refuseLinkOut(Path project, Path to, String parameter) throws IOException {
    Outputs.refuseLinkOut(project, to, "name the folder itself with -D" + parameter + "=...");
  }
}
