package dev.pellucid.engine.resolve;

import dev.pellucid.engine.larder.Larder;
import dev.pellucid.text.Span;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Everything that a recipe may name.
 *
 * @param profiles by name, those of law included
 * @param premixes by code, those that could be resolved
 * @param brokenPremixes codes whose own file already says why they cannot be used
 * @param recipes codes of recipes, which a line may name as rework only, and where each is declared
 * @param reworks what finished feeds are made of
 * @param days by which prices and waivers count
 */
public record Kitchen(
    Larder larder,
    Map<String, Profile> profiles,
    Map<String, ResolvedPremix> premixes,
    SortedSet<String> brokenPremixes,
    Map<String, Span> recipes,
    Reworks reworks,
    Days days) {

  /** The same for a recipe whose feed is to be worked into others: its own rework is left out. */
  Kitchen ofSource() {
    Material.Reworked none = new Material.Reworked(ResolvedPremix.nothing(), Optional.empty());
    return new Kitchen(
        larder, profiles, premixes, brokenPremixes, recipes, code -> Optional.of(none), days);
  }

  /** All that can stand as the subject of a line. */
  Collection<String> materials() {
    TreeSet<String> names = new TreeSet<>(larder.ingredients().keySet());
    names.addAll(premixes.keySet());
    names.addAll(brokenPremixes);
    return names;
  }

  /** Whether this can stand as the subject of a line. */
  boolean isMaterial(String name) {
    return larder.ingredients().containsKey(name)
        || premixes.containsKey(name)
        || brokenPremixes.contains(name);
  }

  /** The ingredient that had this name before. */
  Map<String, String> formerNames() {
    Map<String, String> former = new TreeMap<>();
    larder
        .ingredients()
        .values()
        .forEach(one -> one.formerly().forEach(old -> former.put(old, one.name())));
    return former;
  }
}
