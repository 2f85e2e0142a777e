package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A mixer of a plant.
 *
 * @param title for people
 * @param litres its volume
 * @param fillLow the least part of the volume at which it mixes
 * @param fillHigh the most part of the volume that it takes
 * @param time how long it mixes, where it is told
 * @param evenness what its own test showed, where one was made
 */
public record Mixer(
    String title,
    double litres,
    double fillLow,
    double fillHigh,
    Optional<Time> time,
    Optional<Evenness> evenness) {
  public Mixer {
    if (!(litres > 0 && fillLow >= 0 && fillHigh > 0 && fillLow <= fillHigh && fillHigh <= 1)) {
      throw new IllegalArgumentException("no mixer: " + title);
    }
  }

  /** From what it needs to what is still of use; hours. */
  public record Time(double least, double most, String asWritten, Span place) {}

  /**
   * The variation between the samples of a test.
   *
   * @param share standard deviation over mean
   * @param day of the test, where it is told
   */
  public record Evenness(double share, Optional<LocalDate> day, Span place) {}
}
