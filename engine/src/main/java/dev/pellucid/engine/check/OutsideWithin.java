package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Range;
import java.util.List;

/**
 * A share outside the freedom that its own line allows; silent where these freedoms leave no feed
 * at all, which {@link WithinLeavesNoFeed} says.
 */
final class OutsideWithin implements Rule {
  private static final Code CODE = new Code("outside-within");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    List<Line> lines = recipe.recipe().lines();
    boolean tooHigh = WithinLeavesNoFeed.floorsTooHigh(lines);
    boolean tooLow = WithinLeavesNoFeed.ceilingsTooLow(lines);
    for (Line line : lines) {
      line.within()
          .filter(range -> below(line, range) && !tooHigh || above(line, range) && !tooLow)
          .ifPresent(range -> out.accept(finding(line, range)));
    }
  }

  private static boolean below(Line line, Range range) {
    return Closeness.isBelow(line.designed().part(), range.lowBase());
  }

  private static boolean above(Line line, Range range) {
    return Closeness.isAbove(line.designed().part(), range.highBase());
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
