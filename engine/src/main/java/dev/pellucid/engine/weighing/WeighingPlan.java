package dev.pellucid.engine.weighing;

import dev.pellucid.engine.compute.Weighing;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A batch as one plant weighs and handles it.
 *
 * @param kg weighed, before overage and water
 * @param loads in which mixer, and how many; absent where the folder tells no mixer or not the
 *     densities; then all is one load
 * @param mix the lines of the mix in each load
 * @param coat the lines of the coat in each round of the coater
 * @param coatRounds how often the coater is filled
 * @param water where what each load gets is weighed, for each step that adds water
 * @param dryer absent where nothing is dried, or the plant tells no dryer for it
 */
public record WeighingPlan(
    double kg,
    Optional<Loads> loads,
    List<WeighingLine> mix,
    List<WeighingLine> coat,
    int coatRounds,
    List<Placing> water,
    Optional<InDryer> dryer) {
  public WeighingPlan {
    water = List.copyOf(water);
    mix = List.copyOf(mix);
    coat = List.copyOf(coat);
  }

  /** In how many loads the batch is mixed. */
  public int loadCount() {
    return loads.isPresent() ? loads.get().count() : 1;
  }

  /** How often a line is weighed out: for each load, or for each round of the coater. */
  public int weighings(Line line) {
    return line.place() == Line.Place.COAT ? coatRounds : loadCount();
  }

  /** What is weighed after all rounding, to compute the feed again. */
  public Weighing asRounded(ResolvedRecipe recipe) {
    double[] ratios = new double[recipe.lines().size()];
    Arrays.fill(ratios, 1);
    for (WeighingLine line : mix) {
      ratios[line.line().index()] = line.ratio();
    }
    for (WeighingLine line : coat) {
      ratios[line.line().index()] = line.ratio();
    }
    List<Double> inFeed = new ArrayList<>(ratios.length);
    List<Double> onTop = new ArrayList<>(ratios.length);
    for (Line line : recipe.lines()) {
      double ratio = ratios[line.index()];
      inFeed.add(line.share().kgPer100() * ratio);
      onTop.add(line.onTopKg(kg, weighings(line)) / kg * 100 * ratio);
    }
    return new Weighing(inFeed, onTop);
  }
}
