package dev.pellucid.engine;

import dev.pellucid.engine.goal.AskedOn;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.CheckReports;
import dev.pellucid.engine.goal.ExplainReport;
import dev.pellucid.engine.goal.FiguresReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.LeastCostReport;
import dev.pellucid.engine.goal.PastState;
import dev.pellucid.engine.goal.RebalanceReport;
import dev.pellucid.engine.goal.RecallReport;
import dev.pellucid.engine.goal.ReportSettings;
import dev.pellucid.engine.goal.SheetReport;
import dev.pellucid.engine.goal.SiteReport;
import dev.pellucid.engine.goal.TraceReport;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** What {@link Pellucid} does, of a folder that has all its data itself. */
public final class OwnFolder {
  private OwnFolder() {}

  public static CheckReport check(Path root, LocalDate day) throws IOException {
    return Pellucid.check(FolderState.at(root), day);
  }

  public static CheckReports checkWithReports(Path root, PrintedPaths paths, LocalDate day)
      throws IOException {
    return Pellucid.checkWithReports(FolderState.at(root), paths, day);
  }

  public static CheckReports checkWithReports(
      Path root, ReportSettings settings, LocalDate day, LocalDate today) throws IOException {
    return Pellucid.checkWithReports(FolderState.at(root), settings, day, today);
  }

  public static SheetReport batchSheets(Path root, LocalDate day, Version version)
      throws IOException {
    return Pellucid.batchSheets(FolderState.at(root), day, version);
  }

  public static FiguresReport figures(Path root, String recipe, boolean kept) throws IOException {
    return Pellucid.figures(FolderState.at(root), recipe, kept);
  }

  public static SiteReport report(
      Path root, PrintedPaths paths, LocalDate day, List<PastState> past, Path to)
      throws IOException {
    return Pellucid.report(FolderState.at(root), paths, day, past, to);
  }

  public static ExplainReport explain(Path root, LocalDate day, String recipe, String figure)
      throws IOException {
    return Pellucid.explain(FolderState.at(root), day, recipe, figure);
  }

  public static LeastCostReport leastCost(
      Path root, LocalDate day, String recipe, Map<String, String> wishes, PrintedPaths paths)
      throws IOException {
    return Pellucid.leastCost(FolderState.at(root), day, recipe, wishes, paths);
  }

  public static RebalanceReport rebalance(Path root, LocalDate day, String batch)
      throws IOException {
    return rebalance(root, day, batch, "");
  }

  public static RebalanceReport rebalance(Path root, LocalDate day, String batch, String free)
      throws IOException {
    return Pellucid.rebalance(FolderState.at(root), day, batch, free);
  }

  public static TraceReport trace(Path root, PrintedPaths paths, String lot, String batch)
      throws IOException {
    return Pellucid.trace(FolderState.at(root), paths, lot, batch);
  }

  public static RecallReport recall(
      Path root, PrintedPaths paths, LocalDate day, String lot, String batch) throws IOException {
    return Pellucid.recall(FolderState.at(root), paths, AskedOn.today(day), lot, batch);
  }
}
