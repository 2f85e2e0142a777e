package dev.pellucid.engine.report;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.sharing.ShareOutTold;
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

  List<Block> of(ShareOutTold told) {
    SharedOut out = told.out();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Words(verdict(out)));
    if (!told.notes().isEmpty()) {
      blocks.add(new Points(told.notes()));
    }
    supplies.unmade(out, blocks);
    costs(out.money(), blocks);
    supplies.shortOnes(out, blocks);
    feeds.together(out, blocks);
    feeds.fixed(told, blocks);
    PurchaseBlocks purchases = new PurchaseBlocks(told.day(), currency, told.toBuy());
    if (told.toBuy().goods().stream().anyMatch(good -> good.lacking() > 0)) {
      blocks.add(
          new Words(
              "What is to be ordered is in no lot of the store yet, even where the plan says how"
                  + " much of it can be had."));
    }
    purchases.toDo(blocks);
    purchases.needed(blocks);
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
    boolean over = out.supplies().stream().anyMatch(SharedSupply::isOver);
    return all
        + (any
            ? "; what is short is shared out so that all together cost least."
            : over
                ? "; the cheapest recipes leave enough of what is short."
                : "; nothing is short.");
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
}
