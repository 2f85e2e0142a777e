package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;

/** A step of which no whole multiple lies within the bounds of its line. */
final class StepFitsNowhere implements Rule {
  private static final Code CODE = new Code("step-fits-nowhere");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Line line : recipe.recipe().lines()) {
      if (isSo(line)) {
        out.accept(finding(line));
      }
    }
  }

  static boolean isSo(Line line) {
    return line.step().isPresent() && line.within().isPresent() && line.lowest() > line.highest();
  }

  private static Finding finding(Line line) {
    String name = line.material().name();
    return Finding.warning(
            CODE,
            line.step().orElseThrow().written().span(),
            "no whole multiple of "
                + line.step().orElseThrow().written().asWritten()
                + " lies within "
                + line.within().orElseThrow().written().asWritten()
                + ", where "
                + name
                + " may stand")
        .seeing("bounds written", line.within().orElseThrow().written().span())
        .helping("write a smaller step, or wider bounds")
        .about(new About(name, About.Side.NONE, List.of()));
  }
}
