package dev.pellucid.engine.optimise;

/** What is to be least. */
public enum Aim {
  /** Money per kg in the bags. */
  COST,
  /** The points by which shares change, all together. */
  CHANGE
}
