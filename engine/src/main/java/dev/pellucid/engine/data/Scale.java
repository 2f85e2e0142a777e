package dev.pellucid.engine.data;

/**
 * A scale of a plant; masses in kg.
 *
 * @param title for people
 * @param most the most that it carries, net of the container
 * @param division the step of its display
 * @param least the least that is sensibly weighed on it
 */
public record Scale(String title, double most, double division, double least) {
  public Scale {
    if (!(division > 0 && least >= division && most >= least)) {
      throw new IllegalArgumentException("no scale: " + title);
    }
  }
}
