package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.RetentionGap;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
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
    recipe.feed().ifPresent(feed -> feed.retentionGaps().forEach(gap -> out.accept(finding(gap))));
  }

  private static Finding finding(RetentionGap gap) {
    return Finding.warning(
            CODE,
            gap.span(),
            "what "
                + gap.step()
                + " at "
                + Figures.plain(gap.temperature())
                + " °C leaves of "
                + gap.stability()
                + " is not told")
        .noting("minima count none of it as left, maxima all of it")
        .helping("add a row for " + gap.stability() + " to practice/retention.yaml")
        .about(new About(gap.stability(), About.Side.NONE, List.of()));
  }
}
