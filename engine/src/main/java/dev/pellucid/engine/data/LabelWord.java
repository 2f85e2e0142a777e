package dev.pellucid.engine.data;

import java.util.Locale;

/** The fixed words on a bag; a file of {@code label/} may say them in another way or language. */
public enum LabelWord {
  COMPLETE_FEED("Complete feed for"),
  COMPLETE_FEED_UNTOLD("Complete feed"),
  CONSTITUENTS("Analytical constituents"),
  INGREDIENTS("Ingredients, by falling weight"),
  ADDITIVES("Additives per kg"),
  OTHER_ADDITIVES("Other additives"),
  FEEDING("Feeding"),
  STORAGE("Storage"),
  CAUTIONS("Cautions"),
  NET_WEIGHT("Net weight"),
  BATCH("Batch number"),
  PACKED("Packed on"),
  BEST_BEFORE("Best before"),
  MADE_BY("Made by"),
  ADDRESS("Address"),
  APPROVAL_NUMBER("Approval number"),
  AT_LEAST("min"),
  AT_MOST("max");

  private final String ours;

  LabelWord(String ours) {
    this.ours = ours;
  }

  /** What stands on the bag where the file says nothing. */
  public String ours() {
    return ours;
  }

  /** The key in the file. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
