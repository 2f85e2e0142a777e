package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.OnScales;
import dev.pellucid.engine.plan.OnScales.Shown;
import dev.pellucid.engine.plan.Task;
import dev.pellucid.engine.plan.Totals;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tables of single steps that have rows for lines or loads, and what all loads take. */
final class StepTables {
  static final String TOTALS =
      "Batch totals, for the store and the buyer. Do not weigh them: what is weighed stands at each"
          + " load and round.";

  private StepTables() {}

  /** What goes to the mill, and through which screens; nothing for another step. */
  static List<Block> mill(Task task, BatchPlan plan) {
    if (task.milled().isEmpty()) {
      return List.of();
    }
    List<List<String>> rows = new ArrayList<>();
    boolean more = false;
    for (Task.Milled one : task.milled()) {
      more |= one.screens().size() > 1;
      rows.add(
          List.of(
              one.title(),
              one.kg().inKg() + " kg",
              String.join(", then all of it once more through ", one.screens()),
              "",
              ""));
    }
    String loads =
        plan.loads() == 1
            ? ""
            : " The kg are for all " + plan.loads() + " loads together, and no weight for a load.";
    return List.of(
        new Words(
            "What stands here goes through the mill before it is weighed for the mixer, nothing"
                + " else does."
                + (more ? " Where two screens stand, the wider comes first." : "")
                + loads),
        new Table(
            List.of(
                new Column("To be ground", Holds.WORDS),
                new Column(plan.loads() == 1 ? "Grind" : "Grind for the batch", Holds.FIGURES),
                new Column("Screen", Holds.WORDS),
                new Column("Screen unbroken after", Holds.ROOM),
                new Column("By", Holds.INITIALS)),
            rows,
            false));
  }

  /** When each load was in the mixer. */
  static Table times(OnScales scales) {
    List<Column> columns = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    for (Repeats.One one : Repeats.LOADS.of(scales.loads())) {
      rows.add(named(one, List.of("", "", "")));
    }
    load(columns, scales);
    columns.add(new Column("From (time)", Holds.ROOM));
    columns.add(new Column("To (time)", Holds.ROOM));
    columns.add(new Column("By", Holds.INITIALS));
    return new Table(columns, rows, false);
  }

  /**
   * What water each load gets.
   *
   * @param pass how many steps have added water before
   */
  static Table water(Task task, int pass, BatchPlan plan, OnScales scales) {
    Optional<Shown> shown =
        pass < scales.water().size() ? scales.water().get(pass) : Optional.empty();
    List<List<String>> rows = new ArrayList<>();
    for (Repeats.One one : Repeats.LOADS.of(scales.loads())) {
      List<String> cells = new ArrayList<>();
      if (shown.isPresent()) {
        cells.add(LoadTables.weight(shown.get(), false));
        cells.add(shown.get().tolerance().inKg() + " kg");
        cells.add(shown.get().scale());
      } else {
        cells.add(plan.eachLoad(task.added()).inKg() + " kg");
        cells.add("");
        cells.add("");
      }
      cells.addAll(List.of("", "", "", ""));
      rows.add(named(one, cells));
    }
    List<Column> columns = new ArrayList<>();
    load(columns, scales);
    columns.add(new Column("Water: weigh", Holds.WEIGHT));
    columns.add(new Column("±", Holds.FIGURES));
    columns.add(new Column("Scale", Holds.NAME));
    columns.add(new Column("Actual", Holds.ROOM));
    columns.add(new Column("From (time)", Holds.ROOM));
    columns.add(new Column("To (time)", Holds.ROOM));
    columns.add(new Column("By", Holds.INITIALS));
    return new Table(columns, rows, false);
  }

  private static void load(List<Column> columns, OnScales scales) {
    if (scales.loads() > 1) {
      columns.add(new Column("Load", Holds.NAME));
    }
  }

  private static List<String> named(Repeats.One one, List<String> cells) {
    List<String> row = new ArrayList<>();
    if (!one.alone()) {
      row.add(one.name() + " of " + one.of());
    }
    row.addAll(cells);
    return row;
  }

  /** What all loads or rounds take together. */
  static Table totals(List<Totals.Total> totals) {
    boolean extra = totals.stream().anyMatch(one -> one.extra() != 0);
    int decimals = totals.stream().anyMatch(one -> one.share() < 0.1) ? 3 : 2;
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("Batch total, do not weigh", Holds.WORDS));
    columns.add(new Column("Share %", Holds.FIGURES));
    if (extra) {
      columns.add(new Column("Overage %", Holds.FIGURES));
    }
    columns.add(new Column("For", Holds.WORDS));
    columns.add(new Column("Total kg", Holds.FIGURES));
    columns.add(new Column("Lot", Holds.WORDS));
    List<List<String>> rows = new ArrayList<>();
    for (Totals.Total one : totals) {
      List<String> row = new ArrayList<>();
      row.add(one.title());
      row.add(Figures.visible(one.share(), decimals));
      if (extra) {
        row.add(one.extra() == 0 ? "" : Figures.plain(one.extra()));
      }
      row.add(one.times() + (one.coat() ? " rounds" : " loads"));
      row.add(one.kg().inKg());
      row.add(one.lot());
      rows.add(row);
    }
    return new Table(columns, rows, false);
  }
}
