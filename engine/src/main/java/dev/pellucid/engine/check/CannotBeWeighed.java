package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.weighing.Placing;
import dev.pellucid.engine.weighing.WeighingLine;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A line of a load that no scale of the plant can weigh, neither itself nor diluted. */
final class CannotBeWeighed implements Rule {
  private static final Code CODE = new Code("cannot-be-weighed");
  private static final double GRAM = 0.001;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (!BatchTakesLong.isSaid(recipe)) {
      recipe.floor().batch().ifPresent(floor -> look(floor.plan(), floor.plant(), out));
    }
  }

  static void look(WeighingPlan plan, Plant plant, Consumer<Finding> out) {
    Stream.concat(plan.mix().stream(), plan.coat().stream())
        .filter(line -> !line.weighable() && line.target() > 0)
        .flatMap(line -> finding(line, plant).stream())
        .forEach(out);
  }

  private static Optional<Finding> finding(WeighingLine line, Plant plant) {
    return line.placing()
        .byKind(
            placed -> Optional.empty(),
            little -> Optional.of(tooLittle(line, little)),
            much -> Optional.of(tooMuch(line, much, plant)));
  }

  private static Finding tooLittle(WeighingLine line, Placing.TooLittle little) {
    return Finding.warning(
            CODE,
            line.line().name(),
            line.line().material().name()
                + " weighs "
                + mass(line.target())
                + " in a load, the "
                + little.scale().title()
                + " is to be trusted from "
                + mass(little.least()))
        .helping("make a larger batch, weigh on a finer scale, or put it into a premix");
  }

  private static Finding tooMuch(WeighingLine line, Placing.TooMuch much, Plant plant) {
    return Finding.warning(
            CODE,
            line.line().name(),
            line.line().material().name()
                + " weighs "
                + mass(line.target())
                + " in a load, "
                + much.weighings()
                + " weighings on the "
                + much.scale().title()
                + ", and at most "
                + plant.mostWeighings()
                + " are taken")
        .helping("make a smaller batch, or tell plant/" + plant.name() + ".yaml a larger scale");
  }

  private static String mass(double kg) {
    return kg < 1 ? Figures.plain(kg / GRAM) + " g" : Figures.plain(kg) + " kg";
  }
}
