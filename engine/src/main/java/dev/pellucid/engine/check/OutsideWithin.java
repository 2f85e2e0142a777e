package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Range;
import java.util.function.Consumer;

/** A share outside the freedom that its own line allows. */
final class OutsideWithin implements Rule {
  private static final Code CODE = new Code("outside-within");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(Inspection recipe, Consumer<Finding> out) {
    for (Line line : recipe.recipe().lines()) {
      line.within()
          .filter(range -> outside(line.designed(), range))
          .ifPresent(range -> out.accept(finding(line, range)));
    }
  }

  private static boolean outside(Share share, Range range) {
    double part = share.part();
    return part < range.lowBase() * (1 - 1e-9) || part > range.highBase() * (1 + 1e-9);
  }

  private static Finding finding(Line line, Range range) {
    return Finding.error(
            CODE,
            line.figure(),
            line.material().name()
                + " is at "
                + line.designed()
                + ", its own line allows "
                + range.asWritten())
        .seeing("bounds written", range.span())
        .helping("bring the share back, or change the bounds on purpose");
  }
}
