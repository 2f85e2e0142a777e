package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.OnScales;
import dev.pellucid.engine.plan.OnScales.LoadLine;
import dev.pellucid.engine.plan.OnScales.ThinStep;
import dev.pellucid.engine.plan.OnScales.Thinned;
import dev.pellucid.engine.plan.Totals;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Look;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Together;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.List;

/** How what is too little to weigh is diluted before the loads. */
final class DilutionBlocks {
  private DilutionBlocks() {}

  /** Nothing where a line is weighed as it is. */
  static List<Block> of(LoadLine line, BatchPlan plan, OnScales scales) {
    if (line.thinned().isEmpty()) {
      return List.of();
    }
    Thinned thinned = line.thinned().get();
    String words =
        line.title()
            + " is too little to weigh by itself. Blend it first with "
            + thinned.carrier()
            + " from the bag, each step until no streak is seen; the weight of "
            + thinned.carrier()
            + " below is already less by what goes in with it. The next step takes of what the"
            + " one before made. What is left over is marked with its strength, day and lot, or"
            + " thrown away; it never goes into a load."
            + larger(thinned, plan, scales);
    List<List<String>> rows = new ArrayList<>();
    String strong = line.title();
    for (ThinStep step : thinned.steps()) {
      rows.add(
          List.of(
              strong,
              LoadTables.weight(step.strong(), true),
              LoadTables.weight(step.carrier(), true),
              step.makes().inGrams() + " g",
              step.left().inGrams() + " g",
              "",
              ""));
      strong = "of the step before";
    }
    List<Column> columns =
        List.of(
            new Column("Dilute", Holds.WORDS),
            new Column("Strong: weigh", Holds.WEIGHT),
            new Column("Carrier: weigh", Holds.WEIGHT),
            new Column("Makes", Holds.FIGURES),
            new Column("Left over", Holds.FIGURES),
            new Column("By", Holds.INITIALS),
            new Column("2nd", Holds.INITIALS));
    return List.of(
        new Together(
            Look.KEPT,
            List.of(
                new Words(words),
                new Table(columns, rows, false),
                new Words(intoRecord(line, plan, scales)))));
  }

  /** A record holds what is in the feed: no dilution, and the carrier whole. */
  private static String intoRecord(LoadLine line, BatchPlan plan, OnScales scales) {
    List<String> totals = new ArrayList<>();
    for (Totals.OfLine one : Totals.ofDilution(line, plan, scales)) {
      String weight = one.kg().asDouble() < 1 ? one.kg().inGrams() + " g" : one.kg().inKg() + " kg";
      totals.add(one.name() + " " + weight);
    }
    return "Into the record: " + String.join(", ", totals) + ".";
  }

  /** Of a premix more can be made at once: so much that the line is weighed by itself. */
  private static String larger(Thinned thinned, BatchPlan plan, OnScales scales) {
    return plan.premixing()
        .filter(premixing -> scales.loads() == 1)
        .map(
            premixing -> {
              double bag = premixing.bag().asDouble();
              double kg = plan.balance().weighed().asDouble() * thinned.enough();
              return " From "
                  + Figures.plain(Closeness.up(kg / bag) * bag)
                  + " kg of the premix in one load on it needs no dilution.";
            })
        .orElse("");
  }
}
