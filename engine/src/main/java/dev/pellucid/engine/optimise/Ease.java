package dev.pellucid.engine.optimise;

/**
 * How readily a part of a task is loosened, the least first. What a fish needs, what law or
 * guidance says, what keeps a feed safe, what the store holds and in which order a label names
 * ingredients is never loosened.
 */
public enum Ease {
  NEVER,
  /** What a label says. */
  LABEL,
  /** What the trade or the house holds to be good. */
  PRACTICE,
  /** What the recipe asks of itself. */
  RECIPE,
  /** How far a line may go. */
  LINE,
  /** By how much shares may change this time. */
  MOVE
}
