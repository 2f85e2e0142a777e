package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Optional;

/**
 * An approved feed that goes into the bag as warm as it left the die, the steam or the dryer. Its
 * water condenses on the inside of the bag, and there it moulds. Ten degrees over the air are let
 * pass, as coolers leave them.
 */
final class PackedWarm implements Rule {
  private static final Code CODE = new Code("packed-warm");
  private static final double MOST_OVER_AIR = 10;
  private static final double AIR_UNTOLD = 25;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (!recipe.recipe().isApproved()) {
      return;
    }
    double air = recipe.recipe().plant().map(plant -> plant.airTemperature()).orElse(AIR_UNTOLD);
    Pass warmed = null;
    double temperature = air;
    for (Pass pass : recipe.recipe().process().inOrder()) {
      Optional<Setting> told = pass.setting(Property.TEMPERATURE);
      if (pass.step() == Step.COOL) {
        // One without a temperature is asked for it, and counts as one that cools.
        warmed = told.isPresent() ? pass : null;
        temperature = told.isPresent() ? told.get().aim() : air;
      } else if ((pass.step().heats() || pass.step() == Step.DRY) && told.isPresent()) {
        warmed = pass;
        temperature = told.get().aim();
      } else if (pass.step().ends()) {
        if (warmed != null && Closeness.isAbove(temperature, air + MOST_OVER_AIR)) {
          out.accept(finding(pass, warmed, temperature, air));
        }
        return;
      }
    }
  }

  private static Finding finding(Pass packed, Pass warmed, double temperature, double air) {
    boolean cooled = warmed.step() == Step.COOL;
    String warm = Figures.plain(temperature, Unit.CELSIUS);
    String aired = Figures.plain(air, Unit.CELSIUS);
    return Finding.warning(
            CODE,
            packed.span(),
            "the feed is packed at "
                + warm
                + ", as "
                + warmed.word()
                + " leaves it, in air of "
                + aired)
        .seeing(warmed.word() + " written", warmed.span())
        .noting("warm feed sweats in the bag and moulds")
        .helping(
            cooled
                ? "cool it further, to within 10 °C of the air"
                : "add a line before "
                    + packed.word()
                    + ": cool temperature 25 °C, with what your cooler or a night on trays reaches");
  }
}
