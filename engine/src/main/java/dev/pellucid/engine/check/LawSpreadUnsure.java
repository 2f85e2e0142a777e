package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Plural;
import java.util.Optional;

/**
 * An approved feed comes near a limit of the law, and how its lots differ is told from memory
 * alone, or not at all. One note for each feed, of the limit that is nearest. What too few batches
 * keep is left to {@link LawWithoutMargin}, which tells its spread too.
 */
final class LawSpreadUnsure implements Rule {
  private static final Code CODE = new Code("law-spread-unsure");

  /** Of a maximum that a feed fills to a third, no lot that can be bought fills the rest. */
  private static final double MATTERS = 1.0 / 3;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (recipe.feed().isPresent() && recipe.recipe().isApproved()) {
      look(recipe, recipe.feed().get(), out);
    }
  }

  private static void look(RuleContext recipe, ComputedFeed feed, Remarks out) {
    Optional<Unsure> nearest = Optional.empty();
    int count = 0;
    double keptIn = recipe.tables().settings().lawKeptIn();
    for (LimitStatus status : recipe.limits()) {
      boolean near = nearness(status) > MATTERS;
      Optional<LawMargin> margin = near ? LawMargin.of(status) : Optional.empty();
      if (margin.isEmpty() || !margin.get().isEnough(keptIn)) {
        continue;
      }
      LotSpread spread = LotSpread.of(feed, recipe.tables(), status.limit());
      Optional<LotSpread.Part> part = spread.isUnsure() ? spread.mostUnsure() : Optional.empty();
      if (part.isPresent()) {
        count++;
        if (nearest.isEmpty() || nearness(status) > nearest.get().nearness()) {
          nearest = Optional.of(new Unsure(status.limit(), nearness(status), part.get()));
        }
      }
    }
    if (nearest.isPresent() && !isBroken(recipe)) {
      out.accept(finding(nearest.get(), count - 1));
    }
  }

  /** What is broken is fixed first, and then the feed is another. */
  private static boolean isBroken(RuleContext recipe) {
    for (LimitStatus status : recipe.limits()) {
      if (status.state().isBroken()) {
        return true;
      }
    }
    return false;
  }

  /** A limit, how near the feed is to it, and of whom the spread is not known. */
  private record Unsure(Limit limit, double nearness, LotSpread.Part part) {}

  /** One at the bound; less of a maximum that is far above, and of a minimum far below. */
  private static double nearness(LimitStatus status) {
    double figure = status.verdict().reading().withoutUntold();
    double bound = status.limit().inForce();
    return status.limit().side() == Bound.Side.MAX
        ? bound > 0 ? figure / bound : 0
        : figure > 0 ? bound / figure : 0;
  }

  private static Finding finding(Unsure unsure, int others) {
    Limit limit = unsure.limit();
    String about = limit.subject().text();
    boolean max = limit.side() == Bound.Side.MAX;
    String ingredient = unsure.part().ingredient();
    Finding finding =
        Finding.note(
                CODE,
                unsure.part().most().line().name(),
                about
                    + " is at "
                    + Figures.fixed(unsure.nearness() * 100, 0)
                    + " % of the legal "
                    + (max ? "maximum" : "minimum")
                    + " of "
                    + limit.writtenInForce().asWritten()
                    + new LimitWords(limit).terms()
                    + ", and no analysis tells how it differs from lot to lot")
            .seeing("limit written", limit.origin().span())
            .noting(
                "the spread of "
                    + about
                    + " in "
                    + ingredient
                    + " "
                    + unsure.part().basis().words());
    if (others > 0) {
      finding =
          finding.noting(
              "the same holds for "
                  + Plural.of(others, "other legal limit")
                  + " that this feed comes near");
    }
    return finding
        .helping(
            "have lots of "
                + ingredient
                + " analysed, and write mean ± spread, source and number of analyses into its file,"
                + " or the spread into practice/spreads.yaml")
        .about(new About(about, About.Side.NONE, unsure.part().most().path()));
  }
}
