package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Rebalanced;
import dev.pellucid.engine.plan.Rebalanced.Moved;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Look;
import dev.pellucid.engine.report.Block.Signatures;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Together;
import dev.pellucid.engine.report.Block.Warnings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a sheet says of a batch that has other shares than its recipe: in its heading, on each page,
 * at each line, and in a part of its own with room for who answers for it.
 */
final class RebalancedBlocks {
  /** Where the lots of other sheets may be taken by another number. */
  static final String LOTS =
      "Lots are those that this batch was re-balanced for, else those of the store that expire"
          + " first. Where one of the first is not there, stop and ask.";

  private RebalancedBlocks() {}

  /** Behind the title; empty for a batch by its recipe. */
  static String title(BatchPlan plan) {
    return plan.rebalanced()
        .map(
            told ->
                ", re-balanced for "
                    + (told.lots().size() == 1 ? "lot " : "lots ")
                    + String.join(", ", told.lots()))
        .orElse("");
  }

  /** What every page says; empty for a batch by its recipe. */
  static String running(BatchPlan plan) {
    return plan.rebalanced().isPresent() ? ", re-balanced" : "";
  }

  /** What a line is called: with both shares where this batch has another one than the recipe. */
  static String marked(BatchPlan plan, String name, String title) {
    Optional<Moved> moved = plan.rebalanced().flatMap(told -> told.line(name));
    return moved.isEmpty()
        ? title
        : title
            + ": "
            + percent(plan.rebalanced().get(), moved.get().batch())
            + " (recipe "
            + percent(plan.rebalanced().get(), moved.get().recipe())
            + ")";
  }

  static List<Block> of(Rebalanced told) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Warnings(
            List.of(
                "This batch is not made by the shares of the recipe. It is right for "
                    + String.join(", ", told.lots())
                    + " alone: where another lot must be taken, stop and ask.")));
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Given on", told.day().toString()));
    if (!told.by().isEmpty()) {
      facts.add(new Fact("Answers for them", told.by()));
    }
    if (!told.because().isEmpty()) {
      facts.add(new Fact("Because", told.because()));
    }
    blocks.add(new Facts(facts));
    blocks.add(
        new Together(
            Look.KEPT,
            List.of(
                table(told),
                new Signatures(List.of("Signed before weighing, name", "Signed on, day")))));
    return blocks;
  }

  private static Table table(Rebalanced told) {
    List<List<String>> rows = new ArrayList<>();
    for (Moved one : told.moved()) {
      double more = one.batch() - one.recipe();
      rows.add(
          List.of(
              one.title(),
              percent(told, one.recipe()),
              percent(told, one.batch()),
              (more > 0 ? "+" : "") + percent(told, more)));
    }
    return new Table(
        List.of(
            new Column("Line", Holds.WORDS),
            new Column("Recipe", Holds.FIGURES),
            new Column("This batch", Holds.FIGURES),
            new Column("Change", Holds.FIGURES)),
        rows,
        false);
  }

  /** With as many decimals as it takes to show each change. */
  private static String percent(Rebalanced told, double share) {
    int decimals = 2;
    for (Moved one : told.moved()) {
      decimals = Math.max(decimals, Figures.apart(one.recipe(), one.batch(), decimals).decimals());
    }
    return Figures.fixed(share, decimals) + " %";
  }
}
