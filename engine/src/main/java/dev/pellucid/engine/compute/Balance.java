package dev.pellucid.engine.compute;

import java.util.List;
import java.util.Optional;

/**
 * The mass of a feed from the scale to the finished feed at one end, in kg per 100 kg of recipe (kg
 * weighed, before overage and water); moistures are shares.
 *
 * @param stages what each pass did, in order
 * @param mix what goes into the mixer, overage included
 * @param dryMatter of the mix
 * @param waterAdded by add-water passes
 * @param steam taken up from steam
 * @param atDie the moisture at the die, or of the mix where there is none
 * @param kernel mass before coating
 * @param kernelMoisture before coating
 * @param coat what goes on
 * @param finished mass of the finished feed, before shrink
 * @param moisture of the finished feed
 * @param obstacle why the figures stop short, if they do
 */
public record Balance(
    List<Stage> stages,
    double mix,
    double dryMatter,
    double waterAdded,
    double steam,
    double atDie,
    double kernel,
    double kernelMoisture,
    double coat,
    double finished,
    double moisture,
    Optional<Obstacle> obstacle) {
  public Balance {
    stages = List.copyOf(stages);
  }

  /** Water that went off in all stages. */
  public double evaporated() {
    return stages.stream().mapToDouble(Stage::evaporated).sum();
  }
}
