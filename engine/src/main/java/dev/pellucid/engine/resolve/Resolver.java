package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.Left;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Trees to things: premixes first, each after those it is made of, then profiles; after that any
 * number of recipes, one by one and in any thread.
 */
public final class Resolver {
  private final Scope scope;
  private final Unmade unmade;
  private final Map<Ref, Reads> reads = new HashMap<>();
  private final Map<String, Known<ResolvedPremix>> premixes = new HashMap<>();
  private final Map<String, Known<Profile>> profiles = new HashMap<>();

  /** What came of a file, which is so again while its tree and all that it looked up are so. */
  private record Known<T>(FeedFile file, Resolution<T> resolution) {
    boolean holds(FeedFile later, Scope scope) {
      return later == file && resolution.reads().holdIn(scope);
    }
  }

  private Resolver(Scope scope, Unmade unmade) {
    this.scope = scope;
    this.unmade = unmade;
  }

  /**
   * All that a file hangs on.
   *
   * @param path of it, below the folder
   * @param reads what was looked up to make it
   */
  public DependsOn dependsOn(String path, Reads reads) {
    return new DependsOn(path, reads, this::behind, this::mayBeLaw);
  }

  /** All that the premix of a code hangs on. */
  public DependsOn premixDependsOn(String code, String path) {
    Reads own = reads.getOrDefault(new Ref(Ref.Kind.PREMIX, code), Reads.NONE);
    return dependsOn(path, own);
  }

  /**
   * Whether a profile is law, or may have been: one that is gone, that cannot be read, or that does
   * not say what it is. Law holds for feeds that never name it, so it is missed without a word.
   */
  private boolean mayBeLaw(String profile) {
    if (scope.tables().settings().jurisdiction().isEmpty() || scope.boundsMaterials(profile)) {
      return false;
    }
    return scope
        .profile(profile)
        .filter(one -> one.saysItsKind() && !one.kind().bindsByItself())
        .isEmpty();
  }

  /** What was looked up for a premix, a profile, the law, or a feed that is worked in again. */
  private Stream<Reads> behind(Ref ref) {
    return switch (ref.kind()) {
      case PREMIX, PROFILE -> Optional.ofNullable(reads.get(ref)).stream();
      case LAW ->
          Stream.of(
              Reads.of(
                  scope.binding().stream()
                      .map(one -> new Ref(Ref.Kind.PROFILE, one.name()))
                      .toList()));
      case REWORK -> Stream.of(scope.reworks().behind(ref.name()));
      default -> Stream.of();
    };
  }

  /**
   * The files to be fixed before a recipe, of all that it looked up: what {@link #brokenData} says,
   * and recipes whose feed is worked in again and cannot be computed.
   */
  public List<String> brokenBefore(String recipe, Reads reads) {
    Set<String> files = new LinkedHashSet<>(brokenData(reads));
    if (scope.tables().nutrients().mendFirst().isEmpty()) {
      reads.names(Ref.Kind.REWORK).stream()
          .filter(name -> !name.equals(recipe) && scope.recipes().containsKey(name))
          .filter(name -> !unmade.isBroken(name) && scope.reworks().of(name).isEmpty())
          .forEach(name -> files.add(name + ".recipe"));
    }
    return List.copyOf(files);
  }

  /**
   * The data and premixes to be fixed, of all that a recipe looked up: of a premix that cannot be
   * made those that it hangs on, and its own where that is at fault.
   */
  public List<String> brokenData(Reads reads) {
    List<String> nutrients = scope.tables().nutrients().mendFirst();
    return nutrients.isEmpty()
        ? unmade.atFault(reads.names(Ref.Kind.INGREDIENT, Ref.Kind.PREMIX))
        : nutrients;
  }

  /** By name, those of law included. */
  public List<Profile> profiles() {
    return List.copyOf(scope.profiles().values());
  }

  /** Those that bound raw materials, by name. */
  public List<Profile> profilesOfMaterials() {
    return scope.maximaOfMaterials();
  }

  /** What is asked of raw materials themselves. */
  public MaterialMaxima materialMaxima() {
    return MaterialMaxima.of(scope.tables(), scope.maximaOfMaterials());
  }

  /** A resolver, and what was wrong with premixes and profiles. */
  public record Prepared(Resolver resolver, List<Finding> findings) {
    public Prepared {
      findings = List.copyOf(findings);
    }
  }

  /**
   * All that recipes may name, as it is written.
   *
   * @param recipes the codes of all recipes of the folder and where each is declared
   * @param reworks asked while recipes are resolved, never before
   * @param days by which prices and waivers count
   */
  public record Named(
      FeedTables tables,
      List<PremixFile> premixes,
      List<ProfileFile> profiles,
      Map<String, Span> recipes,
      Reworks reworks,
      Days days) {
    public Named {
      premixes = List.copyOf(premixes);
      profiles = List.copyOf(profiles);
    }
  }

  /**
   * Resolves what recipes share.
   *
   * @param earlier what came of an earlier state; a premix or profile whose tree and all that it
   *     looked up are the same objects still is not resolved again
   */
  public static Prepared prepare(Named named, Optional<Resolver> earlier) {
    List<Finding> findings = new ArrayList<>();
    Scope scope = new Scope(named.tables(), named.recipes(), named.reworks(), named.days());
    named.premixes().forEach(file -> scope.takeBroken(file.source().stem(), new Object()));
    Unmade unmade = new Unmade(scope);
    Resolver resolver = new Resolver(scope, unmade);
    PremixOrder order = new PremixOrder(named.premixes(), findings);
    for (PremixFile file : order.inOrder()) {
      Resolution<ResolvedPremix> premix = resolver.premix(file, earlier);
      findings.addAll(premix.findings());
      if (premix.thing().isPresent()) {
        scope.take(premix.thing().get());
      } else {
        unmade.add(file.source().stem(), premix);
        scope.takeBroken(file.source().stem(), premix);
      }
    }
    for (PremixOrder.LeftOut one : order.leftOut()) {
      unmade.add(one);
      resolver.reads.put(new Ref(Ref.Kind.PREMIX, one.code()), one.reads());
    }
    for (ProfileFile file : named.profiles()) {
      Resolution<Profile> profile = resolver.profile(file, earlier);
      findings.addAll(profile.findings());
      profile.thing().ifPresent(scope::take);
    }
    if (scope.tables().nutrients().mendFirst().isEmpty()) {
      lawIsThere(scope, findings);
      LawCoverage.look(scope, findings);
      ProfileSisters.look(scope, findings);
    }
    return new Prepared(resolver, findings);
  }

  private Resolution<ResolvedPremix> premix(PremixFile file, Optional<Resolver> earlier) {
    String code = file.source().stem();
    Known<ResolvedPremix> known =
        earlier
            .flatMap(one -> Optional.ofNullable(one.premixes.get(code)))
            .filter(one -> one.holds(file, scope))
            .orElseGet(() -> new Known<>(file, new PremixResolver(file, scope).resolve()));
    premixes.put(code, known);
    reads.put(new Ref(Ref.Kind.PREMIX, code), known.resolution().reads());
    return known.resolution();
  }

  private Resolution<Profile> profile(ProfileFile file, Optional<Resolver> earlier) {
    String name = file.source().stem();
    Known<Profile> known =
        earlier
            .flatMap(one -> Optional.ofNullable(one.profiles.get(name)))
            .filter(one -> one.holds(file, scope))
            .orElseGet(() -> new Known<>(file, new ProfileResolver(file, scope).resolve()));
    profiles.put(name, known);
    reads.put(new Ref(Ref.Kind.PROFILE, name), known.resolution().reads());
    return known.resolution();
  }

  /** Whether all that was looked up is still the very same. */
  public boolean hold(Reads looked) {
    return looked.holdIn(scope);
  }

  /**
   * What was looked up for a recipe with its records: those of its code; and where there are any,
   * everything that they may name.
   */
  public Reads withRecords(Reads looked, String code) {
    Ref own = new Ref(Ref.Kind.RECORDS, code);
    return looked.and(
        scope.records(code).isEmpty() ? List.of(own) : List.of(own, Ref.only(Ref.Kind.STORE)),
        scope);
  }

  /** The same of what was looked up for a feed that is worked in again. */
  public boolean holdForSource(Reads looked) {
    return looked.holdIn(scope.ofSource());
  }

  private static void lawIsThere(Scope scope, List<Finding> findings) {
    var jurisdiction = scope.tables().settings().jurisdiction();
    boolean there = jurisdiction.isEmpty() || !scope.law().isEmpty();
    if (!there) {
      findings.add(
          Finding.error(
                  RecipeResolver.NO_LAW,
                  scope.tables().settings().place(),
                  "no profile of this folder holds the law of " + jurisdiction.orElseThrow())
              .helping("add a .limits file with kind law and this jurisdiction"));
    }
  }

  public Resolution<ResolvedRecipe> recipe(RecipeFile file) {
    return new RecipeResolver(file, scope).resolve();
  }

  /** A recipe whose feed is worked into others, as it is made without rework. */
  public Resolution<ResolvedRecipe> source(RecipeFile file) {
    Resolution<ResolvedRecipe> source = new RecipeResolver(file, scope.ofSource()).resolve();
    return new Resolution<>(
        source.thing().map(ResolvedRecipe::withoutRework), source.findings(), source.reads());
  }

  /** What the left side of a limit is about; a finding where it names nothing. */
  public Optional<Subject> subject(Left left, List<Finding> findings) {
    return new Limits(new Lookup(scope), findings).subject(left);
  }

  /** The premixes that could be made, by code. */
  public Map<String, ResolvedPremix> premixes() {
    return Map.copyOf(scope.premixes());
  }
}
