package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One file of {@code species/}.
 *
 * @param groups what law and practice call it by: {@code salmonids}, {@code crustaceans}
 * @param feeding sentences for the bag
 * @param habits {@code floating}, {@code sinking}, {@code slow-sinking}
 * @param needsTold nutrients that it needs and that are not judged as long as ingredients do not
 *     tell them: {@code taurine}
 */
public record Species(
    String name,
    String title,
    Set<String> groups,
    Set<String> habits,
    List<Size> sizes,
    List<String> feeding,
    List<String> needsTold,
    Span declared) {
  public Species {
    groups = Set.copyOf(groups);
    habits = Set.copyOf(habits);
    sizes = List.copyOf(sizes);
    feeding = List.copyOf(feeding);
    needsTold = List.copyOf(needsTold);
  }

  /**
   * What a fish takes: masses in kg, lengths in mm.
   *
   * @param meal feed of one day as a share of the mass of the fish, where it is told
   */
  public record Size(
      double lightest,
      double heaviest,
      double thinnest,
      double thickest,
      OptionalDouble meal,
      String asWritten,
      Source source,
      Span place) {}

  /** Whether it is the species, or in the group, of this name. */
  public boolean is(String nameOrGroup) {
    return name.equals(nameOrGroup) || groups.contains(nameOrGroup);
  }
}
