package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.weighing.SmallLines;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a batch was to be made of, in kg for its size, overage of both kinds included.
 *
 * @param feed as planned; absent for a premix
 * @param plant where it is made, where that is told
 */
public record BatchTarget(
    String code,
    double kg,
    List<TargetWeight> asks,
    Optional<ComputedFeed> feed,
    Optional<Plant> plant) {
  public BatchTarget {
    asks = List.copyOf(asks);
  }

  /**
   * One line.
   *
   * @param inFeed the part of its weight that is expected in the feed; the rest is lost in handling
   * @param micro whether it is weighed apart
   */
  public record TargetWeight(
      int index,
      Place place,
      Material material,
      double kg,
      double inFeed,
      boolean micro,
      Span written) {
    /** What its lots are of: an ingredient, or the code of a premix or recipe. */
    String lotsOf() {
      return material.opened(Material.Single::name, ResolvedPremix::code);
    }
  }

  /**
   * A batch of a feed.
   *
   * @param floor how it is brought onto the plant, where the folder tells one
   */
  public static BatchTarget of(ComputedFeed feed, double kg, Optional<WeighingPlan> floor) {
    List<TargetWeight> asks =
        feed.recipe().taken().stream()
            .map(
                line ->
                    ask(
                        line.index(),
                        line.place(),
                        line.material(),
                        line.share().kgPer100() * kg / 100,
                        line.onTopKg(kg, floor.map(plan -> plan.weighings(line)).orElse(1)),
                        SmallLines.has(feed, line),
                        line.name()))
            .toList();
    return new BatchTarget(
        feed.recipe().code(), kg, asks, Optional.of(feed), feed.recipe().plant());
  }

  public static BatchTarget of(ResolvedPremix premix, double kg) {
    List<TargetWeight> asks = new ArrayList<>();
    for (ResolvedPremix.Part part : premix.parts()) {
      asks.add(
          ask(
              asks.size(),
              Place.MIX,
              part.material(),
              part.share().part() * kg,
              part.onTop().part() * kg,
              true,
              part.name()));
    }
    return new BatchTarget(premix.code(), kg, asks, Optional.empty(), premix.plant());
  }

  private static TargetWeight ask(
      int index,
      Place place,
      Material material,
      double share,
      double onTop,
      boolean micro,
      Span written) {
    double kg = share + onTop;
    return new TargetWeight(index, place, material, kg, kg > 0 ? share / kg : 1, micro, written);
  }

  /** The line of a name; an ingredient under a former name too. */
  public Optional<TargetWeight> named(String name) {
    return asks.stream().filter(ask -> ask.material().isCalled(name)).findFirst();
  }
}
