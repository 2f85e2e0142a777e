package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Within;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
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

  /** The way to a line that takes what others leave: it shows their slips. */
  static final List<String> REST = List.of("rest");

  @Override
  public boolean isCause() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    List<Line> lines = recipe.recipe().lines();
    for (Line line : lines) {
      if (line.within().isPresent() && isWorthTelling(line, line.within().get(), lines)) {
        out.accept(finding(line, line.within().get()));
      }
    }
  }

  private static boolean isWorthTelling(Line line, Within free, List<Line> lines) {
    double share = line.designed().part();
    if (free.orNone() && !line.isTaken()) {
      return false;
    }
    return Closeness.isBelow(share, free.low()) && !WithinLeavesNoFeed.floorsTooHigh(lines)
        || Closeness.isAbove(share, free.high()) && !WithinLeavesNoFeed.ceilingsTooLow(lines);
  }

  private static Finding finding(Line line, Within free) {
    Finding finding =
        Finding.error(
                CODE,
                line.figure(),
                line.material().name()
                    + " is at "
                    + line.designed()
                    + ", its own line allows "
                    + free.asWritten())
            .seeing("bounds written", free.written().span())
            .about(
                new About(line.material().name(), About.Side.NONE, line.rest() ? REST : List.of()));
    if (line.rest()) {
      return finding.helping(
          "the rest takes what the other lines leave: is one of them lost or off?");
    }
    if (!line.isTaken()) {
      return finding.helping(
          "write "
              + free.asWritten()
              + " or none where it may be left out for now, else bring the share back");
    }
    return free.skips() && Closeness.isBelow(line.designed().part(), free.low())
        ? finding.helping(
            "bring it up to "
                + free.written().low().text()
                + " "
                + free.written().unitAsWritten().text()
                + " at least, or down to 0 % to leave it out")
        : finding.helping("bring the share back, or change the bounds on purpose");
  }
}
