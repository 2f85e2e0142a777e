package dev.pellucid.engine.check;

import dev.pellucid.engine.account.RestsOn;
import dev.pellucid.engine.data.Source.Reliability;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.stream.Collectors;

/**
 * An approved recipe whose judged limits, or the contents that they are judged by, rest on
 * somebody's memory, and of which nobody is told who looked at them.
 */
final class NotReviewed implements Rule {
  private static final Code CODE = new Code("not-reviewed");
  private static final int NAMED = 3;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    boolean asked = recipe.recipe().isApproved() && recipe.recipe().reviewed().isEmpty();
    if (!asked || recipe.feed().isEmpty()) {
      return;
    }
    RestsOn rests = RestsOn.of(recipe.feed().get(), recipe.limits(), recipe.tables().practice());
    int recalled = rests.count(Reliability.FROM_MEMORY);
    if (recalled > 0) {
      out.accept(finding(recipe, rests, recalled));
    }
  }

  private static Finding finding(RuleContext recipe, RestsOn rests, int recalled) {
    List<RestsOn.Group> groups = rests.groups(Reliability.FROM_MEMORY);
    String most =
        groups.stream()
            .limit(NAMED)
            .map(group -> group.of() + " (" + group.figures() + ")")
            .collect(Collectors.joining(", "));
    return Finding.warning(
            CODE,
            recipe.recipe().declared(),
            recalled
                + " of the "
                + rests.count()
                + " figures that "
                + recipe.recipe().code()
                + " is judged by are from memory, and nobody is told to have looked at them")
        .noting("most of them are of " + most)
        .helping("put what was published, or your own analyses, in their place")
        .helping(
            "or let who answers for the feed look at them, and say so: status approved reviewed by"
                + " \"NAME\" on "
                + recipe.day());
  }
}
