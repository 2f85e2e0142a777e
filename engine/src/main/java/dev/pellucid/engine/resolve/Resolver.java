package dev.pellucid.engine.resolve;

import dev.pellucid.engine.larder.Larder;
import dev.pellucid.finding.Finding;
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
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Trees to things: premixes first, each after those it is made of, then profiles; after that any
 * number of recipes, one by one and in any thread.
 */
public final class Resolver {
  private final Kitchen kitchen;
  private final Unmade unmade;
  private final Map<Ref, Reads> shared;

  private Resolver(Kitchen kitchen, Unmade unmade, Map<Ref, Reads> shared) {
    this.kitchen = kitchen;
    this.unmade = unmade;
    this.shared = shared;
  }

  /**
   * All that a file hangs on.
   *
   * @param path of it, below the folder
   * @param reads what was looked up to make it
   */
  public DependsOn dependsOn(String path, Reads reads) {
    return new DependsOn(path, reads, this::behind);
  }

  /** What was looked up for a premix, a profile, the law, or a feed that is worked in again. */
  private Stream<Reads> behind(Ref ref) {
    return switch (ref.kind()) {
      case PREMIX, PROFILE -> Optional.ofNullable(shared.get(ref)).stream();
      case LAW ->
          Stream.of(
              Reads.of(
                  kitchen.law().stream()
                      .map(one -> new Ref(Ref.Kind.PROFILE, one.name()))
                      .toList()));
      case REWORK -> Stream.of(kitchen.reworks().behind(ref.name()));
      default -> Stream.of();
    };
  }

  /**
   * The files to be mended before a recipe, of all that it looked up: what {@link #brokenData}
   * says, and recipes whose feed is worked in again and cannot be computed.
   */
  public List<String> brokenBefore(String recipe, Reads reads) {
    Set<String> files = new LinkedHashSet<>(brokenData(reads));
    if (kitchen.larder().nutrients().mendFirst().isEmpty()) {
      reads.names(Ref.Kind.REWORK).stream()
          .filter(name -> !name.equals(recipe) && kitchen.recipes().containsKey(name))
          .filter(name -> !unmade.isBroken(name) && kitchen.reworks().of(name).isEmpty())
          .forEach(name -> files.add(name + ".recipe"));
    }
    return List.copyOf(files);
  }

  /**
   * The data and premixes to be mended, of all that a recipe looked up: of a premix that cannot be
   * made those that it hangs on, and its own where that is at fault.
   */
  public List<String> brokenData(Reads reads) {
    List<String> nutrients = kitchen.larder().nutrients().mendFirst();
    return nutrients.isEmpty()
        ? unmade.atFault(reads.names(Ref.Kind.INGREDIENT, Ref.Kind.PREMIX))
        : nutrients;
  }

  /** By name, those of law included. */
  public List<Profile> profiles() {
    return List.copyOf(kitchen.profiles().values());
  }

  /** A resolver, and what was wrong with premixes and profiles. */
  public record Prepared(Resolver resolver, List<Finding> findings) {
    public Prepared {
      findings = List.copyOf(findings);
    }
  }

  /**
   * Resolves what recipes share.
   *
   * @param recipes the codes of all recipes of the folder and where each is declared
   * @param reworks asked while recipes are resolved, never before
   * @param days by which prices and waivers count
   */
  public static Prepared prepare(
      Larder larder,
      List<PremixFile> premixes,
      List<ProfileFile> profiles,
      Map<String, Span> recipes,
      Reworks reworks,
      Days days) {
    List<Finding> findings = new ArrayList<>();
    Map<String, ResolvedPremix> made = new TreeMap<>();
    SortedSet<String> broken = new TreeSet<>();
    premixes.forEach(file -> broken.add(file.source().stem()));
    Map<String, Profile> named = new HashMap<>();
    Kitchen kitchen = new Kitchen(larder, named, made, broken, recipes, reworks, days);
    Unmade unmade = new Unmade(kitchen);
    Map<Ref, Reads> shared = new HashMap<>();
    PremixOrder order = new PremixOrder(premixes, findings);
    for (PremixFile file : order.inOrder()) {
      Resolution<ResolvedPremix> premix = make(file, kitchen, findings);
      shared.put(new Ref(Ref.Kind.PREMIX, file.source().stem()), premix.reads());
      if (premix.thing().isEmpty()) {
        unmade.add(file.source().stem(), premix);
      }
    }
    for (PremixOrder.LeftOut one : order.leftOut()) {
      unmade.add(one);
      shared.put(new Ref(Ref.Kind.PREMIX, one.code()), one.reads());
    }
    for (ProfileFile file : profiles) {
      Resolution<Profile> profile = new ProfileResolver(file, kitchen).resolve();
      findings.addAll(profile.findings());
      shared.put(new Ref(Ref.Kind.PROFILE, file.source().stem()), profile.reads());
      profile.thing().ifPresent(one -> named.put(one.name(), one));
    }
    lawIsThere(kitchen, findings);
    return new Prepared(new Resolver(kitchen, unmade, shared), findings);
  }

  private static Resolution<ResolvedPremix> make(
      PremixFile file, Kitchen kitchen, List<Finding> findings) {
    Resolution<ResolvedPremix> premix = new PremixResolver(file, kitchen).resolve();
    findings.addAll(premix.findings());
    premix
        .thing()
        .ifPresent(
            one -> {
              kitchen.premixes().put(one.code(), one);
              kitchen.brokenPremixes().remove(one.code());
            });
    return premix;
  }

  private static void lawIsThere(Kitchen kitchen, List<Finding> findings) {
    var jurisdiction = kitchen.larder().settings().jurisdiction();
    boolean there =
        jurisdiction.isEmpty()
            || kitchen.profiles().values().stream()
                .anyMatch(
                    profile ->
                        profile.kind() == Limit.Kind.LAW
                            && profile.jurisdiction().equals(jurisdiction));
    if (!there) {
      findings.add(
          Finding.error(
                  RecipeResolver.NO_LAW,
                  kitchen.larder().settings().place(),
                  "no profile of this folder holds the law of " + jurisdiction.orElseThrow())
              .helping("add a .limits file with kind law and this jurisdiction"));
    }
  }

  public Resolution<ResolvedRecipe> recipe(RecipeFile file) {
    return new RecipeResolver(file, kitchen).resolve();
  }

  /** A recipe whose feed is worked into others, as it is made without rework. */
  public Resolution<ResolvedRecipe> source(RecipeFile file) {
    Resolution<ResolvedRecipe> source = new RecipeResolver(file, kitchen.ofSource()).resolve();
    return new Resolution<>(
        source.thing().map(ResolvedRecipe::withoutRework), source.findings(), source.reads());
  }

  /** What the left side of a limit is about; a finding where it names nothing. */
  public Optional<Subject> subject(Left left, List<Finding> findings) {
    return new Limits(new Scope(kitchen), findings).subject(left);
  }

  /** The premixes that could be made, by code. */
  public Map<String, ResolvedPremix> premixes() {
    return Map.copyOf(kitchen.premixes());
  }
}
