package dev.pellucid.engine.goal;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The day of a recall. What is stopped today is not stopped last week: a day that a project file
 * fixes for its checks does not count here, and one that was typed with the question does.
 *
 * @param day that counts
 * @param clock today
 * @param fixed by a project file; empty where none is
 */
public record AskedOn(LocalDate day, LocalDate clock, Optional<LocalDate> fixed) {
  /** A day that is today's. */
  public static AskedOn today(LocalDate clock) {
    return new AskedOn(clock, clock, Optional.empty());
  }

  /**
   * Which day counts.
   *
   * @param typed with the question
   */
  public static AskedOn of(Optional<LocalDate> typed, Optional<LocalDate> fixed, LocalDate clock) {
    return new AskedOn(typed.orElse(clock), clock, typed.isPresent() ? Optional.empty() : fixed);
  }

  /** That another day could be thought of; empty where all of them are one. */
  public Optional<String> otherwise() {
    if (!day.equals(clock)) {
      return Optional.of(day + " was asked for; today is " + clock);
    }
    return fixed
        .filter(it -> !it.equals(clock))
        .map(it -> "today by the clock; pellucid.day of pom.xml, " + it + ", does not count here");
  }
}
