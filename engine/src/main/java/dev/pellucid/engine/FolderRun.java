package dev.pellucid.engine;

import dev.pellucid.engine.check.Inspection;
import dev.pellucid.engine.check.Judge;
import dev.pellucid.engine.check.OnTheFloor;
import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.check.Verdict;
import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Finished;
import dev.pellucid.engine.floor.FloorPlan;
import dev.pellucid.engine.floor.FloorPlanner;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.larder.LarderReader;
import dev.pellucid.engine.larder.Stocked;
import dev.pellucid.engine.made.Books;
import dev.pellucid.engine.made.Stock;
import dev.pellucid.engine.made.Use;
import dev.pellucid.engine.outcome.RecipeOutcome;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Parsed;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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
      List<Verdict> verdicts,
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
    this(folder, day, maker, false);
  }

  /** A run that keeps of each recipe what reports need. */
  static <T> FolderRun<T> recording(FeedFolder folder, LocalDate day, Function<Made, T> maker) {
    return new FolderRun<>(folder, day, maker, true);
  }

  private FolderRun(FeedFolder folder, LocalDate day, Function<Made, T> maker, boolean recording) {
    this.recording = recording;
    this.folder = folder;
    this.day = day;
    this.maker = maker;
    this.larder = stocked();
    Resolver.Prepared prepared =
        Resolver.prepare(
            larder,
            files(".premix", PremixFile.class),
            files(".limits", ProfileFile.class),
            codes(),
            this::reworked,
            day);
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
    List<Finding> sorted = Rules.once(findings);
    int limits = outcomes.stream().mapToInt(Outcome::limits).sum();
    List<String> notChecked =
        notChecked(outcomes.stream().filter(outcome -> !outcome.checked()).toList());
    List<String> unmade =
        outcomes.stream().filter(outcome -> outcome.made().isEmpty()).map(Outcome::code).toList();
    List<T> made = outcomes.stream().flatMap(outcome -> outcome.made().stream()).toList();
    return new Result<>(
        new CheckReport(sorted, recipes.size(), books.count(), limits, notChecked),
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
    Set<String> codes = new TreeSet<>(codes().keySet());
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
    return codes().keySet();
  }

  /** One recipe as it is written, whatever its limits say. */
  Optional<ComputedFeed> feed(String code) {
    return path(code).flatMap(path -> looked(path).feed());
  }

  /**
   * One recipe, whatever its limits say.
   *
   * @param reads the names that it looked up, those in its premixes too
   */
  record Looked(Set<String> reads, Optional<ComputedFeed> feed) {}

  Looked looked(String path) {
    Optional<Resolution<ResolvedRecipe>> resolution =
        read(path, new ArrayList<>()).map(file -> resolver.recipe((RecipeFile) file));
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

  private Optional<String> path(String code) {
    return folder.ending(".recipe").stream()
        .filter(path -> new SourceFile(path, "").stem().equals(code))
        .findFirst();
  }

  Map<String, ResolvedPremix> resolvedPremixes() {
    return resolver.premixes();
  }

  private Larder stocked() {
    TreeMap<String, SourceFile> texts = new TreeMap<>();
    for (String path : folder.data()) {
      folder.read(path, findings).ifPresent(text -> texts.put(path, text));
    }
    findings.addAll(folder.findings());
    Stocked stocked = LarderReader.read(texts);
    findings.addAll(stocked.findings());
    return stocked.larder();
  }

  private <F extends FeedFile> List<F> files(String extension, Class<F> kind) {
    List<F> files = new ArrayList<>();
    for (String path : folder.ending(extension)) {
      FeedFile file = read(path, findings).orElseGet(() -> unread(path));
      files.add(kind.cast(file));
    }
    return files;
  }

  private Map<String, Span> codes() {
    TreeMap<String, Span> codes = new TreeMap<>();
    for (String path : folder.ending(".recipe")) {
      SourceFile named = new SourceFile(path, "");
      codes.put(named.stem(), named.beginning());
    }
    return codes;
  }

  private Optional<FeedFile> read(String path, List<Finding> found) {
    List<Finding> aboutFile = new ArrayList<>();
    Optional<SourceFile> text = folder.read(path, aboutFile);
    if (text.isEmpty()) {
      found.addAll(aboutFile);
      return Optional.empty();
    }
    Parsed parsed = FeedParser.parse(new SourceBytes.Decoded(text.get(), aboutFile));
    found.addAll(parsed.findings());
    return Optional.of(parsed.file());
  }

  /** Stands in for a file that is there and cannot be read, so that its name is not unknown. */
  private static FeedFile unread(String path) {
    return FeedParser.parse(new SourceFile(path, "")).file();
  }

  private Outcome<T> recipe(String path) {
    List<Finding> own = new ArrayList<>();
    Optional<FeedFile> file = read(path, own);
    if (file.isEmpty()) {
      return unchecked(path, List.of(), own);
    }
    Resolution<ResolvedRecipe> resolution = resolver.recipe((RecipeFile) file.get());
    own.addAll(resolution.findings());
    return resolution
        .thing()
        .map(resolved -> checked(path, resolved, own))
        .orElseGet(() -> unchecked(path, broken(path, resolution), own));
  }

  private List<String> broken(String path, Resolution<ResolvedRecipe> resolution) {
    return resolver.brokenBefore(new SourceFile(path, "").stem(), resolution.read());
  }

  private Outcome<T> unchecked(String path, List<String> broken, List<Finding> own) {
    String code = new SourceFile(path, "").stem();
    Optional<RecipeOutcome> recorded =
        recording ? Optional.of(Recorder.unchecked(path, code, broken, own)) : Optional.empty();
    return Outcome.unchecked(code, broken, own, recorded);
  }

  private Outcome<T> checked(String path, ResolvedRecipe recipe, List<Finding> own) {
    Computation computed = computer.compute(recipe);
    List<Verdict> verdicts = computed.feed().map(Judge::verdicts).orElse(List.of());
    Inspection inspection =
        new Inspection(
            recipe,
            larder,
            computer,
            computed.balances(),
            computed.feed(),
            verdicts,
            computed.feed().flatMap(this::onTheFloor),
            day);
    Rules.ALL.forEach(rule -> rule.look(inspection, own::add));
    List<Finding> ofRecords = new ArrayList<>();
    List<Use> uses =
        computed.feed().map(feed -> books.look(feed, ofRecords::add)).orElse(List.of());
    boolean makeable = own.stream().noneMatch(f -> f.severity() == Severity.ERROR);
    Optional<T> made =
        computed
            .feed()
            .filter(feed -> makeable)
            .map(feed -> maker.apply(new Made(path, feed, verdicts, larder, books.planned(feed))));
    Optional<RecipeOutcome> recorded =
        recording ? Optional.of(recorded(path, inspection, own)) : Optional.empty();
    own.addAll(ofRecords);
    return new Outcome<>(
        recipe.code(),
        List.of(),
        own,
        verdicts.size(),
        computed.feed().isPresent(),
        made,
        uses,
        recorded);
  }

  private static RecipeOutcome recorded(String path, Inspection recipe, List<Finding> said) {
    return recipe.feed().isPresent()
        ? Recorder.checked(path, recipe, said)
        : Recorder.unchecked(path, recipe.recipe().code(), List.of(), said);
  }

  /** What rework of a recipe is made of, worked out once; empty where it must be mended first. */
  private Optional<Material.Reworked> reworked(String code) {
    return reworked.computeIfAbsent(code, this::finished);
  }

  private Optional<Material.Reworked> finished(String code) {
    return path(code)
        .flatMap(path -> read(path, new ArrayList<>()))
        .flatMap(file -> resolver.source((RecipeFile) file))
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
    return computer
        .again(feed, plan.get().asRounded(recipe))
        .feed()
        .map(again -> new OnTheFloor(larder.plant().get(), plan.get(), Judge.verdicts(again)));
  }
}
