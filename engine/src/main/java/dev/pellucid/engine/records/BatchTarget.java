package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.weighing.SmallLines;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a batch was to be made of, in kg for its size, overage of both kinds included.
 *
 * @param feed as planned; absent for a premix
 * @param plant where it is made, where that is told
 * @param dose of a premix, as a share of the feed, where it is told
 */
public record BatchTarget(
    String code,
    double kg,
    List<TargetWeight> asks,
    Optional<ComputedFeed> feed,
    Optional<Plant> plant,
    OptionalDouble dose) {
  public BatchTarget {
    asks = List.copyOf(asks);
  }

  /**
   * One line.
   *
   * @param inFeed the part of its weight that is expected in the feed; the rest is lost in handling
   * @param micro whether it is weighed apart
   * @param dilution what the scales show of it, where it is diluted first
   */
  public record TargetWeight(
      int index,
      Place place,
      Material material,
      double kg,
      double inFeed,
      boolean micro,
      Span written,
      Optional<Diluted> dilution) {
    TargetWeight weighing(double other) {
      return new TargetWeight(index, place, material, other, inFeed, micro, written, dilution);
    }

    /** What its lots are of: an ingredient, or the code of a premix or recipe. */
    String lotsOf() {
      return material.opened(Material.Single::name, ResolvedPremix::code);
    }
  }

  /**
   * So many kg of a dilution.
   *
   * @param each into each load, or round of the coater
   * @param all of them together
   */
  public record Diluted(double each, double all) {
    static Optional<Diluted> of(WeighingPlan plan, Line line) {
      return Stream.concat(plan.mix().stream(), plan.coat().stream())
          .filter(one -> one.line().index() == line.index())
          .flatMap(one -> one.dilution().stream())
          .map(it -> it.take().total())
          .map(each -> new Diluted(each, each * plan.weighings(line)))
          .findFirst();
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
                        line.name(),
                        floor.flatMap(plan -> Diluted.of(plan, line))))
            .toList();
    return new BatchTarget(
        feed.recipe().code(),
        kg,
        asks,
        Optional.of(feed),
        feed.recipe().plant(),
        OptionalDouble.empty());
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
              part.name(),
              Optional.empty()));
    }
    return new BatchTarget(
        premix.code(),
        kg,
        asks,
        Optional.empty(),
        premix.plant(),
        premix.dose().stream().mapToDouble(Share::part).findFirst());
  }

  private static TargetWeight ask(
      int index,
      Place place,
      Material material,
      double share,
      double onTop,
      boolean micro,
      Span written,
      Optional<Diluted> dilution) {
    double kg = share + onTop;
    double inFeed = kg > 0 ? share / kg : 1;
    return new TargetWeight(index, place, material, kg, inFeed, micro, written, dilution);
  }

  /** The same as it is shown on the scales: so many kg for all lines of a name. */
  public BatchTarget weighing(Map<String, Double> totals) {
    Map<String, Double> asked = new HashMap<>();
    asks.forEach(ask -> asked.merge(ask.material().name(), ask.kg(), Double::sum));
    List<TargetWeight> shown = new ArrayList<>();
    for (TargetWeight ask : asks) {
      double whole = asked.getOrDefault(ask.material().name(), 0.0);
      double total = totals.getOrDefault(ask.material().name(), whole);
      shown.add(whole > 0 ? ask.weighing(ask.kg() / whole * total) : ask);
    }
    return new BatchTarget(code, kg, shown, feed, plant, dose);
  }

  /** The line of a name; an ingredient under a former name too. */
  public Optional<TargetWeight> named(String name) {
    return asks.stream().filter(ask -> ask.material().isCalled(name)).findFirst();
  }
}
