package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.LeastCostBlocks.column;
import static dev.pellucid.engine.report.LeastCostBlocks.figures;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.sharing.Purchase;
import dev.pellucid.engine.sharing.SharedOut;
import dev.pellucid.engine.sharing.SharedOut.Money;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.SharedOut.SharedSupply;
import dev.pellucid.engine.sharing.SharedOut.Standing;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/** All that is told of what was shared out, in the order in which a buyer and a planner read it. */
final class ShareOutBlocks {
  private static final double LITTLE = 0.005;

  private final String currency;
  private final ShareOutSupplies supplies;
  private final ShareOutFeeds feeds;

  ShareOutBlocks(String currency) {
    this.currency = currency;
    this.supplies = new ShareOutSupplies(currency);
    this.feeds = new ShareOutFeeds(currency);
  }

  List<Block> of(List<String> notes, SharedOut out, List<Purchase> purchases) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Words(verdict(out)));
    if (!notes.isEmpty()) {
      blocks.add(new Points(notes));
    }
    supplies.unmade(out, blocks);
    costs(out.money(), blocks);
    supplies.shortOnes(out, blocks);
    feeds.together(out, blocks);
    purchases(purchases, blocks);
    for (SharedFeed one : out.feeds()) {
      feeds.alone(one, blocks);
    }
    return blocks;
  }

  private static String verdict(SharedOut out) {
    double kg = out.feeds().stream().mapToDouble(SharedFeed::kg).sum();
    double wanted = out.feeds().stream().mapToDouble(one -> one.wanted().kg()).sum();
    String of = " of " + Plural.of(out.feeds().size(), "feed");
    if (out.standing() == Standing.SOME_MADE) {
      return "Not all can be made: "
          + ShareOutWords.mass(kg)
          + " of "
          + ShareOutWords.mass(wanted)
          + of
          + ".";
    }
    boolean any = out.supplies().stream().anyMatch(one -> one.worth().isPresent());
    String all = "All can be made: " + ShareOutWords.mass(kg) + of;
    boolean over = out.supplies().stream().anyMatch(ShareOutBlocks::isOver);
    return all
        + (any
            ? "; what is short is shared out so that all together cost least."
            : over
                ? "; the cheapest recipes leave enough of what is short."
                : "; nothing is short.");
  }

  /** Whether the recipes as they stand would take more than there is. */
  private static boolean isOver(SharedSupply one) {
    return one.takenNow() > one.supply().kg();
  }

  private void costs(Money money, List<Block> blocks) {
    blocks.add(new Heading("What all of it costs", false));
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("by the recipes as they stand", money(money.now())));
    facts.add(new Fact("shared out", money(money.then())));
    facts.add(new Fact("if nothing were short", money(money.plenty())));
    if (money.then() - money.least() > LITTLE) {
      facts.add(new Fact("of it, for rounding", money(money.then() - money.least())));
    }
    blocks.add(new Facts(facts));
  }

  private String money(double money) {
    return Figures.fixed(money, 2) + " " + currency;
  }

  private void purchases(List<Purchase> purchases, List<Block> blocks) {
    List<List<String>> rows = new ArrayList<>();
    double sum = 0;
    for (Purchase one : purchases) {
      if (one.isSome()) {
        sum += one.money();
        rows.add(
            List.of(
                one.ingredient(),
                ShareOutWords.kg(one.needed()),
                ShareOutWords.kg(Math.max(0, one.needed() - one.lacking())),
                ShareOutWords.kg(one.lacking()),
                one.perKg().isPresent() ? Figures.fixed(one.money(), 2) : "-"));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    rows.add(List.of("All", "", "", "", Figures.fixed(sum, 2)));
    blocks.add(new Heading("What is to be bought", false));
    blocks.add(
        new Table(
            List.of(
                column("Ingredient"),
                figures("Needed, kg"),
                figures("In store"),
                figures("To buy, kg"),
                figures(currency)),
            rows,
            true));
  }
}
