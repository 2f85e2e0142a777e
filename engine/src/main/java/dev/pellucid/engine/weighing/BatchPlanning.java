package dev.pellucid.engine.weighing;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.data.Dryer;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Mixer;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One batch while it is brought onto the scales: loads first, then the small lines of a load with
 * their dilutions, then the large ones, less what dilutions take of them.
 */
final class BatchPlanning {
  private final WeighingPlanner at;
  private final Balance balance;
  private final double kg;
  private final double times;
  private final BitSet small;
  private final List<Line> mix = new ArrayList<>();
  private final List<Line> coat = new ArrayList<>();

  BatchPlanning(WeighingPlanner at, ComputedFeed feed, double kg) {
    this.at = at;
    this.balance = feed.balances().expected();
    this.kg = kg;
    this.times = kg / 100;
    this.small = SmallLines.of(feed);
    for (Line line : feed.recipe().taken()) {
      (line.place() == Place.MIX ? mix : coat).add(line);
    }
  }

  WeighingPlan plan() {
    Optional<Loads> loads = loads();
    int count = loads.isPresent() ? loads.get().count() : 1;
    int rounds = coatRounds();
    return new WeighingPlan(
        kg,
        loads,
        portion(mix, count, carrier(mix, false)),
        portion(coat, rounds, carrier(coat, true)),
        rounds,
        water(count),
        dryer());
  }

  private List<Placing> water(int loads) {
    List<Placing> water = new ArrayList<>();
    for (Stage stage : balance.stages()) {
      if (stage.pass().step() == Step.ADD_WATER) {
        water.add(at.macro().place(stage.added() * times / loads));
      }
    }
    return water;
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
        taken += weighed.dilution().isPresent() ? weighed.dilution().get().carried() : 0;
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
    Placing placing = at.micro().place(target);
    Optional<Dilution> dilution = Optional.empty();
    if (placing.isTooLittle() && target > 0 && carrier.isPresent()) {
      Line from = carrier.get();
      dilution = at.diluter().plan(target, portions, from, portion(from, portions) - taken);
    }
    return new WeighingLine(line, target, 0, placing, dilution);
  }

  private WeighingLine large(Line line, double target, double taken) {
    return new WeighingLine(
        line, target, taken, at.macro().place(target - taken), Optional.empty());
  }

  /** The largest line that is not weighed apart: dry for the mix, liquid for the coat. */
  private Optional<Line> carrier(List<Line> lines, boolean liquid) {
    Optional<Line> largest = Optional.empty();
    for (Line line : lines) {
      boolean fits = !small.get(line.index()) && line.material().isLiquid() == liquid;
      if (fits && (largest.isEmpty() || whole(line) > whole(largest.get()))) {
        largest = Optional.of(line);
      }
    }
    return largest;
  }

  private int coatRounds() {
    double most = at.plant().coaterLoad().orElse(Double.POSITIVE_INFINITY);
    return IntoDryer.rounds(
        balance.coat() > 0 ? (balance.kernel() + balance.coat()) * times : 0, most);
  }

  private Optional<InDryer> dryer() {
    Optional<Stage> drying = drying();
    if (drying.isEmpty()) {
      return Optional.empty();
    }
    Optional<Dryer> dryer = IntoDryer.chosen(at.plant(), drying.get().pass());
    return dryer.isPresent()
        ? Optional.of(IntoDryer.of(dryer.get(), drying.get(), times))
        : Optional.empty();
  }

  private Optional<Stage> drying() {
    for (Stage stage : balance.stages()) {
      if (stage.pass().step() == Step.DRY) {
        return Optional.of(stage);
      }
    }
    return Optional.empty();
  }

  /** The mixer that needs the fewest loads of those that a load fills; of equals the smaller. */
  private Optional<Loads> loads() {
    OptionalDouble dry = dryLitres();
    if (dry.isEmpty()) {
      return Optional.empty();
    }
    double wet = Math.max(wetLitres(), dry.getAsDouble());
    Optional<Loads> best = Optional.empty();
    for (Mixer mixer : at.plant().mixers()) {
      Loads loads = Loads.of(mixer, dry.getAsDouble(), wet);
      if (best.isEmpty() || loads.isBetterThan(best.get())) {
        best = Optional.of(loads);
      }
    }
    return best;
  }

  private OptionalDouble dryLitres() {
    double litres = 0;
    for (Line line : mix) {
      OptionalDouble perKg = litresPerKg(line.material());
      if (perKg.isEmpty()) {
        return OptionalDouble.empty();
      }
      litres += whole(line) * perKg.getAsDouble();
    }
    return OptionalDouble.of(litres);
  }

  private OptionalDouble litresPerKg(Material material) {
    Optional<Material.Single> single = material.single();
    return single.isPresent()
        ? litresPerKg(single.get().ingredient())
        : litresPerKg(material.parts());
  }

  private OptionalDouble litresPerKg(Ingredient ingredient) {
    OptionalDouble density = at.densities().of(ingredient);
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
    OptionalDouble density = at.densities().wetMash();
    boolean wet = balance.waterAdded() > 0 && density.isPresent();
    return wet ? (balance.mix() + balance.waterAdded()) * times / density.getAsDouble() : 0;
  }
}
