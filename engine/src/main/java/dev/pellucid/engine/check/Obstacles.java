package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Obstacle;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.util.function.Consumer;

/** A process that cannot be reckoned through: no figure of the feed can be told. */
final class Obstacles implements Rule {
  private static final Code CODE = new Code("impossible-process");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(Inspection recipe, Consumer<Finding> out) {
    recipe.balances().obstacle().ifPresent(obstacle -> out.accept(finding(obstacle)));
  }

  private static Finding finding(Obstacle obstacle) {
    Span span = obstacle.pass().settings().get(0).written().stepAsWritten().span();
    String step = obstacle.pass().step().word();
    if (obstacle instanceof Obstacle.DriesUpwards dries) {
      return Finding.error(
              CODE,
              span,
              step
                  + " is to reach "
                  + percent(dries.target())
                  + " moisture, the feed before it has "
                  + percent(dries.before()))
          .helping("lower the target, or add water before");
    }
    if (obstacle instanceof Obstacle.WetsDownwards wets) {
      return Finding.error(
              CODE,
              span,
              "water is to bring the mix to "
                  + percent(wets.target())
                  + " moisture, it already has "
                  + percent(wets.before()))
          .helping("raise the target, or take the water out");
    }
    if (obstacle instanceof Obstacle.SteamCannotHeat steam) {
      return Finding.error(
              CODE,
              span,
              "steam is to heat from "
                  + Figures.plain(steam.from())
                  + " °C to "
                  + Figures.plain(steam.to())
                  + " °C")
          .helping("give a temperature above the start and not above 100 °C");
    }
    if (obstacle instanceof Obstacle.NoSteamTable) {
      return Finding.error(CODE, span, "steam cannot be reckoned without practice/steam.yaml")
          .helping("add the rows of saturated steam");
    }
    return Finding.error(CODE, span, "after " + step + " the moisture of the feed is unknown")
        .helping("add the line: dry moisture 9 %");
  }

  private static String percent(double share) {
    return Figures.plain(share, Unit.PERCENT);
  }
}
