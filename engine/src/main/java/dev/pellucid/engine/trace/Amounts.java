package dev.pellucid.engine.trace;

import dev.pellucid.engine.trace.Page.Taken;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * How many kg of one number are in the batches that hold it, as weighed in at its first weighing:
 * of a batch that was taken in part, that part of what it holds, water and losses apart.
 *
 * <p>What came with the part bag of another batch is in one bag of its own. So it is surely in the
 * batch whose bag was filled up with it, and in no other that took of that batch: who took of it
 * may have got that bag, or not.
 *
 * <p>They are reckoned in one pass, each batch after those that it takes. Records that are right
 * hold no circle. Where batches name each other as lots all the same, no kg is told of what passes
 * between them.
 */
final class Amounts {
  private final Descent descent;
  private final BitSet mixed = new BitSet();
  private final BitSet bagged = new BitSet();
  private final Set<String> inMix = new LinkedHashSet<>();
  private final Set<String> inBags = new LinkedHashSet<>();
  private final Kilograms[] in;

  private Amounts(Descent descent, OptionalInt place, int last) {
    this.descent = descent;
    this.in = new Kilograms[descent.size()];
    Arrays.fill(in, Kilograms.NONE);
    if (place.isPresent()) {
      find(place.getAsInt(), last);
      reckon(place.getAsInt());
    }
  }

  /** Of a number, in every batch. */
  static Amounts of(Descent descent, String key) {
    return new Amounts(descent, descent.place(key), descent.size() - 1);
  }

  /** Of a number, in one batch and in those through which it came there. */
  static Amounts in(Descent descent, String key, Page batch) {
    return new Amounts(descent, descent.place(key), descent.of(batch));
  }

  /** The batches that hold the number, through any others; the number itself only in a circle. */
  Set<String> holders() {
    Set<String> holders = new LinkedHashSet<>(inMix);
    holders.addAll(inBags);
    return holders;
  }

  /** Those in which it was in the mixer. */
  Set<String> inMix() {
    return inMix;
  }

  /** Those whose bags were begun with a part bag of it, or of a batch that has it in its mix. */
  Set<String> inBags() {
    return inBags;
  }

  boolean isIn(String batch) {
    return inMix.contains(batch) || inBags.contains(batch);
  }

  private void find(int place, int last) {
    Deque<Integer> next = new ArrayDeque<>(List.of(place));
    while (!next.isEmpty()) {
      int from = next.remove();
      for (int taker : descent.takers(from)) {
        if (descent.isBeforeOrWith(taker, last) && found(from, taker)) {
          next.add(taker);
        }
      }
    }
  }

  /** Whether it was found to be in the mix of a batch just now. */
  private boolean found(int from, int taker) {
    boolean first = false;
    List<Taken> lines = descent.page(taker).taken();
    int[] taken = descent.taken(taker);
    for (int i = 0; i < taken.length; i++) {
      if (taken[i] == from && lines.get(i).isInBagsOnly()) {
        bagged.set(taker);
        inBags.add(descent.key(taker));
      } else if (taken[i] == from && !mixed.get(taker)) {
        mixed.set(taker);
        first = inMix.add(descent.key(taker));
      }
    }
    return first;
  }

  /** Places tell the order: what a batch takes is reckoned before it. */
  private void reckon(int of) {
    for (int at = mixed.nextSetBit(0); at >= 0; at = mixed.nextSetBit(at + 1)) {
      List<Taken> lines = descent.page(at).taken();
      int[] taken = descent.taken(at);
      Kilograms told = Kilograms.NONE;
      for (int i = 0; i < taken.length; i++) {
        Kilograms kg = lines.get(i).kg();
        if (!lines.get(i).isInBagsOnly()) {
          told = told.plus(taken[i] == of ? kg : through(taken[i], kg, at));
        }
      }
      in[at] = told;
    }
  }

  /** kg of the number that come into a batch with another batch that it takes. */
  Kilograms through(Taken taken, Page page) {
    OptionalInt from = descent.place(taken.key());
    return from.isPresent()
        ? through(from.getAsInt(), taken.kg(), descent.of(page))
        : Kilograms.NONE;
  }

  private Kilograms through(int from, Kilograms kg, int to) {
    if (!mixed.get(from)) {
      return Kilograms.NONE;
    }
    if (descent.areTogether(from, to)) {
      return Kilograms.NOT_TOLD;
    }
    return in[from].part(part(kg, descent.page(from).made()));
  }

  /** What part of a batch so many kg of it are. */
  static OptionalDouble part(Kilograms kg, OptionalDouble made) {
    return kg.whole() && made.isPresent()
        ? OptionalDouble.of(kg.told() / made.getAsDouble())
        : OptionalDouble.empty();
  }
}
