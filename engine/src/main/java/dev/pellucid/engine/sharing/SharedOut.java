package dev.pellucid.engine.sharing;

import dev.pellucid.engine.leastcost.Portion.Settled;
import dev.pellucid.engine.sharing.Wanted.Due;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What came of sharing out. Money is in the currency of the folder.
 *
 * @param why nothing is proven, in a sentence; empty where something is
 * @param money for all that is made
 * @param feeds in the order in which they were asked
 * @param supplies of what is short, in the order in which they were asked
 * @param lacks how much more of each would let all be made; none where all is made
 */
public record SharedOut(
    Standing standing,
    String why,
    Money money,
    List<SharedFeed> feeds,
    List<SharedSupply> supplies,
    SortedMap<String, Double> lacks) {
  public SharedOut {
    feeds = List.copyOf(feeds);
    supplies = List.copyOf(supplies);
    lacks = Collections.unmodifiableSortedMap(new TreeMap<>(lacks));
  }

  /** What there is to say. */
  public enum Standing {
    /** All is made of what there is. */
    ALL_MADE,
    /** Not all can be made. */
    SOME_MADE,
    /** Nothing could be proven. */
    NOT_PROVEN
  }

  static SharedOut notProven(String why) {
    return new SharedOut(
        Standing.NOT_PROVEN, why, new Money(0, 0, 0, 0), List.of(), List.of(), new TreeMap<>());
  }

  /**
   * What all that is made costs.
   *
   * @param now by the recipes as they stand, whether there is enough for them or not
   * @param then by the recipes as they would be
   * @param least with shares that are not rounded
   * @param plenty if nothing were short
   */
  public record Money(double now, double then, double least, double plenty) {}

  /**
   * One feed.
   *
   * @param made what of it is made, in the order of what was wanted
   * @param settled its recipe; empty where nothing of it is made
   * @param takesNow kg of all ingredients for what is made, by the recipe as it stands
   * @param takesThen the same by the recipe as it would be
   */
  public record SharedFeed(
      Wanted wanted,
      List<Due> made,
      Optional<Settled> settled,
      SortedMap<String, Double> takesNow,
      SortedMap<String, Double> takesThen) {
    public SharedFeed {
      made = List.copyOf(made);
      takesNow = Collections.unmodifiableSortedMap(new TreeMap<>(takesNow));
      takesThen = Collections.unmodifiableSortedMap(new TreeMap<>(takesThen));
    }

    /** What is made of it. */
    public double kg() {
      return made.stream().mapToDouble(Due::kg).sum();
    }

    /** What cannot be made of it. */
    public double unmade() {
      return Math.max(0, wanted.kg() - kg());
    }

    /** Money per kg in the bags, as the recipe stands. */
    public double costNow() {
      return wanted.posed().recipe().feed().orElseThrow().costPerKg();
    }

    /** Money per kg in the bags, as it would be. */
    public double costThen() {
      return settled.isPresent() ? settled.get().feed().costPerKg() : costNow();
    }
  }

  /**
   * What is short.
   *
   * @param takenNow kg that the recipes as they stand would take for what is made
   * @param taken kg that they take then
   * @param spared kg of it that premixes bring which are there already
   * @param worth of a kg more; empty where none is short of it
   */
  public record SharedSupply(
      Supply supply, double takenNow, double taken, double spared, Optional<Worth> worth) {
    /** What may be taken of it, what premixes bring that are there included. */
    public double there() {
      return supply.kg() + spared;
    }

    /** What is left of it. */
    public double left() {
      return Math.max(0, there() - taken);
    }

    /** Whether the recipes as they stand would take more than there is. */
    public boolean isOver() {
      return takenNow > there();
    }
  }

  /**
   * What more of it is worth.
   *
   * @param perKg money by which all costs less with a kg more, its price paid
   * @param from kg that there would be, from which on that holds, to one percent
   * @param to kg until which it holds
   * @param probed kg more with which it was solved again, to see that it is so
   */
  public record Worth(double perKg, double from, double to, double probed) {
    /** The same told without so many kg that are there for some alone. */
    Worth without(double kg) {
      return new Worth(perKg, Math.max(0, from - kg), Math.max(0, to - kg), probed);
    }
  }
}
