package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Obstacle;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Pass;
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
  public void look(RuleContext recipe, Remarks out) {
    Optional<Obstacle> obstacle = recipe.balances().obstacle();
    if (obstacle.isPresent() && kind.isInstance(obstacle.get())) {
      out.accept(finding(obstacle.get()));
    }
  }

  private Finding finding(Obstacle obstacle) {
    return obstacle.byKind(
        this::moistureUnknown,
        this::driesUpwards,
        this::wetsDownwards,
        this::steamCannotHeat,
        this::noSteamTable);
  }

  private Finding moistureUnknown(Obstacle.MoistureUnknown unknown) {
    String step = unknown.pass().word();
    return at(
            step(unknown.pass()),
            "after " + step + " the moisture of the feed is unknown: no dry or cool gives it")
        .helping("say what the dryer or the cooler leaves, for example: dry moisture 9 %");
  }

  private Finding driesUpwards(Obstacle.DriesUpwards dries) {
    return at(
            figure(dries.pass(), Property.MOISTURE),
            dries.pass().word()
                + " is to reach "
                + percent(dries.target())
                + " moisture, the feed before it has "
                + percent(dries.before()))
        .helping("lower the target, or add water before");
  }

  private Finding wetsDownwards(Obstacle.WetsDownwards wets) {
    return at(
            figure(wets.pass(), Property.TO_MOISTURE),
            "water is to bring the mix to "
                + percent(wets.target())
                + " moisture, it already has "
                + percent(wets.before()))
        .helping("raise the target, or take the water out");
  }

  private Finding steamCannotHeat(Obstacle.SteamCannotHeat steam) {
    String from = Figures.plain(steam.from(), Unit.CELSIUS);
    return at(
            figure(steam.pass(), Property.TEMPERATURE),
            "steam is to heat the mix to "
                + Figures.plain(steam.to(), Unit.CELSIUS)
                + (steam.to() > steam.from()
                    ? ", open steam heats it to 100 °C at most"
                    : ", it already has " + from))
        .helping("give a temperature above " + from + " and not above 100 °C");
  }

  private Finding noSteamTable(Obstacle.NoSteamTable none) {
    return at(step(none.pass()), "steam cannot be computed without practice/steam.yaml")
        .helping("add that file with the rows of saturated steam from 20 to 100 °C");
  }

  private Finding at(Span place, String headline) {
    return Finding.error(code, place, headline);
  }

  /** The line of the figure that cannot be reached, else the step. */
  private static Span figure(Pass pass, Property property) {
    return pass.setting(property).map(Setting::span).orElse(step(pass));
  }

  private static Span step(Pass pass) {
    return pass.settings().get(0).written().stepAsWritten().span();
  }

  private static String percent(double share) {
    return Figures.plain(share, Unit.PERCENT);
  }
}
