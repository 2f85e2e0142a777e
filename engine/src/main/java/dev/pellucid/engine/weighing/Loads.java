package dev.pellucid.engine.weighing;

import dev.pellucid.engine.data.Mixer;
import dev.pellucid.measure.Closeness;

/**
 * A batch in equal loads of one mixer.
 *
 * @param count how many
 * @param dryFill the part of the mixer that the dry load takes
 * @param wetFill the part that it takes with its water; the dry fill where no water is added
 */
public record Loads(Mixer mixer, int count, double dryFill, double wetFill) {
  /** As few loads as the mixer takes. */
  static Loads of(Mixer mixer, double dryLitres, double wetLitres) {
    double most = mixer.litres() * mixer.fillHigh();
    double needed = Closeness.up(Math.max(dryLitres, wetLitres) / most);
    int count = (int) Math.max(1, Math.min(needed, Integer.MAX_VALUE));
    return new Loads(
        mixer, count, dryLitres / count / mixer.litres(), wetLitres / count / mixer.litres());
  }

  /**
   * Whether it is to be taken rather than another: where a load is enough to be mixed, then for
   * fewer loads, then for the smaller mixer.
   */
  boolean isBetterThan(Loads other) {
    if (fills() != other.fills()) {
      return fills();
    }
    return count == other.count ? mixer.litres() < other.mixer.litres() : count < other.count;
  }

  /** Whether a load is enough to be mixed; the dry blend is what must be even. */
  public boolean fills() {
    return Closeness.isAtLeast(dryFill, mixer.fillLow());
  }
}
