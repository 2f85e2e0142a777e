package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.PremixesTogether;
import dev.pellucid.engine.check.ProfilesTogether;
import dev.pellucid.engine.check.SharedRules;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.Once;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.records.LotsOverMaxima;
import dev.pellucid.engine.records.Reshared;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.Reads;
import dev.pellucid.engine.resolve.Ref;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.engine.trace.FollowedTwice;
import dev.pellucid.engine.trace.LineToClean;
import dev.pellucid.engine.weighing.WeighingPlanner;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile.PremixFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * What all recipes of a folder share in one state and for one day: data, premixes and profiles, the
 * feeds that are worked in again, and the records of batches. It does not change once it is made.
 */
public final class Shared {
  private final ReadFolder folder;
  private final Days days;
  private final Resolver resolver;
  private final FeedComputer computer;
  private final ReworkSources sources;
  private final BatchRecordCheck recordCheck;
  private final Map<String, WeighingPlanner> planners;
  private final List<PremixFile> premixes;
  private final Supplier<List<Finding>> findings;
  private final Supplier<List<String>> besideRecipes;

  private Shared(ReadFolder folder, Days days, Optional<Shared> earlier) {
    this.folder = folder;
    this.days = days;
    this.computer = new FeedComputer(folder.tables());
    this.planners = planners(folder.tables());
    this.sources = new ReworkSources(folder.trees(), computer, earlier.map(one -> one.sources));
    List<Finding> found = new ArrayList<>(folder.findings());
    this.premixes = folder.trees().premixes(found);
    Resolver.Prepared prepared =
        Resolver.prepare(
            new Resolver.Named(
                folder.tables(),
                premixes,
                folder.trees().profiles(found),
                folder.trees().codes(),
                sources,
                days),
            earlier.map(one -> one.resolver));
    found.addAll(prepared.findings());
    this.resolver = prepared.resolver();
    this.sources.resolveWith(resolver);
    this.besideRecipes = new Once<>(() -> besideRecipes(folder.texts()));
    // Of a state that only batches are held against nobody asks for them.
    this.findings = new Once<>(() -> withRules(found));
    this.recordCheck =
        new BatchRecordCheck(
            folder.tables(),
            resolver.premixes(),
            computer,
            days.prices(),
            LotsOverMaxima.of(folder.tables(), resolver.materialMaxima()),
            new SharesInText(resolver));
  }

  private List<Finding> withRules(List<Finding> read) {
    List<Finding> found = new ArrayList<>(read);
    if (folder.tables().nutrients().mendFirst().isEmpty()) {
      List<Profile> profiles = resolver.profiles();
      found.addAll(PremixesTogether.look(premixes, profiles, folder.tables()));
      found.addAll(ProfilesTogether.look(profiles));
      found.addAll(ProfilesTogether.ofMaterials(resolver.profilesOfMaterials()));
      found.addAll(
          SharedRules.findings(
              new TreeMap<>(resolver.premixes()).values(),
              profiles,
              resolver.materialMaxima(),
              folder.tables(),
              days.prices()));
    }
    return List.copyOf(OverIsUnusual.once(found));
  }

  /** What the recipes of a folder share. */
  public static Shared of(ReadFolder folder, Days days) {
    return new Shared(folder, days, Optional.empty());
  }

  /** The same of a later state; what hangs on nothing that changed is the same object. */
  Shared next(Texts texts) {
    return new Shared(ReadFolder.after(Optional.of(folder), texts), days, Optional.of(this));
  }

  /** The same folder on another day. */
  Shared on(Days other) {
    return days.equals(other) ? this : new Shared(folder, other, Optional.empty());
  }

  /** The folder as it is written. */
  public ReadFolder folder() {
    return folder;
  }

  public Texts texts() {
    return folder.texts();
  }

  public Trees trees() {
    return folder.trees();
  }

  /** The premixes as they are written, broken ones too. */
  List<PremixFile> premixes() {
    return premixes;
  }

  public FeedTables tables() {
    return folder.tables();
  }

  public Resolver resolver() {
    return resolver;
  }

  public BatchRecordCheck recordCheck() {
    return recordCheck;
  }

  /** The way from a recipe to one with other shares. */
  Reshared reshared() {
    return new SharesInText(resolver);
  }

  FeedComputer computer() {
    return computer;
  }

  private static Map<String, WeighingPlanner> planners(FeedTables tables) {
    Map<String, WeighingPlanner> planners = new HashMap<>();
    for (Plant plant : tables.plants().values()) {
      Optional<WeighingPlanner> planner = WeighingPlanner.of(plant, tables.practice());
      if (planner.isPresent()) {
        planners.put(plant.name(), planner.get());
      }
    }
    return planners;
  }

  /** For batches on the scales of a plant; absent where it tells none. */
  Optional<WeighingPlanner> planner(Optional<Plant> plant) {
    return plant.isPresent()
        ? Optional.ofNullable(planners.get(plant.get().name()))
        : Optional.empty();
  }

  /** What a lot can be passed for by name: recipes, premixes and profiles, sound or not. */
  Set<String> named() {
    Set<String> names = new TreeSet<>(trees().called());
    names.addAll(trees().profileNames());
    resolver.profiles().forEach(profile -> names.add(profile.name()));
    return names;
  }

  /** The batches that are planned on a line on which a stopped one was made last. */
  public LineToClean lineToClean() {
    return new LineToClean(tables(), day(), new PlantOfCode(trees(), tables()));
  }

  /** Records that tell the same batch to have come before. */
  FollowedTwice followedTwice() {
    return new FollowedTwice(tables(), new PlantOfCode(trees(), tables()));
  }

  /** The day of the run. */
  LocalDate day() {
    return days.prices();
  }

  /** What is wrong with files, data, premixes and profiles, whatever recipes are there. */
  public List<Finding> findings() {
    return findings.get();
  }

  /** All that the recipe at a path hangs on. */
  public DependsOn dependsOn(String path, Reads reads) {
    return resolver.dependsOn(path, reads);
  }

  /** All that the premix of a code hangs on. */
  public DependsOn premixDependsOn(String code, String path) {
    return resolver.premixDependsOn(code, path);
  }

  /**
   * The fingerprint of all files that a batch hangs on: those that its recipe or premix hangs on,
   * and what raw materials may hold, which is asked of its lots and named by no recipe.
   *
   * @param own the path of the recipe or premix
   */
  public String fingerprint(String own, DependsOn hangs) {
    Set<String> on = new TreeSet<>(ofMaterials());
    for (String path : besideRecipes.get()) {
      if (hangs.on(path)) {
        on.add(path);
      }
    }
    for (Ref ref : hangs.refs()) {
      if (ref.kind() == Ref.Kind.REWORK) {
        trees().path(ref.name()).ifPresent(on::add);
      }
    }
    if (texts().has(own)) {
      on.add(own);
    }
    return StateFingerprint.of(texts(), on);
  }

  private Set<String> ofMaterials() {
    Set<String> paths = new TreeSet<>();
    resolver.profilesOfMaterials().forEach(it -> paths.add(it.declared().file().path()));
    return paths;
  }

  /** Every recipe would ask for every other one, and hang on hardly any. */
  private static List<String> besideRecipes(Texts texts) {
    return texts.paths().stream()
        .filter(path -> !path.endsWith(Trees.RECIPE) && DependsOn.bearsOnFeeds(path))
        .toList();
  }

  /** Names of the files to be fixed before the recipe at a path, of all that it looked up. */
  public List<String> mendFirst(String path, Reads reads) {
    return new FixFirst(trees(), resolver).of(path, reads);
  }
}
