package dev.pellucid.syntax;

import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.util.Locale;
import java.util.Optional;

/** What can be said of a step, and what measures it. */
public enum Property {
  /** The hole of the screen. */
  SCREEN(Extent.HOLE),
  TIME(Extent.STEP_TIME),
  TEMPERATURE(Extent.TEMPERATURE),
  /** The temperature before the step. */
  START(Extent.TEMPERATURE),
  /** Water as a share of the weight of the mix. */
  ON_MIX(Extent.ADDED_WATER),
  /** Water until the mix is this moist. */
  TO_MOISTURE(Extent.MOISTURE),
  /** The moisture after the step. */
  MOISTURE(Extent.MOISTURE),
  /** The hole of the die. */
  DIE(Extent.HOLE),
  /** The length of the cut. */
  LENGTH(Extent.HOLE),
  /** How the coat goes on; a word, not a figure: {@code vacuum}, {@code drum} or {@code hand}. */
  METHOD(Extent.SHARE),
  /** What goes into one bag. */
  BAG(Extent.BAG),
  SHELF_LIFE(Extent.SHELF_LIFE);

  private final Extent extent;
  private final String word;

  Property(Extent extent) {
    this.extent = extent;
    this.word = name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What measures it; without meaning for {@link #METHOD}. */
  public Kind kind() {
    return extent.kind();
  }

  /** How small and how large it can be; without meaning for {@link #METHOD}. */
  public Extent extent() {
    return extent;
  }

  /** Whether a word and not a figure follows. */
  public boolean takesWord() {
    return this == METHOD;
  }

  /** As written in a file: {@code shelf-life}. */
  public String word() {
    return word;
  }

  public static Optional<Property> of(String word) {
    for (Property property : values()) {
      if (property.word().equals(word)) {
        return Optional.of(property);
      }
    }
    return Optional.empty();
  }
}
