package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Plant.Coater;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Locale;
import java.util.Optional;

/**
 * A coat that asks for more than the plant has for coating. A vacuum coater turns like a drum, and
 * by hand goes everywhere.
 */
final class CoaterNotAtPlant implements Rule {
  private static final Code CODE = new Code("coater-not-at-plant");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Setting> method = recipe.recipe().process().setting(Step.COAT, Property.METHOD);
    Optional<Plant> plant = recipe.recipe().plant();
    if (method.isPresent()
        && plant.isPresent()
        && plant.get().coater().isPresent()
        && !does(plant.get().coater().get(), method.get().manner())) {
      out.accept(finding(method.get(), plant.get(), plant.get().coater().get()));
    }
  }

  private static boolean does(Coater coater, String manner) {
    return switch (coater) {
      case VACUUM -> true;
      case DRUM -> !manner.equals("vacuum");
      case HAND -> manner.equals("hand");
    };
  }

  private static Finding finding(Setting method, Plant plant, Coater coater) {
    String has = coater.name().toLowerCase(Locale.ROOT);
    return Finding.warning(
            CODE,
            method.span(),
            "coat method is " + method.manner() + ", " + plant.title() + " coats by " + has)
        .seeing("plant written", plant.declared())
        .helping(
            "write coat method "
                + has
                + " and as much oil as that takes, or fix coater in plant/"
                + plant.name()
                + ".yaml");
  }
}
