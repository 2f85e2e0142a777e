package dev.pellucid.engine;

import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.report.BatchSheetHtml;
import dev.pellucid.engine.report.BatchSheetText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.Function;

/**
 * What the toolkit does, one method for each goal.
 *
 * <p>The route of a check: {@code folder} lists the files; the data files become the {@code
 * larder}; premixes and profiles are parsed and {@code resolve}d; then each recipe by itself is
 * parsed, resolved, {@code compute}d at three ends, judged limit by limit and looked at by every
 * rule of {@code check}. A batch sheet goes on from there: {@code plan}, then {@code report}.
 * Layout is {@link FolderLayout}.
 */
public final class Pellucid {
  private Pellucid() {}

  /**
   * Checks a folder; writes nothing.
   *
   * @param prefix what is printed before each path
   * @param day judges waivers and prices
   * @throws IOException where the disk fails
   */
  public static CheckReport check(Path root, String prefix, LocalDate day) throws IOException {
    FeedFolder folder = FeedFolder.list(root, prefix);
    return new FolderRun<>(folder, day, made -> made.path()).run().report();
  }

  /**
   * Makes the batch sheet of every recipe that no error keeps from being made; writes nothing.
   *
   * @param version of a recipe, by its path below the folder
   * @throws IOException where the disk fails
   */
  public static SheetReport batchSheets(
      Path root, String prefix, LocalDate day, Function<String, Version> version)
      throws IOException {
    FeedFolder folder = FeedFolder.list(root, prefix);
    FolderRun.Result<Sheet> result =
        new FolderRun<>(folder, day, made -> sheet(made, version.apply(made.path()), day)).run();
    return new SheetReport(result.report(), result.made(), result.unmade());
  }

  private static Sheet sheet(FolderRun.Made made, Version version, LocalDate day) {
    Provenance provenance = new Provenance(version.commit(), version.clean(), day);
    BatchPlan plan = BatchPlan.of(made.feed(), made.verdicts(), made.larder(), provenance);
    return new Sheet(plan.code(), BatchSheetText.of(plan), BatchSheetHtml.of(plan), plan.draft());
  }
}
