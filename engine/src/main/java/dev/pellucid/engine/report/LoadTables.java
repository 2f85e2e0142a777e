package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.Added;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Mass;
import dev.pellucid.engine.plan.OnScales;
import dev.pellucid.engine.plan.OnScales.Filled;
import dev.pellucid.engine.plan.OnScales.LoadLine;
import dev.pellucid.engine.plan.OnScales.Shown;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Look;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Together;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is weighed, a table for each load, in the order in which it goes into the mixer; and what
 * goes on the kernel, a table for each round of the coater. No other weight stands beside them.
 */
final class LoadTables {
  private static final String NOT_HERE = "-";
  private static final String SECOND =
      "A box under \"2nd\" is signed by a second person who has read the scale. Who works alone"
          + " writes the number of the scale ticket there, and has it checked later.";
  private static final String BED =
      "Tip in by the numbers, with the mixer turning: half of the largest first, so that what is"
          + " small falls on meal and is covered by the rest.";
  private static final String BY_NUMBERS = "Tip in by the numbers, with the mixer turning.";

  /** A longer table may go on overleaf, where its head stands again. */
  private static final int MOST_KEPT = 10;

  private final BatchPlan plan;
  private final OnScales scales;
  private final List<Block> blocks = new ArrayList<>();

  private LoadTables(BatchPlan plan, OnScales scales) {
    this.plan = plan;
    this.scales = scales;
  }

  /** The mix: loads, dilutions, then what each load takes. */
  static List<Block> mix(BatchPlan plan, OnScales scales) {
    LoadTables tables = new LoadTables(plan, scales);
    tables.blocks.add(new Facts(tables.loads()));
    scales.mixer().filter(Filled::tooEmpty).ifPresent(tables::tooEmpty);
    tables.dilutions(scales.mix());
    boolean liquid = scales.mix().stream().anyMatch(one -> one.turn() == OnScales.Turn.LIQUID);
    boolean bed = scales.added().stream().anyMatch(one -> one.part() == Added.Part.FIRST_HALF);
    tables.words(
        (bed ? BED : BY_NUMBERS) + (liquid ? " Liquids go in last, slowly." : ""), scales.mix());
    Repeats.LOADS
        .aSheetForEach(scales.loads())
        .ifPresent(words -> tables.blocks.add(new Words(words)));
    Repeats.LOADS
        .of(scales.loads())
        .forEach(load -> tables.portion(load, "into the mixer in this order", scales.added()));
    return tables.blocks;
  }

  /** The coat: what each round of the coater takes. */
  static List<Block> coat(BatchPlan plan, OnScales scales) {
    LoadTables tables = new LoadTables(plan, scales);
    tables.dilutions(scales.coat());
    if (scales.mix().stream().noneMatch(tables::isChecked)) {
      tables.words("", scales.coat());
    }
    Repeats.ROUNDS
        .aSheetForEach(scales.coatRounds())
        .ifPresent(words -> tables.blocks.add(new Words(words)));
    Repeats.ROUNDS
        .of(scales.coatRounds())
        .forEach(round -> tables.portion(round, "onto the kernel", scales.addedToKernel()));
    return tables.blocks;
  }

  private void words(String first, List<LoadLine> lines) {
    boolean second = lines.stream().anyMatch(this::isChecked);
    String words = (first + (second ? " " + SECOND : "")).strip();
    if (!words.isEmpty()) {
      blocks.add(new Words(words));
    }
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

  private void dilutions(List<LoadLine> lines) {
    for (LoadLine line : lines) {
      blocks.addAll(DilutionBlocks.of(line, plan, scales));
    }
  }

  /** One load or round: its table, and who checked later where nobody was there. */
  private void portion(Repeats.One one, String where, List<Added> added) {
    boolean kernel = added.stream().anyMatch(it -> scales.coat().contains(it.line()));
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("No.", Holds.NAME));
    columns.add(new Column(one.before(where), Holds.WORDS));
    columns.add(new Column(one.alone() ? "Weigh" : one.name() + ": weigh", Holds.WEIGHT));
    columns.add(new Column("±", Holds.FIGURES));
    columns.add(new Column("Scale", Holds.NAME));
    if (kernel) {
      columns.add(new Column("g for 1 kg of kernel", Holds.FIGURES));
    }
    columns.add(new Column("Lot", Holds.ROOM));
    columns.add(new Column("Actual", Holds.ROOM));
    columns.add(new Column("By", Holds.INITIALS));
    columns.add(new Column("2nd", Holds.INITIALS));
    List<List<String>> rows = new ArrayList<>();
    for (Added it : added) {
      rows.add(row(rows.size() + 1, it, kernel, columns.size()));
    }
    List<Block> kept = new ArrayList<>();
    if (kernel && !one.alone()) {
      kept.add(
          new Facts(
              List.of(
                  new Fact(
                      "Kernel, round " + one.number(), Figures.fixed(kernelOfRound(), 2) + " kg"),
                  new Fact("Kernel weighed, kg", ""))));
    }
    kept.add(new Table(columns, rows, false));
    if (added.stream().anyMatch(it -> isChecked(it.line()))) {
      kept.add(
          new Facts(
              List.of(new Fact("Checked later by", ""), new Fact("Date, ticket numbers", ""))));
    }
    if (rows.size() > MOST_KEPT) {
      blocks.addAll(kept);
    } else {
      blocks.add(new Together(Look.KEPT, kept));
    }
  }

  private List<String> row(int number, Added it, boolean kernel, int columns) {
    LoadLine line = it.line();
    List<String> cells = new ArrayList<>();
    cells.add(String.valueOf(number));
    cells.add(name(it));
    if (it.part() == Added.Part.OTHER_HALF) {
      while (cells.size() < columns) {
        cells.add(NOT_HERE);
      }
      return cells;
    }
    if (line.thinned().isPresent()) {
      weight(line.thinned().get().take(), cells);
    } else if (line.shown().isPresent()) {
      weight(line.shown().get(), cells);
    } else {
      double kg = line.wanted().asDouble();
      cells.add(kg < 1 ? Figures.plain(Unit.G.fromBase(kg), Unit.G) : Figures.plain(kg, Unit.KG));
      cells.add("");
      cells.add("none can, ask");
    }
    if (kernel) {
      cells.add(perKernel(line));
    }
    cells.add(line.lot());
    cells.add("");
    cells.add("");
    cells.add(isChecked(line) ? "" : NOT_HERE);
    return cells;
  }

  /** Whether a second person signs: what is weighed apart, and every line of a premix. */
  private boolean isChecked(LoadLine line) {
    return line.micro() || plan.premixing().isPresent();
  }

  private String name(Added it) {
    String title =
        RebalancedBlocks.marked(plan, it.line().name(), it.line().title())
            + (it.line().thinned().isPresent() ? ", diluted" : "");
    return switch (it.part()) {
      case ALL -> title;
      case FIRST_HALF -> title + ": weigh all, tip in half";
      case OTHER_HALF -> "The other half of no. 1";
    };
  }

  private double kernelOfRound() {
    return plan.balance().kernel().asDouble() / scales.coatRounds();
  }

  /**
   * What the scale shows for a kg of kernel: diluted where it is, less what it was diluted with.
   */
  private String perKernel(LoadLine line) {
    Optional<Shown> shown =
        line.thinned().isPresent() ? Optional.of(line.thinned().get().take()) : line.shown();
    double kg = shown.isPresent() ? shown.get().together(1).asDouble() : line.wanted().asDouble();
    double grams = Unit.G.fromBase(kg / kernelOfRound());
    return Figures.fixed(grams, grams < 1 ? 3 : 2);
  }

  /** In g below 1 kg, and what it may be off in the same unit. */
  private static void weight(Shown weight, List<String> cells) {
    boolean grams = weight.each().asDouble() < 1;
    cells.add(weight(weight, grams));
    cells.add(mass(weight.tolerance(), grams));
    cells.add(weight.scale());
  }

  /** {@code 2 × 25.00 kg}. */
  static String weight(Shown weight, boolean grams) {
    String times = weight.weighings() == 1 ? "" : weight.weighings() + " × ";
    return times + mass(weight.each(), grams);
  }

  private static String mass(Mass mass, boolean grams) {
    return grams ? mass.inGrams() + " g" : mass.inKg() + " kg";
  }

  private static String percent(double part) {
    return Figures.fixed(Unit.PERCENT.fromBase(part), 0) + " %";
  }
}
