package dev.pellucid.slip;

import dev.pellucid.syntax.SectionWord;
import java.util.Locale;

/** Where in a file a line stands: what it is read as. */
public enum Place {
  OPENING,
  HEAD,
  MIX,
  SUPPLY,
  CARRIER,
  COAT,
  OVERAGE,
  LIMITS,
  WAIVERS,
  PROCESS,
  LABEL;

  public static Place of(SectionWord section) {
    return valueOf(section.name());
  }

  /** Whether a line here is a subject and its share. */
  boolean hasShares() {
    return this == MIX || this == COAT || this == CARRIER;
  }

  /** Whether a line here has a min or a max. */
  boolean hasBounds() {
    return this == LIMITS || this == WAIVERS || this == LABEL;
  }

  /** For a sentence: "a line of mix". */
  String line() {
    return switch (this) {
      case OPENING -> "the opening line";
      case HEAD -> "a line of the head";
      default -> "a line of " + name().toLowerCase(Locale.ROOT);
    };
  }
}
