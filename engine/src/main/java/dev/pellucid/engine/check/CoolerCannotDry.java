package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;

/**
 * A cooler that is to take off more water than the heat of the pellet can evaporate. Silent where
 * that heat hangs on a temperature that cannot be meant.
 */
final class CoolerCannotDry implements Rule {
  private static final Code CODE = new Code("cooler-cannot-dry");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    ProcessBounds bounds = ProcessBounds.of(recipe);
    if (bounds.isOutside(Step.PELLET, Property.TEMPERATURE)
        || bounds.isOutside(Step.COOL, Property.TEMPERATURE)) {
      return;
    }
    for (Stage stage : recipe.balances().expected().stages()) {
      if (stage.pass().step() == Step.COOL
          && stage.evaporable().isPresent()
          && Closeness.isAbove(stage.evaporated(), stage.evaporable().getAsDouble())) {
        out.accept(finding(stage));
      }
    }
  }

  private static Finding finding(Stage stage) {
    double most = stage.evaporable().orElse(0);
    Span span =
        stage.pass().setting(Property.MOISTURE).map(Setting::span).orElse(stage.pass().span());
    Figures.Pair figures = Figures.apart(stage.evaporated(), most, 1);
    return Finding.error(
            CODE,
            span,
            "cool is to take "
                + figures.value()
                + " kg of water off 100 kg of recipe, the heat of the pellet drives off "
                + figures.other()
                + " kg")
        .helping("add a dry step before cool, or take on less water and steam");
  }
}
