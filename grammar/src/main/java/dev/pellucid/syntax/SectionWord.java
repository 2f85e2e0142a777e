package dev.pellucid.syntax;

import java.util.Locale;
import java.util.Optional;

/** The sections of a file, in the order in which we show them. */
public enum SectionWord {
  MIX,
  SUPPLY,
  CARRIER,
  COAT,
  OVERAGE,
  LIMITS,
  WAIVERS,
  PROCESS,
  LABEL;

  private final String word = name().toLowerCase(Locale.ROOT);

  /** As written in a file. */
  public String word() {
    return word;
  }

  public static Optional<SectionWord> of(String word) {
    for (SectionWord section : values()) {
      if (section.word().equals(word)) {
        return Optional.of(section);
      }
    }
    return Optional.empty();
  }
}
