package dev.pellucid.engine;

import dev.pellucid.engine.Sheet.PrintedLabel;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.larder.BatchRecord;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.made.Books;
import dev.pellucid.engine.made.Order;
import dev.pellucid.engine.made.PurchaseList;
import dev.pellucid.engine.made.Purchasing;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.PremixOrders;
import dev.pellucid.engine.plan.Premixing;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.report.BatchSheetHtml;
import dev.pellucid.engine.report.BatchSheetText;
import dev.pellucid.engine.report.LabelHtml;
import dev.pellucid.engine.report.LabelText;
import dev.pellucid.engine.report.PurchaseSheet;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.Severity;
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

  /**
   * The plan of a recipe, those of its batches that are written down, and what it takes of each
   * premix.
   */
  private record OfRecipe(
      BatchPlan plan,
      Optional<PrintedLabel> label,
      List<Premixing.Need> needs,
      List<Written> written) {
    boolean approved() {
      return plan.status().equals(APPROVED);
    }
  }

  /** A batch that lots were put aside for. */
  private record Written(Purchasing.Planned planned, BatchPlan plan, Optional<PrintedLabel> label) {
    BatchRecord record() {
      return planned.record();
    }
  }

  SheetRun(FeedFolder folder, LocalDate day, Function<String, Version> version) {
    this.version = version;
    this.day = day;
    this.run = new FolderRun<>(folder, day, this::ofRecipe);
  }

  SheetReport run() {
    FolderRun.Result<OfRecipe> result = run.run();
    Picking picking = new Picking(run.larder(), run.resolvedPremixes(), result.stock());
    result.made().forEach(recipe -> sheets.add(sheet(picking.into(recipe.plan()), recipe.label())));
    result.made().forEach(recipe -> recipe.written().forEach(one -> written(one, picking, result)));
    withheld.addAll(result.unmade());
    withheld.addAll(unwritten(result));
    Map<String, List<Premixing.Need>> needs = new TreeMap<>();
    result.made().stream()
        .filter(OfRecipe::approved)
        .forEach(recipe -> needs.put(recipe.plan().code(), recipe.needs()));
    premixes(needs, picking);
    return new SheetReport(result.report(), sheets, withheld, purchases(result));
  }

  /** For all batches that are planned, those of premixes too. */
  private Optional<SheetReport.Purchases> purchases(FolderRun.Result<OfRecipe> result) {
    Map<String, ResolvedPremix> premixes = run.resolvedPremixes();
    List<Purchasing.Planned> planned = new ArrayList<>();
    result.made().forEach(of -> of.written().forEach(one -> planned.add(one.planned())));
    for (BatchRecord record : run.larder().batches().values()) {
      ResolvedPremix premix = premixes.get(record.code());
      if (premix != null && record.isPlanned()) {
        planned.add(new Purchasing.Planned(record, Order.of(premix, record.kg())));
      }
    }
    PurchaseList list = Purchasing.of(planned, run.larder(), premixes, result.stock());
    PurchaseSheet sheet =
        new PurchaseSheet(
            run.larder().settings().name(), day, run.larder().settings().currency(), list);
    return list.isEmpty()
        ? Optional.empty()
        : Optional.of(new SheetReport.Purchases(sheet.text(), sheet.html()));
  }

  /** Batches that are planned of recipes that must be mended first. */
  private List<String> unwritten(FolderRun.Result<OfRecipe> result) {
    return run.larder().batches().values().stream()
        .filter(record -> record.isPlanned() && result.unmade().contains(record.code()))
        .map(BatchRecord::number)
        .toList();
  }

  /** A batch whose record has an error has no sheet. */
  private void written(Written one, Picking picking, FolderRun.Result<OfRecipe> result) {
    String file = one.record().declared().file().path();
    boolean sound =
        result.report().findings().stream()
            .noneMatch(
                finding ->
                    finding.severity() == Severity.ERROR
                        && finding.span().file().path().equals(file));
    if (sound) {
      sheets.add(sheet(picking.into(one.plan(), one.record()), one.label()));
    } else {
      withheld.add(one.record().number());
    }
  }

  private void premixes(Map<String, List<Premixing.Need>> needs, Picking picking) {
    Map<String, Optional<FolderRun.SoundPremix>> all = run.premixes();
    Map<String, ResolvedPremix> sound = new TreeMap<>();
    all.forEach((code, one) -> one.ifPresent(premix -> sound.put(code, premix.premix())));
    PremixOrders orders = new PremixOrders(sound, needs);
    all.forEach(
        (code, one) ->
            one.flatMap(premix -> plan(premix, orders))
                .ifPresentOrElse(
                    plan -> sheets.add(sheet(picking.into(plan), Optional.empty())),
                    () -> withheld.add(code)));
  }

  private Optional<BatchPlan> plan(FolderRun.SoundPremix premix, PremixOrders orders) {
    return BatchPlan.of(premix.premix(), orders, run.larder(), provenance(premix.path()));
  }

  private OfRecipe ofRecipe(FolderRun.Made made) {
    BatchPlan plan =
        BatchPlan.of(made.feed(), made.limits(), made.larder(), provenance(made.path()));
    return new OfRecipe(
        plan,
        label(made.feed(), made.larder(), plan),
        PremixOrders.of(plan),
        made.planned().stream().map(batch -> written(made, batch)).toList());
  }

  private Written written(FolderRun.Made made, Books.Planned batch) {
    Version from = version.apply(made.path());
    BatchRecord record = batch.record();
    BatchPlan plan =
        BatchPlan.of(
            batch.feed(),
            batch.limits(),
            made.larder(),
            new Provenance(from.commit(), from.clean(), record.day()),
            record.number(),
            record.kg());
    Order order = Order.of(batch.feed(), record.kg(), Optional.empty());
    return new Written(
        new Purchasing.Planned(record, order), plan, label(batch.feed(), made.larder(), plan));
  }

  private static Optional<PrintedLabel> label(ComputedFeed feed, Larder larder, BatchPlan plan) {
    return BagLabel.of(feed, larder, plan)
        .map(bag -> new PrintedLabel(LabelText.of(bag), LabelHtml.of(bag)));
  }

  private Provenance provenance(String path) {
    Version from = version.apply(path);
    return new Provenance(from.commit(), from.clean(), day);
  }

  private static Sheet sheet(BatchPlan plan, Optional<PrintedLabel> label) {
    return new Sheet(
        plan.number().orElse(plan.code()),
        BatchSheetText.of(plan),
        BatchSheetHtml.of(plan),
        plan.draft(),
        plan.premixing().isPresent(),
        label);
  }
}
