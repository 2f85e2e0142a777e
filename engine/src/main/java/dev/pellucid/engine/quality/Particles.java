package dev.pellucid.engine.quality;

/**
 * How even the very best mixing leaves a thing that comes in grains.
 *
 * <p>A mixer can do no better than chance. In samples that hold {@code n} grains on average their
 * number varies by {@code sqrt(n)} (Poisson), so the least coefficient of variation is {@code 1 /
 * sqrt(n)}: 100 grains give 10 %, 400 give 5 % (Zinn, A Guide to Feed Mixing, UC Davis). Neither
 * time nor a pre-blend changes the number of grains.
 *
 * @param number on average in one sample, here one meal of one fish; more than zero
 */
public record Particles(double number) {
  private static final double MICROLITRES_A_LITRE = 1e6;

  public Particles {
    if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("not a number of particles: " + number);
    }
  }

  /**
   * In a meal.
   *
   * @param meal kg of feed
   * @param dose kg of the stuff per kg of feed
   * @param particle kg of one grain
   */
  public static Particles in(double meal, double dose, double particle) {
    return new Particles(meal * dose / particle);
  }

  /** The least coefficient of variation between meals, a share. */
  public double leastVariation() {
    return 1 / Math.sqrt(number);
  }

  /** The particles that a coefficient of variation takes, a share. */
  public static Particles neededFor(double variation) {
    return new Particles(1 / (variation * variation));
  }

  /**
   * The mass in kg of a ball.
   *
   * @param diameter mm
   * @param density kg per litre of the grain itself
   */
  public static double massOfBall(double diameter, double density) {
    return Math.PI / 6 * diameter * diameter * diameter * density / MICROLITRES_A_LITRE;
  }

  /** The diameter in mm of a ball of so many kg and kg per litre. */
  public static double diameterOfBall(double mass, double density) {
    return Math.cbrt(mass * MICROLITRES_A_LITRE / density * 6 / Math.PI);
  }
}
