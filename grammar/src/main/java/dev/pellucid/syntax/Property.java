package dev.pellucid.syntax;

import dev.pellucid.measure.Kind;
import java.util.Locale;
import java.util.Optional;

/** What can be said of a step, and what measures it. */
public enum Property {
  /** The hole of the screen. */
  SCREEN(Kind.LENGTH),
  TIME(Kind.TIME),
  TEMPERATURE(Kind.TEMPERATURE),
  /** The temperature before the step. */
  START(Kind.TEMPERATURE),
  /** Water as a share of the weight of the mix. */
  ON_MIX(Kind.SHARE),
  /** Water until the mix is this moist. */
  TO_MOISTURE(Kind.SHARE),
  /** The moisture after the step. */
  MOISTURE(Kind.SHARE),
  /** The hole of the die. */
  DIE(Kind.LENGTH),
  /** The length of the cut. */
  LENGTH(Kind.LENGTH),
  /** How the coat goes on; a word, not a figure: {@code vacuum}, {@code drum} or {@code hand}. */
  METHOD(Kind.SHARE),
  /** What goes into one bag. */
  BAG(Kind.MASS),
  SHELF_LIFE(Kind.TIME);

  private final Kind kind;
  private final String word;

  Property(Kind kind) {
    this.kind = kind;
    this.word = name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What measures it; without meaning for {@link #METHOD}. */
  public Kind kind() {
    return kind;
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
