package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Choices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A die that the plant does not have, where the plant tells its dies. */
final class DieNotAtPlant implements Rule {
  private static final Code CODE = new Code("die-not-at-plant");
  private static final double SAME_MM = 0.005;
  private static final int NEAR = 2;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Passes passes = recipe.recipe().process();
    Optional<Setting> die = passes.die();
    Optional<Plant> plant = recipe.recipe().plant();
    if (die.isPresent()
        && plant.isPresent()
        && !plant.get().dies().isEmpty()
        && !has(plant.get(), die.get().aim())
        && !DieForFish.isOfOtherFish(recipe)) {
      out.accept(finding(die.get(), plant.get()));
    }
  }

  private static boolean has(Plant plant, double hole) {
    for (double one : plant.dies()) {
      if (Math.abs(one - hole) < SAME_MM) {
        return true;
      }
    }
    return false;
  }

  private static Finding finding(Setting die, Plant plant) {
    List<String> near =
        plant.dies().stream()
            .sorted(Comparator.comparingDouble(one -> Math.abs(one - die.aim())))
            .limit(NEAR)
            .sorted()
            .map(one -> Figures.plain(one, Unit.MM))
            .toList();
    return Finding.warning(
            CODE, die.span(), plant.title() + " has no die of " + Figures.plain(die.aim(), Unit.MM))
        .seeing("plant written", plant.declared())
        .helping(
            "the nearest are "
                + Choices.of(near).replace(" or ", " and ")
                + "; add the die to plant/"
                + plant.name()
                + ".yaml where there is one");
  }
}
