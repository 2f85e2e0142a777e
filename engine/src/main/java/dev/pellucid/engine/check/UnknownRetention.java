package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.RetentionGap;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** A step for which the folder does not say what it leaves of a stability class. */
final class UnknownRetention implements Rule {
  private static final Code CODE = new Code("unknown-retention");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(Inspection recipe, Consumer<Finding> out) {
    recipe.feed().ifPresent(feed -> look(feed.retentionGaps(), out));
  }

  /** One finding for each step and temperature, however many classes it concerns. */
  private static void look(List<RetentionGap> gaps, Consumer<Finding> out) {
    Map<String, List<RetentionGap>> byStep = new LinkedHashMap<>();
    for (RetentionGap gap : gaps) {
      String step = gap.step() + " at " + Figures.plain(gap.temperature()) + " °C";
      byStep.computeIfAbsent(step + gap.span().place(), key -> new ArrayList<>()).add(gap);
    }
    byStep.values().forEach(same -> out.accept(finding(same)));
  }

  private static Finding finding(List<RetentionGap> gaps) {
    RetentionGap first = gaps.get(0);
    List<String> classes = gaps.stream().map(RetentionGap::stability).distinct().sorted().toList();
    String some =
        classes.get(0) + (classes.size() > 1 ? " and " + (classes.size() - 1) + " more" : "");
    Finding finding =
        Finding.warning(
            CODE,
            first.span(),
            "what "
                + first.step()
                + " at "
                + Figures.plain(first.temperature())
                + " °C leaves of "
                + some
                + " is not told");
    return finding
        .noting("minima count none of it as left, maxima all of it: " + String.join(", ", classes))
        .helping("add rows up to this temperature to practice/retention.yaml, or take less heat")
        .about(new About(first.step(), About.Side.NONE, classes));
  }
}
