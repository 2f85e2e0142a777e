package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.util.function.Consumer;

/** An ingredient without a price on the day: the cost is told too low. */
final class Unpriced implements Rule {
  private static final Code CODE = new Code("unpriced");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(Inspection recipe, Consumer<Finding> out) {
    recipe
        .feed()
        .filter(feed -> !recipe.larder().prices().isEmpty())
        .ifPresent(feed -> feed.unpriced().forEach(name -> out.accept(finding(feed, name))));
  }

  private static Finding finding(ComputedFeed feed, String name) {
    Span span =
        feed.rows().stream()
            .filter(row -> row.ingredient().name().equals(name))
            .findFirst()
            .map(row -> row.line().name())
            .orElse(feed.recipe().declared());
    return Finding.note(CODE, span, name + " has no price on this day and counts as free")
        .helping("add " + name + " to a file of prices/")
        .about(new About(name, About.Side.NONE, java.util.List.of()));
  }
}
