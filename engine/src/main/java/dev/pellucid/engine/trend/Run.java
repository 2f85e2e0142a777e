package dev.pellucid.engine.trend;

/**
 * A stretch of a course that a rule speaks of.
 *
 * @param from the first of its figures among those that count, from 0
 * @param to the last of them, at which the rule speaks
 * @param up whether it lies above the centre, or rises
 */
public record Run(RunRule rule, int from, int to, boolean up) {
  /** How many figures it takes in. */
  public int count() {
    return to - from + 1;
  }
}
