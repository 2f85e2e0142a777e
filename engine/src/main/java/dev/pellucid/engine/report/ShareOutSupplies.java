package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.LeastCostBlocks.column;
import static dev.pellucid.engine.report.LeastCostBlocks.figures;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.sharing.SharedOut;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.SharedOut.SharedSupply;
import dev.pellucid.engine.sharing.SharedOut.Standing;
import dev.pellucid.engine.sharing.SharedOut.Worth;
import dev.pellucid.engine.sharing.Wanted.Due;
import java.util.ArrayList;
import java.util.List;

/** What is told of what is short: what there is, who takes it, what more of it is worth. */
final class ShareOutSupplies {
  private static final double TONNE = 1000;
  private static final double SOME = 1e-6;
  private static final double TENTH = 0.1;

  private final String currency;

  ShareOutSupplies(String currency) {
    this.currency = currency;
  }

  void unmade(SharedOut out, List<Block> blocks) {
    if (out.standing() != Standing.SOME_MADE) {
      return;
    }
    List<String> points = new ArrayList<>();
    for (SharedFeed one : out.feeds()) {
      for (int i = 0; i < one.made().size(); i++) {
        unmade(one, i, points);
      }
    }
    blocks.add(new Heading("What cannot be made", false));
    blocks.add(new Points(points));
    blocks.add(new Words(lacks(out)));
  }

  private static void unmade(SharedFeed feed, int i, List<String> points) {
    Due wanted = feed.wanted().due().get(i);
    double lacks = wanted.kg() - feed.made().get(i).kg();
    if (lacks > SOME) {
      points.add(
          wanted.isBatch()
              ? "batch " + wanted.batch() + ", " + ShareOutWords.mass(wanted.kg())
              : ShareOutWords.mass(lacks)
                  + " of the "
                  + ShareOutWords.mass(wanted.kg())
                  + " of "
                  + feed.wanted().code()
                  + " by "
                  + wanted.day());
    }
  }

  private static String lacks(SharedOut out) {
    if (out.lacks().isEmpty()) {
      return "There is just enough for all, and nothing to spare for shares that can be written"
          + " and weighed.";
    }
    List<String> more = new ArrayList<>();
    out.lacks()
        .forEach(
            (name, kg) ->
                more.add(
                    "about " + Figures.fixed(Math.ceil(kg / TENTH) * TENTH, 1) + " kg of " + name));
    return "All could be made with more: " + String.join(", ", more) + ".";
  }

  void shortOnes(SharedOut out, List<Block> blocks) {
    if (out.supplies().isEmpty()) {
      return;
    }
    boolean premixes = out.supplies().stream().anyMatch(one -> one.spared() > SOME);
    List<List<String>> rows = new ArrayList<>();
    out.supplies().forEach(one -> rows.add(row(one, premixes)));
    List<Column> columns = new ArrayList<>();
    columns.add(column("Ingredient"));
    columns.add(figures("There, kg"));
    if (premixes) {
      columns.add(figures("In premixes"));
    }
    columns.add(figures("As it stands"));
    columns.add(figures("Shared out"));
    columns.add(figures("Left"));
    columns.add(figures(currency + " for a tonne more"));
    blocks.add(new Heading("What there is only so much of", false));
    blocks.add(new Table(columns, rows, false));
    if (premixes) {
      blocks.add(
          new Words(
              "In premixes is what batches of premixes bring that are made or planned already: it"
                  + " is there beside the rest, for the feeds that hold them."));
    }
    worths(out, blocks);
  }

  private static List<String> row(SharedSupply one, boolean premixes) {
    List<String> row = new ArrayList<>();
    row.add(one.supply().ingredient() + (one.supply().inStore() ? " (store)" : ""));
    row.add(ShareOutWords.kg(one.supply().kg()));
    if (premixes) {
      row.add(ShareOutWords.kg(one.spared()));
    }
    row.add(ShareOutWords.kg(one.takenNow()));
    row.add(ShareOutWords.kg(one.taken()));
    row.add(ShareOutWords.kg(one.left()));
    row.add(one.worth().map(it -> Figures.fixed(it.perKg() * TONNE, 2)).orElse("0"));
    return row;
  }

  private void worths(SharedOut out, List<Block> blocks) {
    List<String> points = new ArrayList<>();
    for (SharedSupply one : out.supplies()) {
      one.worth().ifPresent(worth -> points.add(worth(one, worth)));
    }
    if (!points.isEmpty()) {
      blocks.add(new Points(points));
    }
  }

  private String worth(SharedSupply supply, Worth worth) {
    String name = supply.supply().ingredient();
    double price = supply.supply().perKg();
    return "a tonne more of "
        + name
        + " saves "
        + perTonne(worth.perKg())
        + " when it is bought at its price of "
        + perTonne(price)
        + ", so up to "
        + perTonne(price + worth.perKg())
        + " it is worth buying elsewhere; that holds from "
        + ShareOutWords.kg(worth.from())
        + " to "
        + ShareOutWords.kg(worth.to())
        + " kg that are there";
  }

  private String perTonne(double perKg) {
    return Figures.fixed(perKg * TONNE, 2) + " " + currency + "/t";
  }
}
