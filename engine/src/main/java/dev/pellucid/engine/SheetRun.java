package dev.pellucid.engine;

import dev.pellucid.engine.Sheet.PrintedLabel;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.PremixOrders;
import dev.pellucid.engine.plan.Premixing;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.report.BatchSheetHtml;
import dev.pellucid.engine.report.BatchSheetText;
import dev.pellucid.engine.report.LabelHtml;
import dev.pellucid.engine.report.LabelText;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Sheets of a folder: those of the recipes first, in parallel; then those of the premixes, since
 * how much of a premix is made follows from what the approved recipes weigh out.
 */
final class SheetRun {
  private static final String APPROVED = "approved";

  private final FolderRun<OfRecipe> run;
  private final Function<String, Version> version;
  private final LocalDate day;
  private final List<Sheet> sheets = new ArrayList<>();
  private final List<String> withheld = new ArrayList<>();

  /** The sheet of a recipe, and what it takes of each premix. */
  private record OfRecipe(Sheet sheet, boolean approved, List<Premixing.Need> needs) {}

  SheetRun(FeedFolder folder, LocalDate day, Function<String, Version> version) {
    this.version = version;
    this.day = day;
    this.run = new FolderRun<>(folder, day, this::ofRecipe);
  }

  SheetReport run() {
    FolderRun.Result<OfRecipe> result = run.run();
    result.made().forEach(recipe -> sheets.add(recipe.sheet()));
    withheld.addAll(result.unmade());
    Map<String, List<Premixing.Need>> needs = new TreeMap<>();
    result.made().stream()
        .filter(OfRecipe::approved)
        .forEach(recipe -> needs.put(recipe.sheet().code(), recipe.needs()));
    premixes(needs);
    return new SheetReport(result.report(), sheets, withheld);
  }

  private void premixes(Map<String, List<Premixing.Need>> needs) {
    Map<String, Optional<FolderRun.SoundPremix>> all = run.premixes();
    Map<String, ResolvedPremix> sound = new TreeMap<>();
    all.forEach((code, one) -> one.ifPresent(premix -> sound.put(code, premix.premix())));
    PremixOrders orders = new PremixOrders(sound, needs);
    all.forEach(
        (code, one) ->
            one.flatMap(premix -> plan(premix, orders))
                .ifPresentOrElse(
                    plan -> sheets.add(sheet(plan, Optional.empty())), () -> withheld.add(code)));
  }

  private Optional<BatchPlan> plan(FolderRun.SoundPremix premix, PremixOrders orders) {
    return BatchPlan.of(premix.premix(), orders, run.stock(), provenance(premix.path()));
  }

  private OfRecipe ofRecipe(FolderRun.Made made) {
    BatchPlan plan =
        BatchPlan.of(made.feed(), made.verdicts(), made.larder(), provenance(made.path()));
    Optional<PrintedLabel> label =
        BagLabel.of(made.feed(), made.larder(), plan)
            .map(bag -> new PrintedLabel(LabelText.of(bag), LabelHtml.of(bag)));
    return new OfRecipe(sheet(plan, label), plan.status().equals(APPROVED), PremixOrders.of(plan));
  }

  private Provenance provenance(String path) {
    Version from = version.apply(path);
    return new Provenance(from.commit(), from.clean(), day);
  }

  private static Sheet sheet(BatchPlan plan, Optional<PrintedLabel> label) {
    return new Sheet(
        plan.code(),
        BatchSheetText.of(plan),
        BatchSheetHtml.of(plan),
        plan.draft(),
        plan.premixing().isPresent(),
        label);
  }
}
