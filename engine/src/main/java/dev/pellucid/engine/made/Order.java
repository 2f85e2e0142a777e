package dev.pellucid.engine.made;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.floor.FloorPlan;
import dev.pellucid.engine.floor.SmallLines;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a batch was to be made of, in kg for its size, overage of both kinds included.
 *
 * @param feed as planned; absent for a premix
 */
public record Order(String code, double kg, List<Ask> asks, Optional<ComputedFeed> feed) {
  public Order {
    asks = List.copyOf(asks);
  }

  /**
   * One line.
   *
   * @param inFeed the part of its weight that is expected in the feed; the rest is lost in handling
   * @param micro whether it is weighed apart
   */
  public record Ask(
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
  public static Order of(ComputedFeed feed, double kg, Optional<FloorPlan> floor) {
    List<Ask> asks =
        feed.recipe().lines().stream()
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
    return new Order(feed.recipe().code(), kg, asks, Optional.of(feed));
  }

  public static Order of(ResolvedPremix premix, double kg) {
    List<Ask> asks = new ArrayList<>();
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
    return new Order(premix.code(), kg, asks, Optional.empty());
  }

  private static Ask ask(
      int index,
      Place place,
      Material material,
      double share,
      double onTop,
      boolean micro,
      Span written) {
    double kg = share + onTop;
    return new Ask(index, place, material, kg, kg > 0 ? share / kg : 1, micro, written);
  }

  /** The line of a name; an ingredient under a former name too. */
  public Optional<Ask> named(String name) {
    return asks.stream().filter(ask -> ask.material().isCalled(name)).findFirst();
  }
}
