package dev.pellucid.engine.data;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All nutrients of a folder, in the order in which they are shown; an index is a place in it.
 *
 * <p>Where there is an error in a file on which all others count, or none tells the water, no feed
 * of the folder can be computed: what is to be fixed first is told here, and no recipe is resolved.
 */
public final class Nutrients {
  /** Water, as a share of the mass. Every folder must tell it. */
  public static final String MOISTURE = "moisture";

  private final List<Nutrient> inOrder;
  private final Map<String, Nutrient> byName = new HashMap<>();
  private final List<String> mendFirst;
  private final int moisture;

  /**
   * @param mendFirst the files to be fixed before any feed can be computed; none where all is well
   */
  public Nutrients(List<Nutrient> inOrder, List<String> mendFirst) {
    this.inOrder = List.copyOf(inOrder);
    for (int i = 0; i < this.inOrder.size(); i++) {
      Nutrient nutrient = this.inOrder.get(i);
      if (nutrient.index() != i || byName.put(nutrient.name(), nutrient) != null) {
        throw new IllegalArgumentException("nutrient out of place: " + nutrient.name());
      }
    }
    this.mendFirst = List.copyOf(mendFirst);
    if (mendFirst.isEmpty() && !byName.containsKey(MOISTURE)) {
      throw new IllegalArgumentException("no moisture, and no file to be fixed for it");
    }
    this.moisture = moisture().map(Nutrient::index).orElse(-1);
  }

  /** The same where more files must be fixed before any feed can be computed. */
  Nutrients mendingFirst(Collection<String> more) {
    Set<String> all = new LinkedHashSet<>(mendFirst);
    return all.addAll(more) ? new Nutrients(inOrder, List.copyOf(all)) : this;
  }

  public int count() {
    return inOrder.size();
  }

  public Nutrient at(int index) {
    return inOrder.get(index);
  }

  public List<Nutrient> inOrder() {
    return inOrder;
  }

  public Optional<Nutrient> named(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  public List<String> names() {
    List<String> names = new ArrayList<>(inOrder.size());
    for (Nutrient nutrient : inOrder) {
      names.add(nutrient.name());
    }
    return Collections.unmodifiableList(names);
  }

  /** {@link #MOISTURE}; absent in a folder that does not tell it. */
  public Optional<Nutrient> moisture() {
    return named(MOISTURE);
  }

  /** Whether this is the place of {@link #MOISTURE}. */
  public boolean isMoisture(int index) {
    return index == moisture;
  }

  /** The files to be fixed before any feed can be computed; none where all is well. */
  public List<String> mendFirst() {
    return mendFirst;
  }
}
