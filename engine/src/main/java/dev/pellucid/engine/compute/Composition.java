package dev.pellucid.engine.compute;

import dev.pellucid.engine.quantity.Dense;
import java.util.List;

/**
 * The contents of one ingredient for one species and one kind of process, dense by nutrient, per kg
 * as fed in the base of each kind.
 *
 * @param expected the value; 0 for {@code below X} and for what is absent
 * @param low the least there can be: the value; 0 for {@code below X} and for what is absent
 * @param high the most there can be: the value; X for {@code below X}; for what is absent the room
 *     that the known parts leave
 * @param spread one standard deviation between lots of what is told; 0 where none is known
 * @param net for each nutrient, by how much it moves with each content that is told: 1 with itself
 *     where it is told, the net factors where it follows from others, none where it is unknown. In
 *     gross energy protein stands with 6.4 kJ/g, since what is protein is not carbohydrate
 * @param untold what is not told of each content
 * @param stability the index of the class in {@link Retentions}, 0 for stable
 * @param decaying what there is of a class other than stable
 * @param derived what follows from nutrients of this ingredient that decay, in an order in which
 *     each comes after those it follows from
 */
public record Composition(
    Dense expected,
    Dense low,
    Dense high,
    Dense spread,
    List<List<Derived.Term>> net,
    Untold untold,
    List<Integer> stability,
    List<Decaying> decaying,
    List<Derived> derived) {
  public Composition {
    net = List.copyOf(net);
    stability = List.copyOf(stability);
    decaying = List.copyOf(decaying);
    derived = List.copyOf(derived);
  }

  /** Whether it is absent and does not follow from what is there. */
  public boolean isUnknown(int nutrient) {
    return untold.is(Untold.UNKNOWN, nutrient);
  }

  /** Whether it is unknown and nothing bounds it: {@code high} is 0 there and means nothing. */
  public boolean isUnbounded(int nutrient) {
    return untold.is(Untold.UNBOUNDED, nutrient);
  }

  /**
   * Whether there may be more than expected: of what is unknown and has room, what is told as below
   * a figure, and what follows from these.
   */
  public boolean mayBeMore(int nutrient) {
    return untold.is(Untold.MAYBE_MORE, nutrient);
  }

  /** Whether there may be less than expected. */
  public boolean mayBeLess(int nutrient) {
    return untold.is(Untold.MAYBE_LESS, nutrient);
  }

  /** Whether its spread is the default of practice. */
  public boolean isSpreadAssumed(int nutrient) {
    return untold.is(Untold.SPREAD_ASSUMED, nutrient);
  }

  /** Whether it has content and no spread at all. */
  public boolean isSpreadUnknown(int nutrient) {
    return untold.is(Untold.SPREAD_UNKNOWN, nutrient);
  }

  /** A nutrient and the class that says what is kept of it. */
  public record Decaying(int nutrient, int stability) {}

  /** {@code constant + Σ factor × nutrient}. */
  public record Derived(int nutrient, double constant, List<Term> terms) {
    public Derived {
      terms = List.copyOf(terms);
    }

    /**
     * The figure, never below zero.
     *
     * @param adding where the terms are read that add to it
     * @param taking where those are read that take from it
     */
    public double value(double[] adding, double[] taking) {
      return Math.max(0, sum(adding, taking));
    }

    /** The same before it is held at zero. */
    double sum(double[] adding, double[] taking) {
      double value = constant;
      for (Term term : terms) {
        value += term.factor() * (term.factor() >= 0 ? adding : taking)[term.nutrient()];
      }
      return value;
    }

    /** {@code factor × nutrient}, by its index. */
    public record Term(double factor, int nutrient) {}
  }
}
