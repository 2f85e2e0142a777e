package dev.pellucid.engine.larder;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All nutrients of a folder, in the order in which they are shown; an index is a place in it. */
public final class Nutrients {
  /** Water, as a share of the mass. Every folder must tell it. */
  public static final String MOISTURE = "moisture";

  private final List<Nutrient> inOrder;
  private final Map<String, Nutrient> byName = new HashMap<>();
  private final int moisture;

  public Nutrients(List<Nutrient> inOrder) {
    this.inOrder = List.copyOf(inOrder);
    for (int i = 0; i < this.inOrder.size(); i++) {
      Nutrient nutrient = this.inOrder.get(i);
      if (nutrient.index() != i || byName.put(nutrient.name(), nutrient) != null) {
        throw new IllegalArgumentException("nutrient out of place: " + nutrient.name());
      }
    }
    Nutrient water = byName.get(MOISTURE);
    this.moisture = water == null ? -1 : water.index();
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
    return inOrder.stream().map(Nutrient::name).toList();
  }

  /** The index of {@link #MOISTURE}, or -1 in a folder that does not tell it. */
  public int moisture() {
    return moisture;
  }
}
