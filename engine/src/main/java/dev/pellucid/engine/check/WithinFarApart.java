package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Within;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;

/**
 * The two ends of a line's freedom so far apart that the lower one hardly holds anything: most
 * often its point slipped. Who wants no lower end writes 0. Common sense, no source.
 */
final class WithinFarApart implements Rule {
  private static final Code CODE = new Code("within-far-apart");
  private static final double FAR = 12;

  /** Of a line that may be left out, the lower end is the least worth taking, and may be low. */
  private static final double FAR_OR_NONE = 25;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Line line : recipe.recipe().lines()) {
      if (line.within().isPresent()) {
        Within free = line.within().get();
        double far = free.orNone() ? FAR_OR_NONE : FAR;
        if (free.low() > 0 && free.high() > far * free.low()) {
          out.accept(finding(line, free));
        }
      }
    }
  }

  private static Finding finding(Line line, Within free) {
    String name = line.material().name();
    return Finding.warning(
            CODE,
            free.written().span(),
            name + " may stand within " + free.asWritten() + ", ends that far apart")
        .noting("a lower end that is so low holds the line to nothing")
        .helping(
            free.orNone()
                ? "look for a slipped decimal point: the lower end is the least that is worth taking"
                : "look for a slipped decimal point, or write 0 where no lower end is meant")
        .about(new About(name, About.Side.NONE, List.of()));
  }
}
