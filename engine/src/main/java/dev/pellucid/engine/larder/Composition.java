package dev.pellucid.engine.larder;

import dev.pellucid.engine.quantity.Dense;
import java.util.BitSet;
import java.util.List;

/**
 * The contents of one ingredient for one species and one kind of process, dense by nutrient, per kg
 * as fed in the base of each kind.
 *
 * @param low the least there can be: the value; 0 for {@code below X} and for what is absent
 * @param high the most there can be: the value; X for {@code below X}; for what is absent the room
 *     that the known parts leave
 * @param spread one standard deviation between lots; 0 where none is known
 * @param unknown what is absent and does not follow from what is there
 * @param unbounded what is unknown and nothing bounds: {@code high} is 0 there and means nothing
 * @param spreadAssumed whose spread is the default of practice
 * @param spreadUnknown who has content and no spread at all
 * @param stability the index of the class in {@link Retentions}, 0 for stable
 * @param derived what follows from other nutrients of this ingredient, in an order in which each
 *     comes after those it follows from
 */
public record Composition(
    Dense low,
    Dense high,
    Dense spread,
    BitSet unknown,
    BitSet unbounded,
    BitSet spreadAssumed,
    BitSet spreadUnknown,
    List<Integer> stability,
    List<Derived> derived) {
  public Composition {
    stability = List.copyOf(stability);
    derived = List.copyOf(derived);
  }

  /** {@code constant + Σ factor × nutrient}. */
  public record Derived(int nutrient, double constant, List<Term> terms) {
    public Derived {
      terms = List.copyOf(terms);
    }

    /** {@code factor × nutrient}, by its index. */
    public record Term(double factor, int nutrient) {}
  }
}
