package dev.pellucid.engine;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.outcome.CheckOutcome;
import dev.pellucid.engine.outcome.ReportFiles;
import dev.pellucid.measure.Calendar;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;

/**
 * What the toolkit does, one method for each goal.
 *
 * <p>The route of a check: {@code folder} lists the files; the data files become the {@code
 * larder}; premixes and profiles are parsed and {@code resolve}d; then each recipe by itself is
 * parsed, resolved, {@code compute}d at three ends, judged limit by limit and looked at by every
 * rule of {@code check}. A batch sheet goes on from there: {@code plan}, then {@code report}.
 * Layout is {@link FolderLayout}. Records of figures that are kept are made anew and held against
 * what is there.
 */
public final class Pellucid {
  private Pellucid() {}

  /** Why a run cannot be of this day; empty where it can. */
  public static Optional<String> noDay(LocalDate day) {
    return Calendar.holds(day) ? Optional.empty() : Optional.of(Calendar.sentence());
  }

  /**
   * Checks a folder; writes nothing. Paths in findings are below the folder.
   *
   * @param day judges waivers and prices
   * @throws IOException where the disk fails
   */
  public static CheckReport check(Path root, LocalDate day) throws IOException {
    Texts folder = Texts.at(root);
    CheckReport report = new FolderRun<>(folder, day, made -> made.path()).run().report();
    return report.with(FiguresRun.findings(folder));
  }

  /**
   * Checks a folder and makes the reports of it for machines; writes nothing.
   *
   * @param paths how files are called in the reports
   * @param day judges waivers and prices
   * @throws IOException where the disk fails
   */
  public static CheckReports checkWithReports(Path root, PrintedPaths paths, LocalDate day)
      throws IOException {
    return checkWithReports(root, paths, day, day);
  }

  /**
   * The same of a day that was given, with a warning where it lies far from today.
   *
   * @param today the day by the clock
   * @throws IOException where the disk fails
   */
  public static CheckReports checkWithReports(
      Path root, PrintedPaths paths, LocalDate day, LocalDate today) throws IOException {
    Texts folder = Texts.at(root);
    FolderRun.Result<String> result = FolderRun.recording(folder, day, FolderRun.Made::path).run();
    CheckReport report =
        result
            .report()
            .with(FiguresRun.findings(folder))
            .with(FixedDay.of(day, today).map(far -> far.warning(folder)).stream().toList());
    CheckOutcome outcome =
        new CheckOutcome(
            report.tally(),
            report.batches(),
            report.limits(),
            report.counts(),
            report.findings(),
            result.recorded());
    return new CheckReports(report, ReportFiles.of(outcome, paths));
  }

  /**
   * Makes the batch sheet of every recipe and premix that no error keeps from being made; writes
   * nothing.
   *
   * @param version of a recipe or premix, by its path below the folder
   * @throws IOException where the disk fails
   */
  public static SheetReport batchSheets(Path root, LocalDate day, Function<String, Version> version)
      throws IOException {
    return new SheetRun(Texts.at(root), day, version).run();
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
    return from.open(before -> to.open(after -> CompareReport.of(before, after, day, fullAt)));
  }

  /**
   * Makes the record of figures of each recipe that can be computed, whatever its limits say;
   * writes nothing. It is the same on every day.
   *
   * @param recipe the code of the only one that is asked for; empty for all
   * @param kept whether only those are asked for that have a record already
   * @throws IOException where the disk fails
   */
  public static FiguresReport figures(Path root, String recipe, boolean kept) throws IOException {
    return FiguresReport.of(Texts.at(root), recipe, kept);
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
      Path root, PrintedPaths paths, LocalDate day, List<PastState> past, Path to)
      throws IOException {
    return new SiteRun(Texts.at(root), paths, day, past).write(to);
  }

  /**
   * Explains a figure of a recipe, down to the source of each content; writes nothing.
   *
   * @param day judges prices
   * @param recipe its code
   * @param figure named as a limit names it: {@code lysine : crude-protein}
   * @throws IOException where the disk fails
   */
  public static ExplainReport explain(Path root, LocalDate day, String recipe, String figure)
      throws IOException {
    return ExplainReport.ofFigure(Texts.at(root), day, recipe, figure);
  }

  /**
   * Explains what a finding means.
   *
   * @param code as it stands in square brackets behind a finding
   * @throws IOException where the page cannot be read
   */
  public static ExplainReport explainRule(String code) throws IOException {
    return ExplainReport.ofRule(code);
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
  public static TraceReport trace(Path root, PrintedPaths paths, String lot, String batch)
      throws IOException {
    return new TraceRun(Texts.at(root)).answer(lot, batch, paths);
  }

  /**
   * Whether the recipes, premixes, profiles and data files of a folder are exactly those that were
   * committed.
   *
   * @param committed what each was called for its content, by its path below the folder
   * @param bears whether a content is called so
   * @throws IOException where the disk fails
   */
  public static boolean isAs(
      Path root, Map<String, String> committed, BiPredicate<byte[], String> bears)
      throws IOException {
    return Texts.at(root).isAs(committed, bears);
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
