package dev.pellucid.engine.data;

import java.util.Locale;

/**
 * What a plant may make on the same machines beside the feeds of the folder, and what must not get
 * into these, or these into it.
 */
public enum AlsoMade {
  /** Feed with a medicine that a veterinarian has prescribed. */
  MEDICATED("medicated feed"),
  /** Feed with coccidiostats, as poultry and rabbits get it. */
  COCCIDIOSTATS("feed with coccidiostats"),
  /** Feed for cattle, sheep or goats. */
  RUMINANT("ruminant feed");

  private final String words;

  AlsoMade(String words) {
    this.words = words;
  }

  /** As files write it: {@code medicated}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** For people. */
  public String words() {
    return words;
  }
}
