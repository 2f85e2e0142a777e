package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.LeastCostBlocks.column;
import static dev.pellucid.engine.report.LeastCostBlocks.figures;

import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Portion.Settled;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Verbatim;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.sharing.FixedBatch;
import dev.pellucid.engine.sharing.ShareOutTold;
import dev.pellucid.engine.sharing.SharedOut;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.SharedOut.SharedSupply;
import java.util.ArrayList;
import java.util.List;

/** What is told of each feed: what it takes, what it costs, its lines, its change. */
final class ShareOutFeeds {
  private static final int MOST = 3;

  private final String currency;
  private final LeastCostWords words;

  ShareOutFeeds(String currency) {
    this.currency = currency;
    this.words = new LeastCostWords(currency);
  }

  /** All in one table. */
  void together(SharedOut out, List<Block> blocks) {
    List<Column> columns = new ArrayList<>();
    columns.add(column("Feed"));
    columns.add(figures("Made"));
    columns.add(figures(currency + "/t now"));
    columns.add(figures("Then"));
    List<SharedSupply> told = told(out);
    told.forEach(one -> columns.add(figures(one.supply().ingredient() + ", kg")));
    List<List<String>> rows = new ArrayList<>();
    for (SharedFeed one : out.feeds()) {
      rows.add(row(one, told));
    }
    blocks.add(new Heading("What each feed takes and costs", false));
    blocks.add(new Table(columns, rows, false));
  }

  /** Batches that are made as they are recorded; nothing where there are none. */
  void fixed(ShareOutTold told, List<Block> blocks) {
    if (told.fixed().isEmpty()) {
      return;
    }
    List<Column> columns = new ArrayList<>();
    columns.add(column("Batch"));
    columns.add(figures("Made"));
    List<SharedSupply> supplies = told(told.out());
    supplies.forEach(one -> columns.add(figures(one.supply().ingredient() + ", kg")));
    List<List<String>> rows = new ArrayList<>();
    for (FixedBatch batch : told.fixed()) {
      List<String> row = new ArrayList<>();
      row.add(batch.number());
      row.add(ShareOutWords.mass(batch.kg()));
      for (SharedSupply one : supplies) {
        row.add(ShareOutWords.kg(batch.takes().getOrDefault(one.supply().ingredient(), 0.0)));
      }
      rows.add(row);
    }
    blocks.add(new Heading("Re-balanced batches, made as their records say", false));
    blocks.add(new Table(columns, rows, false));
    blocks.add(
        new Words("What they take is taken off what there is before anything is shared out."));
  }

  /** Those that someone is short of, as many as a page has room for; all where they are few. */
  private static List<SharedSupply> told(SharedOut out) {
    List<SharedSupply> told = new ArrayList<>();
    boolean few = out.supplies().size() <= MOST;
    for (SharedSupply one : out.supplies()) {
      boolean isShort =
          one.worth().isPresent()
              || out.lacks().containsKey(one.supply().ingredient())
              || one.isOver();
      if (told.size() < MOST && (few || isShort)) {
        told.add(one);
      }
    }
    return told;
  }

  private static List<String> row(SharedFeed feed, List<SharedSupply> supplies) {
    List<String> row = new ArrayList<>();
    row.add(feed.wanted().code());
    row.add(ShareOutWords.mass(feed.kg()));
    row.add(LeastCostMoney.tonne(feed.costNow()));
    row.add(feed.settled().isPresent() ? LeastCostMoney.tonne(feed.costThen()) : "-");
    for (SharedSupply one : supplies) {
      String name = one.supply().ingredient();
      double now = feed.takesNow().getOrDefault(name, 0.0);
      double then = feed.takesThen().getOrDefault(name, 0.0);
      row.add(
          now == 0 && then == 0 ? "-" : ShareOutWords.kg(now) + " -> " + ShareOutWords.kg(then));
    }
    return row;
  }

  /** One by itself. */
  void alone(SharedFeed feed, List<Block> blocks) {
    if (feed.settled().isEmpty()) {
      return;
    }
    Settled settled = feed.settled().get();
    blocks.add(new Heading(feed.wanted().code() + ", " + ShareOutWords.mass(feed.kg()), false));
    if (!settled.change().isSome()) {
      blocks.add(new Words("The recipe stays as it is."));
      return;
    }
    List<LineMove> moved = settled.lines().stream().filter(LeastCostMoney::isMoved).toList();
    blocks.add(LeastCostBlocks.table(moved, LeastCostMoney.decimals(settled.lines())));
    List<String> points = new ArrayList<>();
    settled.limits().forEach(one -> points.add(words.limit(one)));
    settled.labelAnew().forEach(one -> points.add("label to print anew: " + one));
    if (!points.isEmpty()) {
      blocks.add(new Points(points));
    }
    blocks.add(new Verbatim(LeastCostDiff.of(settled.change())));
  }
}
