package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Settings;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.Sheet.PrintedLabel;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.PremixOrders;
import dev.pellucid.engine.plan.Premixing;
import dev.pellucid.engine.plan.Provenance;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.records.BatchTarget;
import dev.pellucid.engine.records.GoesInto;
import dev.pellucid.engine.records.MaterialRequirements;
import dev.pellucid.engine.records.MaterialRequirements.Ahead;
import dev.pellucid.engine.records.MaterialRequirements.Planned;
import dev.pellucid.engine.records.PurchaseList;
import dev.pellucid.engine.report.BatchSheetHtml;
import dev.pellucid.engine.report.BatchSheetText;
import dev.pellucid.engine.report.LabelHtml;
import dev.pellucid.engine.report.LabelText;
import dev.pellucid.engine.report.PurchaseSheet;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.trace.LineToClean;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Trees;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Sheets of a folder: those of the recipes first, in parallel; then those of the premixes, since
 * how much of a premix is made follows from what the approved recipes weigh out.
 */
public final class SheetsGoal {
  private static final String APPROVED = "approved";
  private static final String BATCHES = "batches/";

  private final Shared shared;
  private final Version version;
  private final StockDependsOn stock;
  private final LineToClean lineToClean;
  private final LocalDate day;
  private final List<Sheet> sheets = new ArrayList<>();
  private final List<String> withheld = new ArrayList<>();

  /** The code of which the plan is kept, with its lots; empty for none. */
  private final String wanted;

  private final Map<String, DependsOn> hangsOn = new HashMap<>();
  private final Map<String, String> fingerprints = new HashMap<>();

  private Optional<BatchPlan> plan = Optional.empty();

  /**
   * The plan of a recipe, those of its batches that are written down, and what it takes of each
   * premix.
   */
  private record OfRecipe(
      BatchPlan plan,
      GoesInto goesInto,
      Optional<PrintedLabel> label,
      List<Premixing.Need> needs,
      List<Written> written) {
    boolean approved() {
      return plan.status().equals(APPROVED);
    }
  }

  /** What is taken down of a recipe; no sheet where it must not be made. */
  private record Taken(Summary summary, DependsOn hangs, Optional<OfRecipe> made) {}

  /** A premix, its plan where its file has no error, and its batches that are written down. */
  private record OfPremix(
      ResolvedPremix premix, Optional<BatchPlan> plan, GoesInto goesInto, List<Written> written) {}

  /** A batch that lots were put aside for. */
  private record Written(Planned planned, Optional<BatchPlan> plan, Optional<PrintedLabel> label) {
    BatchRecord record() {
      return planned.record().orElseThrow();
    }
  }

  /**
   * @param version what the version control says of the folder
   */
  public SheetsGoal(Texts folder, LocalDate day, Version version) {
    this(folder, day, version, "");
  }

  private SheetsGoal(Texts folder, LocalDate day, Version version, String wanted) {
    this.wanted = wanted;
    this.version = version;
    this.day = day;
    this.shared = Shared.of(ReadFolder.of(folder), Days.on(day));
    this.lineToClean = shared.lineToClean();
    this.stock = StockDependsOn.of(shared, lineToClean);
  }

  /** The plan of a recipe or premix, with the lots to take; empty where it has no sheet. */
  static Optional<BatchPlan> planned(Texts folder, LocalDate day, String code) {
    SheetsGoal goal = new SheetsGoal(folder, day, Version.UNKNOWN, code);
    goal.run();
    return goal.plan;
  }

  /**
   * A folder as it is checked, and what each planned batch takes of its store, whatever is wrong
   * with its record.
   */
  record Walked(Whole whole, Ahead ahead) {}

  static Walked walked(Texts folder, LocalDate day) {
    return new SheetsGoal(folder, day, Version.UNKNOWN).ready().walked();
  }

  /** All that is worked out before a sheet is made. */
  private record Ready(List<OfRecipe> made, List<OfPremix> premixes, Walked walked) {}

  private Ready ready() {
    List<Taken> recipes = Streamed.check(shared, this::taken);
    recipes.forEach(one -> hangsOn.put(one.summary().code(), one.hangs()));
    Whole whole = Whole.of(shared, recipes.stream().map(Taken::summary).toList());
    List<OfRecipe> made = recipes.stream().flatMap(one -> one.made().stream()).toList();
    List<OfPremix> premixes =
        premixes(
            made.stream().filter(OfRecipe::approved).toList(),
            recipes.stream().map(Taken::hangs).toList(),
            whole);
    return new Ready(made, premixes, new Walked(whole, ahead(made, premixes, whole)));
  }

  /** Makes them. */
  public SheetReport run() {
    Ready ready = ready();
    List<OfRecipe> made = ready.made();
    Whole whole = ready.walked().whole();
    Ahead ahead = ready.walked().ahead();
    Picking picking = new Picking(shared.tables(), shared.resolver().premixes(), ahead);
    made.forEach(one -> sheets.add(sheet(picking.into(one.plan(), one.goesInto()), one.label())));
    made.forEach(recipe -> recipe.written().forEach(one -> written(one, picking, whole)));
    withheld.addAll(whole.unmade());
    ready.premixes().forEach(one -> premix(one, picking, whole));
    withheld.addAll(unwritten());
    return new SheetReport(
        CheckReport.of(whole, shared.texts()),
        sheets,
        withheld,
        purchases(ahead.list()),
        shared.tables().settings().name(),
        notPlanned());
  }

  private void premix(OfPremix one, Picking picking, Whole whole) {
    if (one.plan().isPresent()) {
      BatchPlan plan = picking.into(one.plan().get(), one.goesInto());
      sheets.add(sheet(plan, Optional.empty()));
    } else {
      withheld.add(one.premix().code());
    }
    one.written().forEach(batch -> written(batch, picking, whole));
  }

  private Taken taken(Checked recipe) {
    DependsOn hangs = shared.dependsOn(recipe.path(), recipe.reads());
    return new Taken(
        Summary.of(recipe),
        hangs,
        recipe.isSound()
            ? recipe.feed().map(feed -> ofRecipe(recipe, feed, hangs))
            : Optional.empty());
  }

  /** The one walk over all batches that are planned, those of premixes too. */
  private Ahead ahead(List<OfRecipe> made, List<OfPremix> premixes, Whole whole) {
    List<Planned> planned = new ArrayList<>();
    made.forEach(of -> of.written().forEach(one -> planned.add(one.planned())));
    premixes.forEach(of -> of.written().forEach(one -> planned.add(one.planned())));
    return MaterialRequirements.of(
        planned, shared.tables(), shared.resolver().premixes(), whole.stock(), day);
  }

  private Optional<SheetReport.Purchases> purchases(PurchaseList list) {
    Settings settings = shared.tables().settings();
    PurchaseSheet sheet = new PurchaseSheet(settings.name(), day, settings.currency(), list);
    return list.isEmpty()
        ? Optional.empty()
        : Optional.of(new SheetReport.Purchases(sheet.text(), sheet.html()));
  }

  /** The other batches that are planned: of recipes and premixes that must be fixed first. */
  private List<String> unwritten() {
    List<String> made = sheets.stream().map(Sheet::code).toList();
    return shared.tables().batches().values().stream()
        .filter(BatchRecord::isPlanned)
        .map(BatchRecord::number)
        .filter(number -> !made.contains(number) && !withheld.contains(number))
        .toList();
  }

  /** Why there is no sheet of a batch that has a record, by its number. */
  private Map<String, String> notPlanned() {
    Map<String, String> why = new HashMap<>();
    for (String path : shared.texts().data()) {
      if (path.startsWith(BATCHES)) {
        why.put(new SourceFile(path, "").stem(), "its record cannot be read");
      }
    }
    for (BatchRecord record : shared.tables().batches().values()) {
      why.put(
          record.number(), record.closed() ? "its record says that it is closed" : "it was made");
    }
    return why;
  }

  /** A batch whose record has an error has no sheet. */
  private void written(Written one, Picking picking, Whole whole) {
    boolean faulty = whole.faulty().contains(one.record().declared().file().path());
    if (faulty || one.plan().isEmpty()) {
      withheld.add(one.record().number());
    } else {
      BatchPlan plan = picking.into(one.plan().get(), one.record());
      sheets.add(sheet(lineToClean.why(one.record()).map(plan::toClean).orElse(plan), one.label()));
    }
  }

  /** Those of premixes, in the order of their paths; no plan of one whose file has an error. */
  private List<OfPremix> premixes(List<OfRecipe> approved, List<DependsOn> recipes, Whole whole) {
    Map<String, String> paths = shared.trees().premixPaths();
    Map<String, ResolvedPremix> sound = new TreeMap<>(shared.resolver().premixes());
    sound.keySet().removeIf(code -> whole.faulty().contains(paths.getOrDefault(code, "")));
    Map<String, List<Premixing.Need>> needs = new TreeMap<>();
    approved.forEach(recipe -> needs.put(recipe.plan().code(), recipe.needs()));
    PremixOrders orders = new PremixOrders(sound, needs, shared.tables());
    List<OfPremix> premixes = new ArrayList<>();
    paths.forEach(
        (code, path) ->
            Optional.ofNullable(shared.resolver().premixes().get(code))
                .ifPresentOrElse(
                    one ->
                        premixes.add(
                            ofPremix(
                                one,
                                sound.containsKey(code) ? Optional.of(orders) : Optional.empty(),
                                hangs(code, path, recipes))),
                    () -> withheld.add(code)));
    return premixes;
  }

  private OfPremix ofPremix(
      ResolvedPremix premix, Optional<PremixOrders> orders, Predicate<String> hangs) {
    FeedTables tables = shared.tables();
    Optional<BatchPlan> plan =
        orders.flatMap(one -> BatchPlan.of(premix, one, tables, provenance(hangs, day)));
    List<Written> written = new ArrayList<>();
    for (BatchRecord record : tables.batches().values()) {
      if (record.code().equals(premix.code()) && record.isPlanned()) {
        written.add(written(premix, record, orders, hangs));
      }
    }
    double kg = plan.map(SheetsGoal::kg).orElse(0.0);
    return new OfPremix(premix, plan, GoesInto.of(premix, kg, day, day), written);
  }

  private Written written(
      ResolvedPremix premix,
      BatchRecord record,
      Optional<PremixOrders> orders,
      Predicate<String> hangs) {
    Provenance provenance = provenance(or(hangs, stock.planned(record)), record.day());
    Optional<BatchPlan> plan =
        orders.flatMap(
            one ->
                BatchPlan.of(
                    premix, one, shared.tables(), provenance, record.number(), record.kg()));
    BatchTarget order = BatchTarget.of(premix, record.kg());
    return new Written(planned(record, order, plan), plan, Optional.empty());
  }

  /** As the scales show it, where that is planned. */
  private static Planned planned(BatchRecord record, BatchTarget order, Optional<BatchPlan> plan) {
    return Planned.of(record, plan.map(Picking::weights).map(order::weighing).orElse(order));
  }

  /** kg of recipe in a batch. */
  private static double kg(BatchPlan plan) {
    return BatchPlan.sum(plan.weighing()).target().asDouble();
  }

  /**
   * How much of a premix is made hangs on every recipe that holds it, also on one that holds it no
   * more, or cannot be made any more: so on the file of every recipe.
   */
  private Predicate<String> hangs(String code, String path, List<DependsOn> recipes) {
    DependsOn own = shared.premixDependsOn(code, path);
    List<DependsOn> holders = recipes.stream().filter(one -> one.holdsPremix(code)).toList();
    return file ->
        own.on(file)
            || file.endsWith(Trees.RECIPE)
            || holders.stream().anyMatch(one -> one.on(file));
  }

  private OfRecipe ofRecipe(Checked recipe, ComputedFeed feed, DependsOn hangs) {
    FeedTables tables = shared.tables();
    BatchPlan plan =
        BatchPlan.of(
            feed,
            recipe.recipe().map(RuleContext::limits).orElse(List.of()),
            tables,
            provenance(hangs::on, day));
    return new OfRecipe(
        plan,
        GoesInto.of(feed.recipe(), kg(plan), day, day),
        label(feed, tables, plan),
        PremixOrders.of(plan),
        shared.recordCheck().planned(feed).stream()
            .map(batch -> written(hangs, feed, batch))
            .toList());
  }

  private Written written(DependsOn hangs, ComputedFeed feed, BatchRecordCheck.Planned batch) {
    BatchRecord record = batch.record();
    BatchPlan written =
        BatchPlan.of(
            batch.feed(),
            batch.limits(),
            shared.tables(),
            provenance(or(hangs::on, stock.planned(record)), record.day()),
            record.number(),
            record.kg());
    BatchPlan plan = RebalancedPlan.of(written, feed.recipe(), batch, shared.recordCheck());
    BatchTarget order = BatchTarget.of(batch.feed(), record.kg(), Optional.empty());
    return new Written(
        planned(record, order, Optional.of(plan)),
        Optional.of(plan),
        label(batch.feed(), shared.tables(), plan));
  }

  /**
   * A sheet is from a commit only where all that it hangs on is in it, also the lots that it may
   * name.
   */
  private Provenance provenance(Predicate<String> hangsOn, LocalDate of) {
    boolean clean = version.holds(file -> stock.on(file) || hangsOn.test(file));
    return new Provenance(version.commit(), clean, of);
  }

  private String fingerprint(String code) {
    return fingerprints.computeIfAbsent(code, this::madeFrom);
  }

  private String madeFrom(String code) {
    DependsOn ofRecipe = hangsOn.get(code);
    if (ofRecipe != null) {
      return shared.fingerprint(shared.trees().path(code).orElse(""), ofRecipe);
    }
    String premix = shared.trees().premixPaths().getOrDefault(code, "");
    return shared.fingerprint(premix, shared.premixDependsOn(code, premix));
  }

  private static Predicate<String> or(Predicate<String> one, Predicate<String> other) {
    return one.or(other);
  }

  private static Optional<PrintedLabel> label(
      ComputedFeed feed, FeedTables tables, BatchPlan plan) {
    return BagLabel.of(feed, tables, plan)
        .map(bag -> new PrintedLabel(LabelText.of(bag), LabelHtml.of(bag)));
  }

  private Sheet sheet(BatchPlan made, Optional<PrintedLabel> label) {
    BatchPlan plan = made.madeFrom(fingerprint(made.code()));
    if (plan.number().isEmpty() && plan.code().equals(wanted)) {
      this.plan = Optional.of(plan);
    }
    return new Sheet(
        plan.number().orElse(plan.code()),
        BatchSheetText.of(plan),
        BatchSheetHtml.of(plan),
        plan.draft(),
        plan.premixing().isPresent(),
        label);
  }
}
