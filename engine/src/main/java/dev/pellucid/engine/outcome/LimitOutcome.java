package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import java.util.Optional;

/**
 * What came of one limit of one recipe.
 *
 * @param name what it is called, without its figure, so that it keeps its name when that changes
 * @param finding what was said of it, where it is broken
 */
public record LimitOutcome(String name, State state, Optional<Finding> finding) {

  /** How the recipe stands with it. */
  public enum State {
    /** Kept, under its waiver where there is one. */
    KEPT,
    /** An error says that it is broken. */
    BROKEN,
    /** A value of guidance that a warning says is passed; nobody must keep it. */
    BEYOND_GUIDANCE,
    /** It cannot be judged, and what is not told may break it. */
    NOT_JUDGED,
    /** Kept as far as it is told, and nothing bounds what is not told. */
    KEPT_AS_TOLD
  }
}
