package dev.pellucid.engine.compute;

import java.util.BitSet;

/**
 * What an ingredient leaves open of each of its contents, by the index of the nutrient. The answers
 * of one content share a byte, so that those of a whole feed are gone through quickly.
 */
final class Untold {
  static final int UNKNOWN = 1;
  static final int UNBOUNDED = 2;
  static final int MAYBE_MORE = 4;
  static final int MAYBE_LESS = 8;
  static final int SPREAD_ASSUMED = 16;
  static final int SPREAD_UNKNOWN = 32;

  /** Told for some species or some kind of process, and the recipe does not say its own. */
  static final int FEED_UNTOLD = 64;

  /** What a figure may be off by, or may vary by, without anyone knowing. */
  static final int ANY = UNKNOWN | UNBOUNDED | MAYBE_MORE | MAYBE_LESS | SPREAD_UNKNOWN;

  private final byte[] answers;

  Untold(int nutrients) {
    this.answers = new byte[nutrients];
  }

  /** Takes one answer down for some nutrients; only for who makes it. */
  Untold with(int answer, BitSet nutrients) {
    for (int i = nutrients.nextSetBit(0); i >= 0; i = nutrients.nextSetBit(i + 1)) {
      answers[i] |= (byte) answer;
    }
    return this;
  }

  /** The answers about one nutrient together. */
  int of(int nutrient) {
    return answers[nutrient];
  }

  boolean is(int answer, int nutrient) {
    return (answers[nutrient] & answer) != 0;
  }
}
