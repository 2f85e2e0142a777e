package dev.pellucid.engine.weighing;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Brings a batch onto a plant: loads first, then the small lines of a load with their dilutions,
 * then the large ones, less what dilutions take of them.
 */
public final class WeighingPlanner {
  private static final double MICRO_ERROR = 0.01;
  private static final double MACRO_ERROR = 0.01;
  private static final double DILUTED_PART = 0.1;

  private final ComputedFeed feed;
  private final Balance balance;
  private final Practice practice;
  private final Plant plant;
  private final double kg;
  private final double times;
  private final BitSet small;
  private final Weigher micro;
  private final Weigher macro;

  private WeighingPlanner(ComputedFeed feed, double kg, Plant plant, Practice practice) {
    this.feed = feed;
    this.balance = feed.balances().expected();
    this.practice = practice;
    this.plant = plant;
    this.kg = kg;
    this.times = kg / 100;
    this.small = SmallLines.of(feed);
    this.micro = weigher(BoundOf.WEIGHING_MICRO, MICRO_ERROR);
    this.macro = weigher(BoundOf.WEIGHING_MACRO, MACRO_ERROR);
  }

  /**
   * The plan of a batch; empty where the folder names no plant or the plant tells no scale.
   *
   * @param kg weighed, before overage and water
   */
  public static Optional<WeighingPlan> plan(ComputedFeed feed, double kg, FeedTables tables) {
    return tables
        .plant()
        .filter(plant -> !plant.scales().isEmpty() && kg > 0)
        .map(plant -> new WeighingPlanner(feed, kg, plant, tables.practice()).plan());
  }

  private Weigher weigher(BoundOf bound, double otherwise) {
    double allowed = practice.bound(bound).map(PracticeBound::high).orElse(otherwise);
    return new Weigher(plant.scales(), plant.mostWeighings(), allowed);
  }

  private WeighingPlan plan() {
    Optional<Loads> loads = loads();
    int count = loads.map(Loads::count).orElse(1);
    int rounds = coatRounds();
    return new WeighingPlan(
        kg,
        loads,
        portion(lines(Place.MIX), count, carrier(Place.MIX)),
        portion(lines(Place.COAT), rounds, carrier(Place.COAT)),
        rounds,
        trays());
  }

  private List<Line> lines(Place place) {
    return feed.recipe().lines().stream().filter(line -> line.place() == place).toList();
  }

  /** kg that the scales must show for one of so many portions. */
  private double portion(Line line, int portions) {
    return (line.share().kgPer100() * times + line.onTopKg(kg, portions)) / portions;
  }

  /** kg of the whole batch, weighed out at once. */
  private double whole(Line line) {
    return portion(line, 1);
  }

  /** The small lines first, then the carrier, less what dilutions take of it. */
  private List<WeighingLine> portion(List<Line> lines, int portions, Optional<Line> carrier) {
    List<WeighingLine> inOrder = new ArrayList<>();
    int last = -1;
    double taken = 0;
    for (Line line : lines) {
      if (carrier.isPresent() && carrier.get().index() == line.index()) {
        last = inOrder.size();
      } else {
        WeighingLine weighed = weighed(line, portions, carrier, taken);
        taken += weighed.dilution().map(Dilution::carried).orElse(0.0);
        inOrder.add(weighed);
      }
    }
    if (last >= 0) {
      Line from = lines.get(last);
      inOrder.add(last, large(from, portion(from, portions), taken));
    }
    return inOrder;
  }

  private WeighingLine weighed(Line line, int portions, Optional<Line> carrier, double taken) {
    double target = portion(line, portions);
    if (!small.get(line.index())) {
      return large(line, target, 0);
    }
    Placing placing = micro.place(target);
    Optional<Dilution> dilution =
        placing.isTooLittle() && target > 0
            ? carrier.flatMap(
                from -> diluter().plan(target, portions, from, portion(from, portions) - taken))
            : Optional.empty();
    return new WeighingLine(line, target, 0, placing, dilution);
  }

  private WeighingLine large(Line line, double target, double taken) {
    return new WeighingLine(line, target, taken, macro.place(target - taken), Optional.empty());
  }

  private Diluter diluter() {
    double part =
        practice.bound(BoundOf.DILUTION_STEP).map(PracticeBound::low).orElse(DILUTED_PART);
    return new Diluter(micro, part > 0 ? 1 / part : 1 / DILUTED_PART);
  }

  /** The largest line that is not weighed apart: dry for the mix, liquid for the coat. */
  private Optional<Line> carrier(Place place) {
    return lines(place).stream()
        .filter(
            line -> !small.get(line.index()) && line.material().isLiquid() == (place == Place.COAT))
        .max(Comparator.comparingDouble(this::whole));
  }

  private int coatRounds() {
    double most = plant.coaterLoad().orElse(Double.POSITIVE_INFINITY);
    return rounds(balance.coat() > 0 ? (balance.kernel() + balance.coat()) * times : 0, most);
  }

  private static int rounds(double kg, double most) {
    return (int) Math.max(1, Math.min(Integer.MAX_VALUE, Closeness.up(kg / most)));
  }

  private Optional<Trays> trays() {
    Optional<Stage> drying =
        balance.stages().stream().filter(stage -> stage.pass().step() == Step.DRY).findFirst();
    if (drying.isEmpty() || plant.trayLoad().isEmpty()) {
      return Optional.empty();
    }
    double load = plant.trayLoad().getAsDouble();
    int count = rounds(drying.get().before() * times, load);
    return Optional.of(new Trays(load, count, rounds(count, plant.trays().orElse(count))));
  }

  /** The mixer that needs the fewest loads of those that a load fills; of equals the smaller. */
  private Optional<Loads> loads() {
    OptionalDouble dry = dryLitres();
    if (dry.isEmpty()) {
      return Optional.empty();
    }
    double wet = Math.max(wetLitres(), dry.getAsDouble());
    Comparator<Loads> best =
        Comparator.<Loads, Boolean>comparing(loads -> !loads.fills())
            .thenComparing(Loads::count)
            .thenComparing(loads -> loads.mixer().litres());
    return plant.mixers().stream().map(mixer -> Loads.of(mixer, dry.getAsDouble(), wet)).min(best);
  }

  private OptionalDouble dryLitres() {
    double litres = 0;
    for (Line line : lines(Place.MIX)) {
      OptionalDouble perKg = litresPerKg(line.material());
      if (perKg.isEmpty()) {
        return OptionalDouble.empty();
      }
      litres += whole(line) * perKg.getAsDouble();
    }
    return OptionalDouble.of(litres);
  }

  private OptionalDouble litresPerKg(Material material) {
    return material.opened(
        single -> litresPerKg(single.ingredient()), premix -> litresPerKg(premix.parts()));
  }

  private OptionalDouble litresPerKg(Ingredient ingredient) {
    OptionalDouble density = practice.densities().of(ingredient);
    return density.isPresent()
        ? OptionalDouble.of(1 / density.getAsDouble())
        : OptionalDouble.empty();
  }

  private OptionalDouble litresPerKg(List<ResolvedPremix.Part> parts) {
    double litres = 0;
    for (ResolvedPremix.Part part : parts) {
      OptionalDouble perKg = litresPerKg(part.material());
      if (perKg.isEmpty()) {
        return OptionalDouble.empty();
      }
      litres += part.share().part() * perKg.getAsDouble();
    }
    return OptionalDouble.of(litres);
  }

  /** The mix with the water that is added to it; zero where none is, or its density is untold. */
  private double wetLitres() {
    OptionalDouble density = practice.densities().wetMash();
    boolean wet = balance.waterAdded() > 0 && density.isPresent();
    return wet ? (balance.mix() + balance.waterAdded()) * times / density.getAsDouble() : 0;
  }
}
