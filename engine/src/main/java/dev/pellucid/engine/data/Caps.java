package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Cap;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The caps of all ingredients of a folder, and what those of one lead to expect of another: its
 * other caps, each by how the caps of the folder for two species usually lie to each other, and
 * those of its sisters for the same species. All in powers of ten, for caps are compared by how
 * many times one is the other.
 */
final class Caps {
  /** So many ingredients must have both caps before they say how two species lie apart. */
  private static final int ENOUGH = 5;

  /** Fewer sisters than these say nothing. */
  static final int SISTERS = 2;

  private final Map<String, OfGroup> byGroup = new HashMap<>();
  private final Map<String, List<Double>> bySpecies = new HashMap<>();
  private final Map<String, List<Double>> byPair = new HashMap<>();

  /** What a group tells for a species: how many caps, none among them, and those with a figure. */
  private static final class OfGroup {
    private final List<Double> powers = new ArrayList<>();
    private int caps;
  }

  Caps(Collection<Ingredient> ingredients) {
    for (Ingredient one : ingredients) {
      Map<String, Cap> first = firsts(one);
      for (String group : one.groups()) {
        first.forEach((species, cap) -> take(group, species, cap));
      }
      take(first);
    }
    bySpecies.values().forEach(caps -> caps.sort(null));
    byPair.values().forEach(ratios -> ratios.sort(null));
  }

  /** The first cap of an ingredient for each species. */
  private static Map<String, Cap> firsts(Ingredient one) {
    Map<String, Cap> first = new TreeMap<>();
    for (Cap cap : one.caps()) {
      first.putIfAbsent(cap.species(), cap);
    }
    return first;
  }

  private void take(String group, String species, Cap cap) {
    OfGroup told = byGroup.computeIfAbsent(pair(group, species), any -> new OfGroup());
    told.caps++;
    if (isFigure(cap)) {
      told.powers.add(power(cap));
    }
  }

  private void take(Map<String, Cap> caps) {
    for (Cap one : caps.values()) {
      if (isFigure(one)) {
        bySpecies.computeIfAbsent(one.species(), any -> new ArrayList<>()).add(power(one));
        for (Cap other : caps.values()) {
          if (isFigure(other)) {
            byPair
                .computeIfAbsent(pair(one.species(), other.species()), any -> new ArrayList<>())
                .add(power(one) - power(other));
          }
        }
      }
    }
  }

  private static String pair(String species, String other) {
    return species + " " + other;
  }

  /** Whether it tells how much, and not that there is no most, nor that there may be nothing. */
  static boolean isFigure(Cap cap) {
    return cap.most().orElse(0) > 0;
  }

  static double power(Cap cap) {
    return Math.log10(cap.most().orElseThrow());
  }

  /** How many others of a group have a cap, or the word that there is none. */
  int others(Ingredient one, String group, String species) {
    OfGroup told = byGroup.get(pair(group, species));
    return told == null ? 0 : told.caps - (firsts(one).containsKey(species) ? 1 : 0);
  }

  /** The caps of the others of a group that tell how much. */
  List<Double> figures(Ingredient one, String group, String species) {
    OfGroup told = byGroup.get(pair(group, species));
    List<Double> powers = told == null ? new ArrayList<>() : new ArrayList<>(told.powers);
    Cap own = firsts(one).get(species);
    if (own != null && isFigure(own)) {
      powers.remove(power(own));
    }
    return powers;
  }

  /** What the other caps of an ingredient, its usual share or its sisters lead to expect. */
  OptionalDouble expected(Ingredient one, Cap cap) {
    double sum = 0;
    int count = 0;
    for (Cap other : one.caps()) {
      if (isFigure(other) && !other.species().equals(cap.species())) {
        sum += power(other) + apart(cap.species(), other.species());
        count++;
      }
    }
    OptionalDouble alike = alike(one, cap.species());
    if (alike.isPresent()) {
      sum += alike.getAsDouble();
      count++;
    }
    return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
  }

  /** The high end of the usual share; where that is not told, the middle of the sisters. */
  private OptionalDouble alike(Ingredient one, String species) {
    if (one.usualShare().isPresent()) {
      return OptionalDouble.of(Math.log10(one.usualShare().get().high()));
    }
    List<Double> powers = new ArrayList<>();
    for (String group : one.groups()) {
      powers.addAll(figures(one, group, species));
    }
    powers.sort(null);
    return powers.size() < SISTERS ? OptionalDouble.empty() : OptionalDouble.of(middle(powers));
  }

  /** Whether there is an answer to what its like lead to expect. */
  boolean hasAlike(Ingredient one, String species) {
    return alike(one, species).isPresent();
  }

  /** How much further up the cap for a species usually lies than that for another. */
  private double apart(String species, String other) {
    List<Double> ratios = byPair.getOrDefault(pair(species, other), List.of());
    return ratios.size() < ENOUGH ? 0 : middle(ratios);
  }

  /** How far a cap lies from the middle of all caps of the folder for its species. */
  double fromMiddle(Cap cap) {
    return Math.abs(power(cap) - middle(bySpecies.getOrDefault(cap.species(), List.of())));
  }

  private static double middle(List<Double> sorted) {
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
