package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a figure comes from.
 *
 * @param ending where it is an act that authorises for a time
 * @param declared the place of its entry in {@code sources.yaml}
 */
public record Source(
    String id,
    Reliability reliability,
    String cite,
    Optional<String> address,
    Optional<String> read,
    Optional<String> licence,
    Optional<Ending> ending,
    Span declared) {

  /**
   * The end of what an act authorises.
   *
   * @param day its last day, as the act tells it
   * @param at where that is written
   * @param lookedUp when somebody looked up what became of it since
   * @param found what was found, and where
   */
  public record Ending(
      LocalDate day, Span at, Optional<LocalDate> lookedUp, Optional<String> found) {}

  /** How far a figure can be trusted, the best first. */
  public enum Reliability {
    PUBLISHED("published"),
    /** Analysed by or for the house itself. */
    OWN_ANALYSIS("own-analysis"),
    COMMON_PRACTICE("common-practice"),
    FROM_MEMORY("from-memory"),
    INVENTED("invented");

    private final String word;

    Reliability(String word) {
      this.word = word;
    }

    /** As written in a file. */
    public String word() {
      return word;
    }

    /** In a sentence: {@code from memory}. */
    public String inWords() {
      return word.replace('-', ' ');
    }
  }
}
