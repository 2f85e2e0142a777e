package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Obstacle;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Property;
import dev.pellucid.text.Span;
import java.util.Optional;

/** A process that cannot be reckoned through: no figure of the feed can be told. */
final class Obstacles implements Rule {
  private final Code code;
  private final Class<? extends Obstacle> kind;

  Obstacles(String code, Class<? extends Obstacle> kind) {
    this.code = new Code(code);
    this.kind = kind;
  }

  @Override
  public Code code() {
    return code;
  }

  @Override
  public void look(Inspection recipe, Remarks out) {
    recipe
        .balances()
        .obstacle()
        .filter(kind::isInstance)
        .ifPresent(obstacle -> out.accept(finding(obstacle)));
  }

  private Finding finding(Obstacle obstacle) {
    Span span = place(obstacle);
    String step = obstacle.pass().step().word();
    if (obstacle instanceof Obstacle.DriesUpwards dries) {
      return Finding.error(
              code,
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
              code,
              span,
              "water is to bring the mix to "
                  + percent(wets.target())
                  + " moisture, it already has "
                  + percent(wets.before()))
          .helping("raise the target, or take the water out");
    }
    if (obstacle instanceof Obstacle.SteamCannotHeat steam) {
      String from = Figures.plain(steam.from(), Unit.CELSIUS);
      return Finding.error(
              code,
              span,
              "steam is to heat the mix to "
                  + Figures.plain(steam.to(), Unit.CELSIUS)
                  + (steam.to() > steam.from()
                      ? ", open steam heats it to 100 °C at most"
                      : ", it already has " + from))
          .helping("give a temperature above " + from + " and not above 100 °C");
    }
    if (obstacle instanceof Obstacle.NoSteamTable) {
      return Finding.error(code, span, "steam cannot be reckoned without practice/steam.yaml")
          .helping("add that file with the rows of saturated steam from 20 to 100 °C");
    }
    return Finding.error(code, span, "after " + step + " the moisture of the feed is unknown")
        .helping("say what the dryer or the cooler leaves, for example: dry moisture 9 %");
  }

  /** The line of the figure that cannot be reached, else the step. */
  private static Span place(Obstacle obstacle) {
    Optional<Property> property =
        obstacle instanceof Obstacle.DriesUpwards
            ? Optional.of(Property.MOISTURE)
            : obstacle instanceof Obstacle.WetsDownwards
                ? Optional.of(Property.TO_MOISTURE)
                : obstacle instanceof Obstacle.SteamCannotHeat
                    ? Optional.of(Property.TEMPERATURE)
                    : Optional.empty();
    return property
        .flatMap(obstacle.pass()::setting)
        .map(Setting::span)
        .orElse(obstacle.pass().settings().get(0).written().stepAsWritten().span());
  }

  private static String percent(double share) {
    return Figures.plain(share, Unit.PERCENT);
  }
}
