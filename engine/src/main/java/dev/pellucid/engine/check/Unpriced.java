package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * An ingredient without a price on the day: the cost is told too low. A note; where the recipe has
 * a limit of cost, which cannot be judged then, a warning. A folder without any prices wants no
 * cost, unless a limit asks for it; where a file of prices is to be fixed first, nothing is said.
 */
final class Unpriced implements Rule {
  static final Code CODE = new Code("unpriced");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (recipe.feed().isEmpty()
        || recipe.feed().get().unpriced().isEmpty()
        || !recipe.tables().pricesWhole()) {
      return;
    }
    Optional<Limit> limit = limitOfCost(recipe.recipe().limits());
    if (recipe.tables().prices().isEmpty()) {
      limit.ifPresent(cost -> out.accept(noPrices(recipe, cost)));
    } else {
      for (String name : recipe.feed().get().unpriced()) {
        out.accept(finding(recipe.feed().get(), name, limit));
      }
    }
  }

  /** One cause, told once and not of each ingredient. */
  private static Finding noPrices(RuleContext recipe, Limit cost) {
    return Finding.warning(
            CODE,
            cost.origin().span(),
            "this folder has no prices, so the limit of cost cannot be judged")
        .helping("add a file of prices/, with a price for each ingredient")
        .about(new About(recipe.recipe().code(), About.Side.NONE, List.of()));
  }

  private static Optional<Limit> limitOfCost(List<Limit> limits) {
    for (Limit limit : limits) {
      if (limit.subject().figure() == Kind.PRICE) {
        return Optional.of(limit);
      }
    }
    return Optional.empty();
  }

  private static Finding finding(ComputedFeed feed, String name, Optional<Limit> limit) {
    Span span =
        feed.rows().stream()
            .filter(row -> row.ingredient().name().equals(name))
            .findFirst()
            .map(row -> row.line().name())
            .orElse(feed.recipe().declared());
    String said = name + " has no price on this day and counts as free";
    Finding finding =
        limit.isPresent()
            ? Finding.warning(CODE, span, said + ", so the limit of cost cannot be judged")
                .seeing("limit written", limit.get().origin().span())
            : Finding.note(CODE, span, said);
    return finding
        .helping("add " + name + " to a file of prices/")
        .about(new About(name, About.Side.NONE, List.of()));
  }
}
