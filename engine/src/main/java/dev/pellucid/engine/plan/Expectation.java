package dev.pellucid.engine.plan;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.quantity.Certainty;
import java.util.List;

/**
 * What the laboratory should find of one thing, beside what is asked of it.
 *
 * @param held one bound each, at least one
 */
public record Expectation(List<Held> held) {
  public Expectation {
    held = List.copyOf(held);
    if (held.isEmpty()) {
      throw new IllegalArgumentException("nothing is asked");
    }
  }

  private Held first() {
    return held.get(0);
  }

  /** The word for what it is about. */
  String subject() {
    return first().subject();
  }

  /** Whether an analysis of the feed finds it. */
  boolean isFound() {
    return first().demand().isFound();
  }

  /** Whether nothing is known of it but that there may be some. */
  boolean isNothingTold() {
    return first().expected() == 0 && !first().expectedAs().sign().isEmpty();
  }

  /** What is left to the nearest of its bounds, in percent of that. */
  double roomPercent() {
    double least = Double.POSITIVE_INFINITY;
    for (Held one : held) {
      least = Math.min(least, one.roomPercent());
    }
    return least;
  }

  /** What it is about, for people. */
  public String title() {
    return first().demand().title();
  }

  /** Words after the figure; empty for as fed. */
  public String basis() {
    return first().demand().basis();
  }

  /** The unit of the expected figure; empty for a plain quotient. */
  public String unit() {
    return first().unit().symbol();
  }

  /** On target and fresh, in that unit. */
  public double expected() {
    return first().expected();
  }

  /** Whether there may be more, or less, than is expected. */
  public Certainty certainty() {
    return first().expectedAs();
  }
}
