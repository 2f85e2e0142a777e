package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Mass;
import dev.pellucid.engine.plan.OnScales;
import dev.pellucid.engine.plan.OnScales.Filled;
import dev.pellucid.engine.plan.OnScales.LoadLine;
import dev.pellucid.engine.plan.OnScales.Shown;
import dev.pellucid.engine.plan.OnScales.ThinStep;
import dev.pellucid.engine.plan.OnScales.Thinned;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Signatures;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** The weights of one load, each on its scale, with room for every load. */
final class LoadTables {
  /** Beyond so many loads a sheet has no room for each. */
  private static final int MOST_SIDE_BY_SIDE = 3;

  private final BatchPlan plan;
  private final OnScales scales;
  private final List<Block> blocks = new ArrayList<>();

  private LoadTables(BatchPlan plan, OnScales scales) {
    this.plan = plan;
    this.scales = scales;
  }

  private static final String OFF =
      "Weigh is what the scale is to show, net of its container, ± how far it may be off. Off % is"
          + " what rounding to the scale adds to the recipe or takes from it.";

  /** The mix: loads, the recipe for the whole batch, dilutions, then what each load takes. */
  static List<Block> mix(BatchPlan plan, OnScales scales) {
    LoadTables tables = new LoadTables(plan, scales);
    tables.blocks.add(new Facts(tables.loads()));
    scales.mixer().filter(Filled::tooEmpty).ifPresent(tables::tooEmpty);
    tables.blocks.add(WeighTables.batch("Whole batch", plan.mixLines()));
    scales.mix().forEach(tables::dilution);
    tables.blocks.add(new Words(OFF));
    tables.portion("load", scales.loads(), scales.mix());
    return tables.blocks;
  }

  /** The coat: the recipe for the whole batch, then what each round of the coater takes. */
  static List<Block> coat(BatchPlan plan, OnScales scales) {
    LoadTables tables = new LoadTables(plan, scales);
    tables.blocks.add(WeighTables.wholeCoat("Whole batch", plan.allCoatLines()));
    scales.coat().forEach(tables::dilution);
    tables.portion("round", scales.coatRounds(), scales.coat());
    return tables.blocks;
  }

  private List<Fact> loads() {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact("Loads", scales.loads() == 1 ? "one" : scales.loads() + ", all of them equal"));
    scales
        .mixer()
        .ifPresent(
            filled -> {
              String wet =
                  filled.wet() > filled.dry() ? ", " + percent(filled.wet()) + " with water" : "";
              facts.add(
                  new Fact("Mixer", filled.mixer() + ", " + percent(filled.dry()) + " full" + wet));
            });
    return facts;
  }

  private void tooEmpty(Filled filled) {
    blocks.add(
        new Warnings(
            List.of(
                "Too little for this mixer: "
                    + percent(filled.dry())
                    + " full, it mixes evenly from "
                    + percent(filled.least())
                    + ". Ask before you mix.")));
  }

  private void dilution(LoadLine line) {
    if (line.thinned().isEmpty()) {
      return;
    }
    Thinned thinned = line.thinned().get();
    blocks.add(
        new Words(
            line.title()
                + " is too little to weigh by itself. Blend it first with "
                + thinned.carrier()
                + " from the bag, each step until no streak is seen; the weight of "
                + thinned.carrier()
                + " below is already less by what goes in with it. The next step takes of what the"
                + " one before made. What is left over is marked with its strength, day and lot, or"
                + " thrown away; it never goes into a load."
                + larger(thinned)));
    List<List<String>> rows = new ArrayList<>();
    String strong = line.title();
    for (ThinStep step : thinned.steps()) {
      rows.add(
          List.of(
              strong,
              grams(step.strong()),
              grams(step.carrier()),
              step.makes().inGrams(),
              step.left().inGrams(),
              ""));
      strong = "of the step before";
    }
    blocks.add(
        new Table(
            List.of(
                new Column("Dilute", Holds.WORDS),
                new Column("Strong g", Holds.FIGURES),
                new Column("Carrier g", Holds.FIGURES),
                new Column("Makes g", Holds.FIGURES),
                new Column("Left over g", Holds.FIGURES),
                new Column("By", Holds.INITIALS)),
            rows,
            false));
  }

  /** Of a premix more can be made at once: so much that the line is weighed by itself. */
  private String larger(Thinned thinned) {
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

  private void portion(String what, int count, List<LoadLine> lines) {
    List<LoadLine> large = lines.stream().filter(line -> !line.micro()).toList();
    List<LoadLine> small = lines.stream().filter(LoadLine::micro).toList();
    String head = count == 1 ? "" : "Each " + what + ", ";
    if (count > MOST_SIDE_BY_SIDE) {
      blocks.add(new Words("One sheet for each " + what + ": this is " + what + " ____."));
    }
    if (!large.isEmpty()) {
      blocks.add(table(capital(head + "large lines"), "kg", Mass::inKg, what, count, large));
    }
    if (!small.isEmpty()) {
      blocks.add(table(capital(head + "small lines"), "g", Mass::inGrams, what, count, small));
      blocks.add(new Signatures(List.of("Small lines: weighed by", "Small lines: checked by")));
    }
  }

  private static Table table(
      String head,
      String unit,
      Function<Mass, String> shown,
      String what,
      int count,
      List<LoadLine> lines) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(head, Holds.WORDS));
    columns.add(new Column("Weigh " + unit, Holds.FIGURES));
    columns.add(new Column("± " + unit, Holds.FIGURES));
    columns.add(new Column("Scale", Holds.NAME));
    columns.add(new Column("Off %", Holds.FIGURES));
    columns.add(new Column("Lot", Holds.ROOM));
    boolean sideBySide = count > 1 && count <= MOST_SIDE_BY_SIDE;
    IntStream.rangeClosed(1, sideBySide ? count : 1)
        .mapToObj(i -> sideBySide ? capital(what) + " " + i : "Actual " + unit)
        .forEach(title -> columns.add(new Column(title, Holds.ROOM)));
    columns.add(new Column("By", Holds.INITIALS));
    List<List<String>> rows = lines.stream().map(line -> row(line, shown, columns.size())).toList();
    return new Table(columns, rows, false);
  }

  private static List<String> row(LoadLine line, Function<Mass, String> shown, int columns) {
    List<String> cells = new ArrayList<>();
    cells.add(line.title() + (line.thinned().isPresent() ? ", diluted" : ""));
    if (line.thinned().isPresent()) {
      weight(line.thinned().get().take(), shown, cells);
    } else if (line.shown().isPresent()) {
      weight(line.shown().get(), shown, cells);
    } else {
      cells.add(shown.apply(line.wanted()));
      cells.add("");
      cells.add("none can, ask");
    }
    cells.add(Figures.fixed(Unit.PERCENT.fromBase(line.off()), 2));
    cells.add(line.lot());
    while (cells.size() < columns) {
      cells.add("");
    }
    return cells;
  }

  private static void weight(Shown weight, Function<Mass, String> shown, List<String> cells) {
    String times = weight.weighings() == 1 ? "" : weight.weighings() + " × ";
    cells.add(times + shown.apply(weight.each()));
    cells.add(shown.apply(weight.tolerance()));
    cells.add(weight.scale());
  }

  private static String grams(Shown weight) {
    String times = weight.weighings() == 1 ? "" : weight.weighings() + " × ";
    return times + weight.each().inGrams();
  }

  private static String percent(double part) {
    return Figures.fixed(Unit.PERCENT.fromBase(part), 0) + " %";
  }

  private static String capital(String words) {
    return TaskWords.capital(words);
  }
}
