package dev.pellucid.engine.resolve;

import dev.pellucid.engine.larder.Larder;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Everything that a recipe may name.
 *
 * @param profiles by name, those of law included
 * @param premixes by code, those that could be resolved
 * @param brokenPremixes codes whose own file already says why they cannot be used
 * @param recipes codes of recipes, which no recipe may name as a line, and where each is declared
 * @param day the day of the run
 */
public record Kitchen(
    Larder larder,
    Map<String, Profile> profiles,
    Map<String, ResolvedPremix> premixes,
    SortedSet<String> brokenPremixes,
    Map<String, Span> recipes,
    LocalDate day) {

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
