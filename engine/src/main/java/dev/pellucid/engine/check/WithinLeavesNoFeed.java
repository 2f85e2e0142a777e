package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Range;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * The floors of {@code within} come to more than 100 %, or the ceilings to less. A line without
 * {@code within} stays at its share; a {@code rest} without it takes what there is.
 */
final class WithinLeavesNoFeed implements Rule {
  private static final Code CODE = new Code("within-leaves-no-feed");
  private static final double WHOLE = 100;
  private static final double CLOSE = 1e-7;
  private static final int NAMED = 4;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isCause() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    List<Line> lines = recipe.recipe().lines();
    if (floorsTooHigh(lines)) {
      out.accept(finding(lines, true));
    }
    if (ceilingsTooLow(lines)) {
      out.accept(finding(lines, false));
    }
  }

  static boolean floorsTooHigh(List<Line> lines) {
    return floors(lines) > WHOLE + CLOSE;
  }

  static boolean ceilingsTooLow(List<Line> lines) {
    return ceilings(lines) < WHOLE - CLOSE;
  }

  private static double floors(List<Line> lines) {
    double sum = onTopOfDesign(lines);
    for (Line line : lines) {
      sum += floor(line);
    }
    return sum;
  }

  private static double ceilings(List<Line> lines) {
    double sum = onTopOfDesign(lines);
    for (Line line : lines) {
      sum += ceiling(line);
    }
    return sum;
  }

  /** Overage for stability, where no {@code rest} makes room for it and the total holds it. */
  private static double onTopOfDesign(List<Line> lines) {
    double sum = 0;
    for (Line line : lines) {
      if (line.rest()) {
        return 0;
      }
      sum += line.share().kgPer100() - line.designed().kgPer100();
    }
    return sum;
  }

  private static double floor(Line line) {
    return line.within().isPresent()
        ? line.within().get().orNone() ? 0 : line.lowest() * 100
        : line.rest() ? 0 : line.designed().kgPer100();
  }

  private static double ceiling(Line line) {
    return line.within().isPresent()
        ? line.highest() * 100
        : line.rest() ? WHOLE : line.designed().kgPer100();
  }

  private static Finding finding(List<Line> lines, boolean floors) {
    ToDoubleFunction<Line> end = floors ? WithinLeavesNoFeed::floor : WithinLeavesNoFeed::ceiling;
    List<Line> free =
        lines.stream()
            .filter(line -> line.within().isPresent())
            .sorted(Comparator.comparingDouble(end).reversed())
            .toList();
    double sum = floors ? floors(lines) : ceilings(lines);
    Figures.Pair figures = Figures.apart(sum, WHOLE, 1);
    Finding finding =
        Finding.error(
                CODE,
                free.get(0).within().orElseThrow().written().span(),
                "the lines add up to "
                    + (floors ? "at least " : "at most ")
                    + figures.value()
                    + " %, a feed is "
                    + figures.other()
                    + " %")
            .noting(
                free.stream()
                        .limit(NAMED)
                        .map(line -> line.material().name() + " " + told(line, floors))
                        .collect(Collectors.joining(", "))
                    + (free.size() > NAMED ? " and so on" : "")
                    + "; lines without within stay at their share");
    String off = Figures.plain(Math.abs(sum - WHOLE));
    return finding
        .helping(
            floors
                ? "lower the floors behind within by " + off + " points in all"
                : "raise the ceilings behind within by " + off + " points in all")
        .about(new About("within", floors ? About.Side.MIN : About.Side.MAX, List.of()));
  }

  private static String told(Line line, boolean floors) {
    Optional<Range> range = line.within().map(Line.Within::written);
    return (floors ? "from " : "up to ")
        + range.map(r -> floors ? r.low().text() : r.high().text()).orElse("")
        + " "
        + range.map(r -> r.unitAsWritten().text()).orElse("");
  }
}
