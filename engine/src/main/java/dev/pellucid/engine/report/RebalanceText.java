package dev.pellucid.engine.report;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.rebalance.Rebalancing;
import dev.pellucid.engine.rebalance.Rebalancing.Cause;
import dev.pellucid.engine.rebalance.Rebalancing.Costs;
import dev.pellucid.engine.rebalance.Rebalancing.LimitMove;
import dev.pellucid.engine.rebalance.Rebalancing.LineMove;
import dev.pellucid.engine.rebalance.Rebalancing.LotIn;
import dev.pellucid.engine.rebalance.Rebalancing.Standing;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/** A batch re-balanced to its lots in plain text, for a screen. */
public final class RebalanceText {
  private static final int WIDTH = 120;
  private static final String UNTOLD = "-";

  private final StringBuilder text = new StringBuilder();
  private final Rebalancing told;

  private RebalanceText(Rebalancing told) {
    this.told = told;
  }

  /**
   * All that is told; lines end in {@code \n}.
   *
   * @param block the lines to be put into the record
   * @param ofLots what a person should know of the lots
   */
  public static String of(
      Rebalancing told, String currency, List<String> block, List<String> ofLots) {
    RebalanceText made = new RebalanceText(told);
    made.line(made.verdict());
    made.lots();
    made.limits();
    made.causes();
    made.against();
    made.lines();
    told.costs().ifPresent(costs -> made.costs(costs, currency));
    made.label();
    made.cautions(ofLots);
    made.block(block);
    return made.text.toString();
  }

  private void line(String words) {
    text.append(words).append('\n');
  }

  private String verdict() {
    return switch (told.standing()) {
      case NO_GROUND ->
          told.number()
              + ": no lot of it was measured, so there is nothing to re-balance it by. Write what"
              + " was measured under lots/, and name the lots under weighed.";
      case KEPT -> told.number() + " keeps every limit with its lots. Nothing is to be changed.";
      case RECIPE_KEEPS ->
          told.number()
              + ": with its lots the shares of the recipe keep every limit, and those of its record"
              + " do not. Take rebalanced out of the record.";
      case MOVED ->
          told.number()
              + " misses "
              + Plural.of(missed(), "limit")
              + " with its lots. "
              + points(told.points())
              + " moved keep all.";
      case IMPOSSIBLE ->
          told.number()
              + " misses "
              + Plural.of(missed(), "limit")
              + " with its lots, and no shares within the bounds of the recipe keep all. Another lot"
              + " is needed.";
      case NOT_PROVEN ->
          told.number()
              + " misses a limit with its lots, and no change was found that is proven: "
              + told.why()
              + ". Take another lot, or ask whoever answers for the recipe.";
    };
  }

  private static String points(double points) {
    String figure = Figures.fixed(points, 2);
    return figure + (figure.equals("1.00") ? " point" : " points");
  }

  private int missed() {
    return (int) told.limits().stream().filter(LimitMove::missed).count();
  }

  private void lots() {
    if (told.lots().isEmpty()) {
      return;
    }
    line("");
    line("Lots, with what was measured (and what the folder has):");
    for (LotIn lot : told.lots()) {
      line(
          "  "
              + lot.number()
              + " for "
              + lot.line()
              + (lot.named() ? "" : ", which the store would give")
              + ": "
              + lot.measured());
    }
  }

  private void limits() {
    if (told.limits().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (LimitMove one : told.limits()) {
      List<String> row = new ArrayList<>();
      row.add(one.lots().subject());
      row.add(one.lots().demand().askedNow());
      row.add(one.recipe().map(RebalanceText::figure).orElse(UNTOLD));
      row.add(figure(one.lots()));
      if (told.isMoved()) {
        row.add(one.batch().map(RebalanceText::figure).orElse(UNTOLD));
      }
      row.add(one.missed() ? "missed" : "kept");
      rows.add(row);
    }
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("Limit", Holds.WORDS));
    columns.add(new Column("Asked", Holds.WORDS));
    columns.add(new Column("Recipe", Holds.FIGURES));
    columns.add(new Column("With its lots", Holds.FIGURES));
    if (told.isMoved()) {
      columns.add(new Column("Re-balanced", Holds.FIGURES));
    }
    columns.add(new Column("Now", Holds.WORDS));
    line("");
    table(new Table(columns, rows, false));
    if (told.others() > 0) {
      line(
          Plural.of(told.others(), "other limit")
              + " kept"
              + (told.isMoved() ? ", before and after." : "."));
    }
  }

  private static String figure(Held held) {
    String batches = held.batches();
    return Figures.plainBeside(held.judged(), held.bound())
        + held.unit().written()
        + (batches.isEmpty() ? "" : " " + batches);
  }

  private void causes() {
    if (told.causes().isEmpty()) {
      return;
    }
    line("");
    line("What is to blame:");
    for (Cause one : told.causes()) {
      line(
          "  "
              + one.limit()
              + ": "
              + one.lot()
              + " in place of "
              + one.line()
              + " as the folder has it "
              + (one.moves() < 0 ? "takes " : "adds ")
              + Figures.plain(Math.abs(one.moves()))
              + one.unit());
    }
  }

  private void against() {
    if (told.against().isEmpty()) {
      return;
    }
    line("");
    line("With these lots, these cannot be kept together:");
    told.against().forEach(one -> line("  " + one));
  }

  private void lines() {
    if (told.lines().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    int decimals = decimals();
    for (LineMove one : told.lines()) {
      rows.add(
          List.of(
              one.name(),
              Figures.fixed(one.recipe(), decimals),
              Figures.fixed(one.batch(), decimals),
              (one.moved() > 0 ? "+" : "") + Figures.fixed(one.moved(), decimals),
              one.within().isEmpty() ? (one.rest() ? "the rest" : "no within") : one.within()));
    }
    line("");
    table(
        new Table(
            List.of(
                new Column("Line", Holds.WORDS),
                new Column("Recipe, %", Holds.FIGURES),
                new Column("This batch, %", Holds.FIGURES),
                new Column("Moved", Holds.FIGURES),
                new Column("May be", Holds.WORDS)),
            rows,
            false));
  }

  private int decimals() {
    int decimals = 2;
    for (LineMove one : told.lines()) {
      decimals = Math.max(decimals, Figures.apart(one.recipe(), one.batch(), decimals).decimals());
    }
    return decimals;
  }

  private void costs(Costs costs, String currency) {
    LeastCostMoney money = new LeastCostMoney(currency);
    double more = (costs.batch() - costs.recipe()) * 1000;
    line("");
    line(
        "A kg in the bags costs "
            + LeastCostMoney.perKg(costs.batch())
            + " "
            + money.currency()
            + " in place of "
            + LeastCostMoney.perKg(costs.recipe())
            + ": "
            + Figures.fixed(Math.abs(more), 2)
            + " "
            + money.currency()
            + "/t "
            + (more < 0 ? "less." : "more."));
  }

  private void label() {
    if (!told.label().isEmpty()) {
      line("");
      line("The label of the recipe is not true of this batch; print that of its sheet:");
      told.label().forEach(one -> line("  " + one));
    }
  }

  private void cautions(List<String> ofLots) {
    List<String> all = new ArrayList<>(told.cautions());
    if (told.standing() != Standing.NO_GROUND) {
      all.addAll(ofLots);
    }
    if (!all.isEmpty()) {
      line("");
      line("To know before signing:");
      all.forEach(one -> line("  " + one));
    }
  }

  private void block(List<String> block) {
    if (!block.isEmpty()) {
      line("");
      block.forEach(this::line);
    }
  }

  private void table(Table table) {
    TextTable.lines(table, WIDTH).forEach(one -> line(one.stripTrailing()));
  }
}
