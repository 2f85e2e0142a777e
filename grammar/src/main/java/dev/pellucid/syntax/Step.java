package dev.pellucid.syntax;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The steps of a process. Their order in a recipe is meaning. */
public enum Step {
  GRIND(Property.SCREEN),
  BLEND(Property.TIME),
  ADD_LIQUID(Property.TIME, Property.TEMPERATURE),
  ADD_WATER(Property.ON_MIX, Property.TO_MOISTURE, Property.TEMPERATURE),
  CONDITION(Property.TEMPERATURE, Property.START, Property.TIME),
  PELLET(Property.TEMPERATURE, Property.DIE, Property.LENGTH),
  EXTRUDE(Property.TEMPERATURE, Property.DIE, Property.LENGTH),
  DRY(Property.TEMPERATURE, Property.TIME, Property.MOISTURE),
  COOL(Property.TEMPERATURE, Property.TIME, Property.MOISTURE),
  COAT(Property.METHOD, Property.TEMPERATURE),
  SIEVE(Property.SCREEN),
  PACK(Property.BAG),
  STORE(Property.SHELF_LIFE, Property.TEMPERATURE);

  private final Set<Property> properties;
  private final String word;

  Step(Property... properties) {
    this.properties = Set.of(properties);
    this.word = name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** As written in a file: {@code add-water}. */
  public String word() {
    return word;
  }

  public boolean has(Property property) {
    return properties.contains(property);
  }

  /** What may be said of this step, in the order of the words. */
  public Set<Property> properties() {
    return new TreeSet<>(properties);
  }

  public static Optional<Step> of(String word) {
    for (Step step : values()) {
      if (step.word().equals(word)) {
        return Optional.of(step);
      }
    }
    return Optional.empty();
  }
}
