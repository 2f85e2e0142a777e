package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Mass;
import dev.pellucid.engine.plan.Weighed;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The weigh lists. Large lines in kg, small ones in g with room for two people; recipe share and
 * overage stand apart where a line has overage, and a sum where there are two lines or more.
 */
final class WeighTables {
  private static final String OVERAGE =
      "Overage is weighed on top of the recipe: what is lost in handling, and what decays.";
  static final String INCLUDED =
      "Overage is in the weights: what is lost in handling, and what decays.";
  private static final String GIVES_WAY =
      " Where it is below zero, the line gives way to the overage of others.";

  private final List<Column> columns = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();
  private final BatchPlan plan;
  private final List<Weighed> lines;
  private final Weighed.Sum sum;

  private WeighTables(BatchPlan plan, List<Weighed> lines) {
    this.plan = plan;
    this.lines = lines;
    this.sum = BatchPlan.sum(lines);
    lines.forEach(line -> rows.add(new ArrayList<>()));
    rows.add(new ArrayList<>());
  }

  /** What overage is, for the lines of a batch. */
  static String overage(List<Weighed> lines) {
    boolean givesWay = lines.stream().anyMatch(line -> line.extra().kg().signum() < 0);
    return givesWay ? OVERAGE + GIVES_WAY : OVERAGE;
  }

  static Table large(BatchPlan plan, String head, List<Weighed> lines) {
    return new WeighTables(plan, lines).weights(head, "kg", Mass::inKg).initials("By").table();
  }

  static Table small(BatchPlan plan, String head, List<Weighed> lines) {
    return new WeighTables(plan, lines)
        .weights(head, "g", Mass::inGrams)
        .initials("By")
        .initials("Check")
        .table();
  }

  static Table coat(BatchPlan plan, String head, List<Weighed> lines) {
    return new WeighTables(plan, lines).perKernel(head, "kg", Mass::inKg).initials("By").table();
  }

  static Table smallCoat(BatchPlan plan, String head, List<Weighed> lines) {
    return new WeighTables(plan, lines)
        .perKernel(head, "g", Mass::inGrams)
        .initials("By")
        .initials("Check")
        .table();
  }

  private WeighTables perKernel(String head, String unit, Function<Mass, String> shown) {
    name(head);
    masses(unit, shown);
    perKg();
    return lots().room("Actual " + unit);
  }

  private void perKg() {
    figures(
        "g per kg of kernel", line -> line.perKgKernel().inGrams(), sum.perKgKernel().inGrams());
  }

  private WeighTables weights(String head, String unit, Function<Mass, String> shown) {
    name(head);
    masses(unit, shown);
    return lots().room("Actual " + unit);
  }

  private void masses(String unit, Function<Mass, String> shown) {
    int decimals = lines.stream().anyMatch(line -> line.share() < 0.1) ? 3 : 2;
    figures("Share %", line -> Figures.visible(line.share(), decimals), "");
    if (lines.stream().anyMatch(line -> !line.extra().isZero())) {
      figures("Recipe " + unit, line -> shown.apply(line.target()), shown.apply(sum.target()));
      figures("Overage " + unit, line -> extra(line, shown), shown.apply(sum.extra()));
    }
    figures("Weigh " + unit, line -> shown.apply(line.total()), shown.apply(sum.total()));
  }

  private static String extra(Weighed line, Function<Mass, String> shown) {
    return line.extra().isZero() ? "" : shown.apply(line.extra());
  }

  private void name(String head) {
    column(
        new Column(head, Holds.WORDS),
        line -> RebalancedBlocks.marked(plan, line.name(), line.title()),
        "Together");
  }

  private void figures(String head, Function<Weighed, String> cell, String total) {
    column(new Column(head, Holds.FIGURES), cell, total);
  }

  private WeighTables initials(String head) {
    column(new Column(head, Holds.INITIALS), line -> "", "");
    return this;
  }

  private WeighTables lots() {
    column(new Column("Lot", Holds.ROOM), Weighed::lot, "");
    return this;
  }

  private WeighTables room(String head) {
    column(new Column(head, Holds.ROOM), line -> "", "");
    return this;
  }

  private void column(Column column, Function<Weighed, String> cell, String total) {
    columns.add(column);
    for (int i = 0; i < lines.size(); i++) {
      rows.get(i).add(cell.apply(lines.get(i)));
    }
    rows.get(lines.size()).add(total);
  }

  private Table table() {
    boolean several = lines.size() > 1;
    return new Table(columns, several ? rows : rows.subList(0, lines.size()), several);
  }
}
