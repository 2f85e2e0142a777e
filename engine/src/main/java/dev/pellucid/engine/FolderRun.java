package dev.pellucid.engine;

import dev.pellucid.engine.check.Inspection;
import dev.pellucid.engine.check.OnTheFloor;
import dev.pellucid.engine.check.Remark;
import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Finished;
import dev.pellucid.engine.floor.FloorPlan;
import dev.pellucid.engine.floor.FloorPlanner;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.larder.Stocked;
import dev.pellucid.engine.made.Books;
import dev.pellucid.engine.made.Stock;
import dev.pellucid.engine.made.Use;
import dev.pellucid.engine.outcome.RecipeOutcome;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * One run over a folder: what all recipes share is read and resolved first; then the recipes are
 * read, resolved, computed, judged and looked at, in parallel, each by itself. Of a recipe nothing
 * is kept but its findings and what the caller makes of it. What several recipes say in the same
 * words of the same place in a shared file is said once.
 */
final class FolderRun<T> {
  private final FeedFolder folder;
  private final FeedTrees trees;
  private final LocalDate day;
  private final Function<Made, T> maker;
  private final boolean recording;
  private final List<Finding> findings = new ArrayList<>();
  private final Larder larder;
  private final Resolver resolver;
  private final FeedComputer computer;
  private final Books books;
  private final Map<String, Optional<Material.Reworked>> reworked = new ConcurrentHashMap<>();

  /** A recipe that was computed and that no error keeps from being made. */
  record Made(
      String path,
      ComputedFeed feed,
      List<LimitStatus> limits,
      Larder larder,
      List<Books.Planned> planned) {}

  /**
   * What came of one recipe.
   *
   * @param broken the files to be mended before it can be checked, where they are not its own
   */
  private record Outcome<T>(
      String code,
      List<String> broken,
      List<Finding> findings,
      int limits,
      boolean checked,
      Optional<T> made,
      List<Use> uses,
      Optional<RecipeOutcome> recorded) {
    static <T> Outcome<T> unchecked(
        String code,
        List<String> broken,
        List<Finding> findings,
        Optional<RecipeOutcome> recorded) {
      return new Outcome<>(code, broken, findings, 0, false, Optional.empty(), List.of(), recorded);
    }
  }

  /**
   * What came of all.
   *
   * @param stock what is left of each lot
   * @param recorded each recipe as reports need it; empty where none are asked for
   */
  record Result<T>(
      CheckReport report,
      List<T> made,
      List<String> unmade,
      Stock stock,
      List<RecipeOutcome> recorded) {}

  FolderRun(FeedFolder folder, LocalDate day, Function<Made, T> maker) {
    this(folder, Days.on(day), maker, false);
  }

  /** A run that keeps of each recipe what reports need. */
  static <T> FolderRun<T> recording(FeedFolder folder, LocalDate day, Function<Made, T> maker) {
    return new FolderRun<>(folder, Days.on(day), maker, true);
  }

  /** A run to which no day has come, and none has passed. */
  static FolderRun<String> asWritten(FeedFolder folder) {
    return new FolderRun<>(folder, Days.AS_WRITTEN, Made::path, false);
  }

  private FolderRun(FeedFolder folder, Days days, Function<Made, T> maker, boolean recording) {
    this.recording = recording;
    this.folder = folder;
    this.trees = new FeedTrees(folder);
    this.day = days.prices();
    this.maker = maker;
    this.larder = stocked();
    Resolver.Prepared prepared =
        Resolver.prepare(
            larder,
            trees.all(".premix", PremixFile.class, findings),
            trees.all(".limits", ProfileFile.class, findings),
            trees.codes(),
            this::reworked,
            days);
    findings.addAll(prepared.findings());
    this.resolver = prepared.resolver();
    this.computer = new FeedComputer(larder);
    this.books = new Books(larder, resolver.premixes(), computer, day);
  }

  Result<T> run() {
    List<String> recipes = folder.ending(".recipe");
    List<Outcome<T>> outcomes = new ArrayList<>();
    recipes.parallelStream().map(this::recipe).forEachOrdered(outcomes::add);
    outcomes.forEach(outcome -> findings.addAll(outcome.findings()));
    Stock stock = closeBooks(outcomes);
    Shown shown = Shown.of(Rules.once(findings));
    Set<String> reckoned = new TreeSet<>(resolver.premixes().keySet());
    outcomes.stream().filter(Outcome::checked).map(Outcome::code).forEach(reckoned::add);
    int limits = outcomes.stream().mapToInt(Outcome::limits).sum();
    List<String> notChecked =
        notChecked(outcomes.stream().filter(outcome -> !outcome.checked()).toList());
    List<String> unmade =
        outcomes.stream().filter(outcome -> outcome.made().isEmpty()).map(Outcome::code).toList();
    List<T> made = outcomes.stream().flatMap(outcome -> outcome.made().stream()).toList();
    return new Result<>(
        new CheckReport(
            shown.findings(),
            recipes.size(),
            books.count(reckoned),
            limits,
            notChecked,
            shown.more()),
        made,
        unmade,
        stock,
        outcomes.stream().flatMap(outcome -> outcome.recorded().stream()).toList());
  }

  /** {@code CG-36, CF-31 (mend salt.yaml first)}. */
  private static List<String> notChecked(List<? extends Outcome<?>> outcomes) {
    Map<List<String>, List<String>> codes = new LinkedHashMap<>();
    for (Outcome<?> outcome : outcomes) {
      codes.computeIfAbsent(outcome.broken(), none -> new ArrayList<>()).add(outcome.code());
    }
    List<String> told = new ArrayList<>();
    codes.forEach(
        (broken, of) -> {
          String mend = broken.isEmpty() ? "" : " (mend " + String.join(", ", broken) + " first)";
          told.add(String.join(", ", of) + mend);
        });
    return told;
  }

  /** What batches took, and what of it cannot be so; what is left. */
  private Stock closeBooks(List<Outcome<T>> outcomes) {
    List<Use> uses = new ArrayList<>();
    outcomes.forEach(outcome -> uses.addAll(outcome.uses()));
    resolver.premixes().values().forEach(one -> uses.addAll(books.look(one, findings::add)));
    Set<String> codes = new TreeSet<>(trees.codes().keySet());
    folder.ending(".premix").forEach(path -> codes.add(new SourceFile(path, "").stem()));
    return books.close(codes, uses, findings::add);
  }

  /** A premix that no error of its own file keeps from being made. */
  record SoundPremix(String path, ResolvedPremix premix) {}

  /** In the order of their paths; absent where their own files must be mended first. */
  Map<String, Optional<SoundPremix>> premixes() {
    Map<String, ResolvedPremix> resolved = resolver.premixes();
    Map<String, Optional<SoundPremix>> byCode = new LinkedHashMap<>();
    for (String path : folder.ending(".premix")) {
      String code = new SourceFile(path, "").stem();
      boolean sound = findings.stream().noneMatch(finding -> isErrorOf(finding, code + ".premix"));
      byCode.put(
          code,
          Optional.ofNullable(resolved.get(code))
              .filter(premix -> sound)
              .map(premix -> new SoundPremix(path, premix)));
    }
    return byCode;
  }

  private static boolean isErrorOf(Finding finding, String fileName) {
    return finding.severity() == Severity.ERROR
        && finding.span().file().fileName().equals(fileName);
  }

  Larder larder() {
    return larder;
  }

  Set<String> recipes() {
    return trees.codes().keySet();
  }

  /** One recipe as it is written, whatever its limits say. */
  Optional<ComputedFeed> feed(String code) {
    return trees.path(code).flatMap(path -> looked(path).feed());
  }

  /**
   * One recipe, whatever its limits say.
   *
   * @param reads the names that it looked up, those in its premixes too
   */
  record Looked(Set<String> reads, Optional<ComputedFeed> feed) {}

  Looked looked(String path) {
    Optional<Resolution<ResolvedRecipe>> resolution =
        trees.recipe(path, new ArrayList<>()).map(resolver::recipe);
    Optional<ComputedFeed> feed =
        resolution.flatMap(Resolution::thing).flatMap(recipe -> computer.compute(recipe).feed());
    Set<String> reads = new TreeSet<>();
    resolution.ifPresent(one -> reads.addAll(one.read()));
    feed.ifPresent(one -> one.rows().forEach(row -> reads.addAll(row.path())));
    return new Looked(reads, feed);
  }

  /** What a limit of these words would be about. */
  Optional<Subject> subject(String words, List<Finding> found) {
    String bound = words.equals("cost") ? " EUR/kg\n" : " %\n";
    String text = "profile one\nlimits\n  " + words + "  max 1" + bound;
    ProfileFile file = (ProfileFile) FeedParser.parse(new SourceFile("one.limits", text)).file();
    return file.limits().stream()
        .flatMap(section -> section.lines().stream())
        .findFirst()
        .flatMap(line -> resolver.subject(line.left(), found));
  }

  List<Profile> profiles() {
    return resolver.profiles();
  }

  Map<String, ResolvedPremix> resolvedPremixes() {
    return resolver.premixes();
  }

  private Larder stocked() {
    DataTexts texts = DataTexts.of(folder, findings);
    findings.addAll(folder.findings());
    Stocked stocked = texts.stocked();
    findings.addAll(stocked.findings());
    return stocked.larder();
  }

  private Outcome<T> recipe(String path) {
    List<Finding> own = new ArrayList<>();
    Optional<RecipeFile> file = trees.recipe(path, own);
    if (file.isEmpty()) {
      return unchecked(path, List.of(), own);
    }
    Resolution<ResolvedRecipe> resolution = resolver.recipe(file.get());
    own.addAll(resolution.findings());
    return resolution
        .thing()
        .map(resolved -> checked(path, resolved, own))
        .orElseGet(() -> unchecked(path, brokenBefore(path, resolution.read()), own));
  }

  private Outcome<T> unchecked(String path, List<String> broken, List<Finding> own) {
    String code = new SourceFile(path, "").stem();
    Optional<RecipeOutcome> recorded =
        recording ? Optional.of(Recorder.unchecked(path, code, broken, own)) : Optional.empty();
    return Outcome.unchecked(code, broken, own, recorded);
  }

  private Outcome<T> checked(String path, ResolvedRecipe recipe, List<Finding> own) {
    Inspection inspection = inspection(recipe);
    Optional<ComputedFeed> computed = inspection.feed();
    List<LimitStatus> limits = inspection.limits();
    List<Remark> said = Rules.remarks(inspection);
    said.forEach(remark -> own.add(remark.finding()));
    List<Finding> ofRecords = new ArrayList<>();
    List<Use> uses = computed.map(feed -> books.look(feed, ofRecords::add)).orElse(List.of());
    boolean makeable = own.stream().noneMatch(f -> f.severity() == Severity.ERROR);
    Optional<T> made =
        computed
            .filter(feed -> makeable)
            .map(feed -> maker.apply(new Made(path, feed, limits, larder, books.planned(feed))));
    Optional<RecipeOutcome> recorded =
        recording ? Optional.of(recorded(path, inspection, said, own)) : Optional.empty();
    own.addAll(ofRecords);
    return new Outcome<>(
        recipe.code(), List.of(), own, limits.size(), computed.isPresent(), made, uses, recorded);
  }

  private Inspection inspection(ResolvedRecipe recipe) {
    Computation computed = computer.compute(recipe);
    return new Inspection(
        recipe,
        larder,
        computed.balances(),
        computed.feed(),
        computed.feed().map(feed -> Judgement.of(feed, larder)).orElse(Judgement.NONE),
        computed.feed().flatMap(this::onTheFloor),
        day);
  }

  /** What is wrong with what recipes share: data, premixes and profiles. */
  List<Finding> sharedFindings() {
    return List.copyOf(findings);
  }

  /**
   * One recipe before any rule has looked at it.
   *
   * @param inspection absent where the recipe cannot be resolved
   * @param own what is wrong with its words
   */
  record Opened(Optional<Inspection> inspection, List<Finding> own, SortedSet<String> read) {}

  Opened opened(String path) {
    List<Finding> own = new ArrayList<>();
    Optional<Resolution<ResolvedRecipe>> resolution = trees.recipe(path, own).map(resolver::recipe);
    resolution.ifPresent(one -> own.addAll(one.findings()));
    return new Opened(
        resolution.flatMap(Resolution::thing).map(this::inspection),
        own,
        resolution.map(Resolution::read).orElse(new TreeSet<>()));
  }

  /** Names of the files to be mended first, of all that the recipe at a path looked up. */
  List<String> brokenBefore(String path, SortedSet<String> read) {
    return new MendFirst(trees, resolver).of(path, read);
  }

  private static RecipeOutcome recorded(
      String path, Inspection recipe, List<Remark> said, List<Finding> own) {
    return recipe.feed().isPresent()
        ? Recorder.checked(path, recipe, said)
        : Recorder.unchecked(path, recipe.recipe().code(), List.of(), own);
  }

  /** What rework of a recipe is made of, worked out once; empty where it must be mended first. */
  private Optional<Material.Reworked> reworked(String code) {
    return reworked.computeIfAbsent(code, this::finished);
  }

  private Optional<Material.Reworked> finished(String code) {
    return trees
        .path(code)
        .flatMap(path -> trees.recipe(path, new ArrayList<>()))
        .flatMap(tree -> resolver.source(tree).thing())
        .flatMap(recipe -> computer.compute(recipe).feed())
        .map(Finished::of);
  }

  /** The batch on the scales of the plant, and its feed computed again with what they show. */
  private Optional<OnTheFloor> onTheFloor(ComputedFeed feed) {
    ResolvedRecipe recipe = feed.recipe();
    Optional<FloorPlan> plan =
        recipe.batch().flatMap(batch -> FloorPlanner.plan(feed, feed.weighed(batch), larder));
    if (plan.isEmpty() || larder.plant().isEmpty()) {
      return Optional.empty();
    }
    return feed.weighed(plan.get().asRounded(recipe))
        .feed()
        .map(again -> new OnTheFloor(larder.plant().get(), plan.get(), Judge.verdicts(again)));
  }
}
