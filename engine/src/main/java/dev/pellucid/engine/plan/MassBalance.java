package dev.pellucid.engine.plan;

import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Optional;

/**
 * Where the mass of a batch goes. Every row follows from the ones above, to the last decimal.
 *
 * @param weighed the recipe, before overage and water
 * @param handling overage weighed on top and expected to be lost; in none of the figures below
 * @param mix what is to be in the mixer
 * @param water added to the mix
 * @param steam taken up
 * @param evaporated in dryer and cooler before the coat goes on
 * @param kernel what is there when the coat goes on
 * @param coat what goes on the kernel
 * @param evaporatedCoated in a cooler after the coat
 * @param finished feed, before shrink
 * @param shrink dust, fines and start-up
 * @param bagged what reaches the bags
 */
public record MassBalance(
    Mass weighed,
    Mass handling,
    Mass mix,
    Mass water,
    Mass steam,
    Mass evaporated,
    Mass kernel,
    Mass coat,
    Mass evaporatedCoated,
    Mass finished,
    Mass shrink,
    Mass bagged) {

  /**
   * Adds up the tasks of a batch.
   *
   * @param bagged what must reach the bags, where the recipe tells it
   */
  static MassBalance of(
      WeighList list, List<Task> tasks, double shrinkShare, Optional<Mass> bagged) {
    int decimals = list.decimals();
    Mass mix = list.inFeed(Place.MIX);
    Mass coat = list.inFeed(Place.COAT);
    Mass water = added(tasks, Step.ADD_WATER, decimals);
    Mass steam = added(tasks, Step.CONDITION, decimals);
    int coating = coating(tasks);
    Mass evaporated = evaporated(tasks.subList(0, coating), decimals);
    Mass evaporatedCoated = evaporated(tasks.subList(coating, tasks.size()), decimals);
    Mass kernel = mix.plus(water).plus(steam).minus(evaporated);
    Mass finished = kernel.plus(coat).minus(evaporatedCoated);
    Mass shrink =
        bagged
            .map(finished::minus)
            .filter(kg -> !kg.isNegative())
            .orElseGet(() -> Mass.of(finished.asDouble() * shrinkShare, decimals));
    return new MassBalance(
        list.batch(),
        list.handling(),
        mix,
        water,
        steam,
        evaporated,
        kernel,
        coat,
        evaporatedCoated,
        finished,
        shrink,
        finished.minus(shrink));
  }

  /** The place of the task that puts the coat on; without one the end. */
  private static int coating(List<Task> tasks) {
    int place = 0;
    while (place < tasks.size() && tasks.get(place).step() != Step.COAT) {
      place++;
    }
    return place;
  }

  private static Mass evaporated(List<Task> tasks, int decimals) {
    return Mass.sum(tasks.stream().map(Task::evaporated), decimals);
  }

  private static Mass added(List<Task> tasks, Step step, int decimals) {
    return Mass.sum(tasks.stream().filter(task -> task.step() == step).map(Task::added), decimals);
  }

  /** Bagged kg per kg of recipe, a share. */
  public double yielded() {
    return bagged.asDouble() / weighed.asDouble();
  }
}
