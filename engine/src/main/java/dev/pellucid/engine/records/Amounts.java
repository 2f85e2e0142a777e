package dev.pellucid.engine.records;

import dev.pellucid.engine.records.Ledger.Page;
import dev.pellucid.engine.records.Ledger.Taken;
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
 * <p>They are reckoned in one pass, each batch after those that it takes. Records that are right
 * hold no circle. Where batches name each other as lots all the same, no kg is told of what passes
 * between them.
 */
final class Amounts {
  private final Descent descent;
  private final BitSet found = new BitSet();
  private final Set<String> holders = new LinkedHashSet<>();
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
    return holders;
  }

  boolean isIn(String batch) {
    return holders.contains(batch);
  }

  private void find(int place, int last) {
    Deque<Integer> next = new ArrayDeque<>(List.of(place));
    while (!next.isEmpty()) {
      for (int taker : descent.takers(next.remove())) {
        if (descent.isBeforeOrWith(taker, last) && !found.get(taker)) {
          found.set(taker);
          holders.add(descent.key(taker));
          next.add(taker);
        }
      }
    }
  }

  /** Places tell the order: what a batch takes is reckoned before it. */
  private void reckon(int of) {
    for (int at = found.nextSetBit(0); at >= 0; at = found.nextSetBit(at + 1)) {
      List<Taken> lines = descent.page(at).taken();
      int[] taken = descent.taken(at);
      Kilograms told = Kilograms.NONE;
      for (int i = 0; i < taken.length; i++) {
        Kilograms kg = lines.get(i).kg();
        told = told.plus(taken[i] == of ? kg : through(taken[i], kg, at));
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
    if (!found.get(from)) {
      return Kilograms.NONE;
    }
    if (descent.areTogether(from, to)) {
      return Kilograms.NOT_TOLD;
    }
    OptionalDouble made = descent.page(from).made();
    return in[from].part(
        kg.whole() && made.isPresent()
            ? OptionalDouble.of(kg.told() / made.getAsDouble())
            : OptionalDouble.empty());
  }
}
