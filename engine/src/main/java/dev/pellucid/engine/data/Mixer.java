package dev.pellucid.engine.data;

/**
 * A mixer of a plant.
 *
 * @param title for people
 * @param litres its volume
 * @param fillLow the least part of the volume at which it mixes
 * @param fillHigh the most part of the volume that it takes
 */
public record Mixer(String title, double litres, double fillLow, double fillHigh) {
  public Mixer {
    if (!(litres > 0 && fillLow >= 0 && fillHigh > 0 && fillLow <= fillHigh && fillHigh <= 1)) {
      throw new IllegalArgumentException("no mixer: " + title);
    }
  }
}
