package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Step;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A share that is no whole multiple of the step that its own line tells; silent where no multiple
 * lies within its bounds, which {@link StepFitsNowhere} says.
 */
final class StepNotKept implements Rule {
  private static final Code CODE = new Code("step-not-kept");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Line line : recipe.recipe().lines()) {
      if (line.step().isPresent() && !line.keepsStep() && !StepFitsNowhere.isSo(line)) {
        out.accept(finding(line, line.step().get()));
      }
    }
  }

  private static Finding finding(Line line, Step step) {
    String name = line.material().name();
    return Finding.warning(
            CODE,
            line.figure(),
            name
                + " is at "
                + line.designed()
                + ", which is no whole multiple of its step of "
                + step.written().asWritten())
        .seeing("step written", step.written().span())
        .helping("write " + Choices.of(nearest(line, step)) + ", or change the step")
        .about(new About(name, About.Side.NONE, List.of()));
  }

  /** The multiple below and the one above, where the line allows them. */
  private static List<String> nearest(Line line, Step step) {
    BigDecimal size = step.share().percent();
    BigDecimal below = line.designed().percent().divideToIntegralValue(size).multiply(size);
    List<String> nearest = new ArrayList<>();
    for (BigDecimal one : List.of(below, below.add(size))) {
      if (line.allows(one.doubleValue() / 100)) {
        nearest.add(new Share(one).toString());
      }
    }
    if (nearest.isEmpty()) {
      nearest.add("a multiple of " + step.share() + " that its bounds allow");
    }
    return nearest;
  }
}
