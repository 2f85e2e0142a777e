package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import java.util.List;
import java.util.Optional;

/**
 * The mass of a feed from the scale to the finished feed at one end, in kg per 100 kg of recipe (kg
 * weighed, before overage and water); moistures are shares.
 *
 * @param stages what each pass did, in order
 * @param mix what goes into the mixer, overage included
 * @param dryMatter of the mix, before the coat
 * @param waterAdded by add-water passes
 * @param steam taken up from steam
 * @param atDie the moisture at the die, or of the mix where there is none
 * @param kernel what is there when the coat goes on; without a coat the finished feed
 * @param kernelMoisture of the kernel
 * @param coat what goes on
 * @param finished mass of the finished feed, before shrink
 * @param moisture of the finished feed
 * @param moistureSet the last pass that brings the feed to a moisture of its own, whatever the
 *     water of its ingredients was
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
    Optional<MoistureSet> moistureSet,
    Optional<Obstacle> obstacle) {
  public Balance {
    stages = List.copyOf(stages);
  }

  /**
   * A moisture that a step aims at.
   *
   * @param aim the setting that says so
   * @param coated whether the coat is on the feed by then, so that its water is in the aim
   */
  public record MoistureSet(Pass by, Setting aim, boolean coated) {}

  /** Water that went off in all stages. */
  public double evaporated() {
    return stages.stream().mapToDouble(Stage::evaporated).sum();
  }
}
