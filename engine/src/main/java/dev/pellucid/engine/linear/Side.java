package dev.pellucid.engine.linear;

/** Which bound of a pair. */
public enum Side {
  LOW,
  HIGH;

  public boolean isLow() {
    return this == LOW;
  }
}
