package dev.pellucid.engine.resolve;

import dev.pellucid.engine.larder.Ingredient;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
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
  private final Map<String, Resolution<ResolvedPremix>> unmade;

  private Resolver(Kitchen kitchen, Map<String, Resolution<ResolvedPremix>> unmade) {
    this.kitchen = kitchen;
    this.unmade = Map.copyOf(unmade);
  }

  /**
   * The files to be mended before a recipe, of all that it looked up: of a premix that cannot be
   * made those that it hangs on, and its own where that is at fault.
   */
  public List<String> brokenBefore(String recipe, SortedSet<String> read) {
    Set<String> files = new LinkedHashSet<>(kitchen.larder().nutrients().mendFirst());
    if (!files.isEmpty()) {
      return List.copyOf(files);
    }
    for (String name : read) {
      if (kitchen.brokenPremixes().contains(name) || isBroken(name)) {
        files.addAll(broken(name, new TreeSet<>()));
      } else if (!name.equals(recipe)
          && kitchen.recipes().containsKey(name)
          && kitchen.reworks().of(name).isEmpty()) {
        files.add(name + ".recipe");
      }
    }
    return List.copyOf(files);
  }

  private boolean isBroken(String name) {
    Ingredient ingredient = kitchen.larder().ingredients().get(name);
    return ingredient != null && !ingredient.whole();
  }

  private Set<String> broken(String name, Set<String> above) {
    if (isBroken(name)) {
      return Set.of(name + ".yaml");
    }
    if (!kitchen.brokenPremixes().contains(name) || !above.add(name)) {
      return Set.of();
    }
    Set<String> files = new LinkedHashSet<>();
    Optional<Resolution<ResolvedPremix>> premix = Optional.ofNullable(unmade.get(name));
    premix.ifPresent(one -> one.read().forEach(part -> files.addAll(broken(part, above))));
    boolean own =
        premix.stream()
            .flatMap(one -> one.findings().stream())
            .anyMatch(finding -> finding.severity() == Severity.ERROR);
    if (own || files.isEmpty()) {
      files.add(name + ".premix");
    }
    return files;
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
    Map<String, Resolution<ResolvedPremix>> unmade = new TreeMap<>();
    for (PremixFile file : new PremixOrder(premixes, findings).inOrder()) {
      Resolution<ResolvedPremix> premix = make(file, kitchen, findings);
      if (premix.thing().isEmpty()) {
        unmade.put(file.source().stem(), premix);
      }
    }
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
  public Optional<ResolvedRecipe> source(RecipeFile file) {
    return new RecipeResolver(file, kitchen.ofSource())
        .resolve()
        .thing()
        .map(ResolvedRecipe::withoutRework);
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
