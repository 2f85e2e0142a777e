package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.outcome.Askers;
import dev.pellucid.engine.outcome.CheckOutcome;
import dev.pellucid.engine.outcome.LimitSuite;
import dev.pellucid.engine.outcome.RecipeOutcome;
import dev.pellucid.engine.outcome.RecipeStanding;
import dev.pellucid.engine.outcome.ReportFiles;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.Judged;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.text.PrintedPaths;
import java.time.LocalDate;
import java.util.List;

/** Checks every recipe of a folder; with reports for machines where they are asked for. */
public final class CheckGoal {
  private CheckGoal() {}

  /** One recipe as the folder and its reports need it. */
  private record Taken(Summary summary, RecipeStanding standing, LimitSuite suite) {
    static Taken of(Checked recipe, PrintedPaths paths) {
      RecipeOutcome outcome = Outcomes.of(recipe);
      return new Taken(Summary.of(recipe), outcome.standing(), LimitSuite.of(outcome, paths));
    }
  }

  /** What is found on a day. */
  public static CheckReport check(Texts texts, LocalDate day) {
    ReadFolder folder = ReadFolder.of(texts);
    Shared shared = Shared.of(folder, Days.on(day));
    Whole whole = Whole.of(shared, Streamed.check(shared, Summary::of));
    return CheckReport.of(whole, texts).with(StaleFigures.of(folder, whole.findings()));
  }

  private static Askers askers(CheckReport report) {
    Judged judged = report.judged();
    return new Askers(
        judged.law(),
        judged.guidance(),
        judged.need(),
        judged.practice(),
        judged.own(),
        judged.fewer(),
        report.standing());
  }

  /**
   * The same with reports.
   *
   * @param today the day by the clock; a warning tells where the day lies far from it
   */
  public static CheckReports withReports(
      Texts texts, ReportSettings settings, LocalDate day, LocalDate today) {
    PrintedPaths paths = settings.paths();
    ReadFolder folder = ReadFolder.of(texts);
    Shared shared = Shared.of(folder, Days.on(day));
    List<Taken> recipes = Streamed.check(shared, recipe -> Taken.of(recipe, paths));
    Whole whole = Whole.of(shared, recipes.stream().map(Taken::summary).toList());
    CheckReport report =
        CheckReport.of(whole, texts)
            .with(StaleFigures.of(folder, whole.findings()))
            .with(FixedDay.of(day, today).map(far -> far.warning(texts)).stream().toList());
    CheckOutcome outcome =
        new CheckOutcome(
            report.tally(),
            report.batches(),
            report.limits(),
            askers(report),
            report.counts(),
            report.shown(),
            recipes.stream().map(Taken::standing).toList(),
            recipes.stream().map(Taken::suite).toList(),
            settings.failsFrom());
    return new CheckReports(report, ReportFiles.of(outcome, paths, settings.tool()));
  }
}
