package dev.pellucid.engine.quality;

/**
 * How much of a sample of pellets is still pellets after the tumbling box: percent retained on the
 * sieve (ASAE S269, from memory; box and times as Winowiski prints them: 500 g, 50 turns a minute,
 * 10 min).
 *
 * @param before kg that went into the box, cooled and screened
 * @param retained kg left on the screen
 */
public record Durability(double before, double retained) {
  public Durability {
    if (!(before > 0 && retained >= 0 && retained <= before)) {
      throw new IllegalArgumentException("not a durability: " + retained + " of " + before);
    }
  }

  /** A share. */
  public double share() {
    return retained / before;
  }
}
