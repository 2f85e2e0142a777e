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

/**
 * Trees to things: premixes first, each after those it is made of, then profiles; after that any
 * number of recipes, one by one and in any thread.
 */
public final class Resolver {
  private final Kitchen kitchen;
  private final Unmade unmade;

  private Resolver(Kitchen kitchen, Unmade unmade) {
    this.kitchen = kitchen;
    this.unmade = unmade;
  }

  /**
   * The files to be mended before a recipe, of all that it looked up: what {@link #brokenData}
   * says, and recipes whose feed is worked in again and cannot be computed.
   */
  public List<String> brokenBefore(String recipe, SortedSet<String> read) {
    Set<String> files = new LinkedHashSet<>(brokenData(read));
    if (kitchen.larder().nutrients().mendFirst().isEmpty()) {
      read.stream()
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
  public List<String> brokenData(SortedSet<String> read) {
    List<String> nutrients = kitchen.larder().nutrients().mendFirst();
    return nutrients.isEmpty() ? unmade.atFault(read) : nutrients;
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
    PremixOrder order = new PremixOrder(premixes, findings);
    for (PremixFile file : order.inOrder()) {
      Resolution<ResolvedPremix> premix = make(file, kitchen, findings);
      if (premix.thing().isEmpty()) {
        unmade.add(file.source().stem(), premix);
      }
    }
    order.leftOut().forEach(unmade::add);
    for (ProfileFile file : profiles) {
      Resolution<Profile> profile = new ProfileResolver(file, kitchen).resolve();
      findings.addAll(profile.findings());
      profile.thing().ifPresent(one -> named.put(one.name(), one));
    }
    lawIsThere(kitchen, findings);
    return new Prepared(new Resolver(kitchen, unmade), findings);
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
        source.thing().map(ResolvedRecipe::withoutRework), source.findings(), source.read());
  }

  /** What the left side of a limit is about; a finding where it names nothing. */
  public Optional<Subject> subject(Left left, List<Finding> findings) {
    return new Limits(kitchen, findings, new TreeSet<>()).subject(left);
  }

  /** The premixes that could be made, by code. */
  public Map<String, ResolvedPremix> premixes() {
    return Map.copyOf(kitchen.premixes());
  }
}
