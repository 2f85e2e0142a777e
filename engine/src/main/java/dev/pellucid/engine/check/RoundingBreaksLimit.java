package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.weighing.WeighingLine;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A limit that the recipe keeps as written, and no more once its weights are rounded. */
final class RoundingBreaksLimit implements Rule {
  private static final Code CODE = new Code("rounding-breaks-limit");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    recipe.floor().batch().ifPresent(floor -> look(recipe, floor, out));
  }

  private static void look(RuleContext recipe, WeighedBatch floor, Remarks out) {
    for (LimitStatus written : recipe.limits()) {
      if (written.state().isKept()) {
        Optional<Verdict> rounded = floor.asRounded(written.verdict());
        if (rounded.isPresent() && !rounded.get().keeps()) {
          out.accept(finding(recipe, floor, written.verdict(), rounded.get()), written);
        }
      }
    }
  }

  private static Finding finding(
      RuleContext recipe, WeighedBatch floor, Verdict written, Verdict rounded) {
    LimitWords words = new LimitWords(rounded.limit());
    boolean min = rounded.limit().side() == Bound.Side.MIN;
    WeighingLine most = mostRounded(floor);
    return Finding.of(
            CODE,
            rounded.limit().origin().kind().broken(),
            most.line().name(),
            rounded.limit().subject().text()
                + " is "
                + words.against(
                    recipe, rounded.judged(), words.terms() + " once the weights are rounded"))
        .labelled(off(most))
        .seeing("limit written", rounded.limit().origin().span())
        .noting("as written it is " + words.besideBound(written.judged()) + words.unit())
        .helping("make a larger batch or weigh on a finer scale, so that less is rounded")
        .helping("or leave more room to the limit")
        .about(
            new About(
                rounded.limit().subject().text(),
                min ? About.Side.MIN : About.Side.MAX,
                List.of(most.line().material().name())));
  }

  private static WeighingLine mostRounded(WeighedBatch floor) {
    return Stream.concat(floor.plan().mix().stream(), floor.plan().coat().stream())
        .max(Comparator.comparingDouble(line -> Math.abs(part(line))))
        .orElseThrow();
  }

  private static double part(WeighingLine line) {
    return line.target() == 0 ? 0 : line.actual() / line.target() - 1;
  }

  private static String off(WeighingLine line) {
    Figures.Pair kg = Figures.apart(line.actual(), line.target(), 2);
    return "weighed as " + kg.value() + " kg for " + kg.other() + " kg, rounded most";
  }
}
