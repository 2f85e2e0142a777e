package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Dryer;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.IntoDryer;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Choices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Drying at a temperature at which no dryer of the plant works, where the plant tells its dryers.
 * Silent where the temperature is outside practice, which is told by itself.
 */
final class DryerNotAtPlant implements Rule {
  private static final Code CODE = new Code("dryer-not-at-plant");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Plant> plant = recipe.recipe().plant();
    if (plant.isEmpty()
        || plant.get().dryers().isEmpty()
        || ProcessBounds.of(recipe).isOutside(Step.DRY, Property.TEMPERATURE)) {
      return;
    }
    for (Pass pass : recipe.recipe().process().inOrder()) {
      Optional<Setting> temperature = pass.setting(Property.TEMPERATURE);
      if (pass.step() == Step.DRY
          && temperature.isPresent()
          && IntoDryer.chosen(plant.get(), pass).isEmpty()) {
        out.accept(finding(temperature.get(), plant.get()));
      }
    }
  }

  private static Finding finding(Setting temperature, Plant plant) {
    List<String> have = new ArrayList<>();
    for (Dryer dryer : plant.dryers()) {
      if (dryer.warmth().isPresent()) {
        have.add(dryer.title() + " at " + dryer.warmth().get().asWritten());
      }
    }
    return Finding.warning(
            CODE,
            temperature.span(),
            plant.title()
                + " has no dryer for "
                + Figures.plain(temperature.aim(), Unit.CELSIUS)
                + ", it has "
                + Choices.all(have))
        .seeing("plant written", plant.declared())
        .helping(
            "write the temperature that the dryer works at, or name the plant that makes this feed"
                + " in the head of the recipe")
        .helping("or correct the temperature of the dryer in plant/" + plant.name() + ".yaml");
  }
}
