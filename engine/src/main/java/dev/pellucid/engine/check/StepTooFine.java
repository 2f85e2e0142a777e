package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.weighing.WeighingLine;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.engine.weighing.Weight;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import java.util.List;
import java.util.Optional;

/**
 * A step that the scale of its line cannot show: less than half of a division in one load. Which
 * scale that is, the plan of the batch says; a line that is diluted or cannot be weighed has
 * findings of its own.
 */
final class StepTooFine implements Rule {
  private static final Code CODE = new Code("step-too-fine");
  private static final double GRAM = 0.001;

  /** What people write as the first digit of a step. */
  private static final double[] DIGITS = {1, 2, 5, 10};

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (hasStep(recipe.recipe().lines())) {
      Optional<WeighingPlan> plan = recipe.floor().plan();
      if (plan.isPresent()) {
        look(plan.get(), plan.get().mix(), out);
        look(plan.get(), plan.get().coat(), out);
      }
    }
  }

  private static boolean hasStep(List<Line> lines) {
    for (Line line : lines) {
      if (line.step().isPresent()) {
        return true;
      }
    }
    return false;
  }

  private static void look(WeighingPlan plan, List<WeighingLine> lines, Remarks out) {
    for (WeighingLine one : lines) {
      Line line = one.line();
      Optional<Weight> weight = one.placing().placed();
      if (line.step().isPresent() && weight.isPresent()) {
        double load = plan.kg() / plan.weighings(line);
        double kg = line.step().get().part() * load;
        double division = weight.get().scale().division();
        if (Closeness.isBelow(kg, division / 2)) {
          out.accept(finding(line, kg, weight.get(), division / load));
        }
      }
    }
  }

  private static Finding finding(Line line, double kg, Weight weight, double least) {
    String name = line.material().name();
    String step = line.step().orElseThrow().written().asWritten();
    return Finding.warning(
            CODE,
            line.step().orElseThrow().written().span(),
            "a step of "
                + step
                + " of "
                + name
                + " is "
                + mass(kg)
                + " in a load, and the "
                + weight.scale().title()
                + " shows steps of "
                + mass(weight.scale().division()))
        .helping("write step " + Figures.plain(written(least * 100)) + " % or more")
        .helping("or weigh " + name + " on a finer scale, or make a larger batch")
        .about(new About(name, About.Side.NONE, List.of()));
  }

  /** The next larger figure that people write. */
  private static double written(double percent) {
    double power = Math.pow(10, Math.floor(Math.log10(percent)));
    for (double digit : DIGITS) {
      if (Closeness.isAtLeast(digit * power, percent)) {
        return digit * power;
      }
    }
    return percent;
  }

  private static String mass(double kg) {
    return kg < 1 ? Figures.plain(kg / GRAM) + " g" : Figures.plain(kg) + " kg";
  }
}
