package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Expectation;
import dev.pellucid.engine.plan.Expectation.Held;
import dev.pellucid.engine.plan.MassBalance;
import dev.pellucid.engine.plan.Task;
import dev.pellucid.engine.plan.TrayChart;
import dev.pellucid.engine.plan.Weighed;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The tables of a batch sheet. Weights are to the gram; sums are rounded after adding up. */
final class SheetTables {
  static final String OVERAGE =
      "Overage is weighed on top of the recipe share: what is lost in handling, and what decays."
          + " Where it is below nought, the line gives way to the overage of others. Sums are"
          + " rounded after adding up.";
  static final String EXPECTED =
      "Expected is on target and fresh. Judged is at the end where the limit bites: for a minimum"
          + " at the end of the shelf life, wet, handling overage lost; for a maximum fresh, dry,"
          + " all overage present. \"or more\" stands where some ingredient does not tell its"
          + " content.";

  private static final int GRAMS = 3;

  private SheetTables() {}

  static Table weighing(String head, List<Weighed> lines) {
    List<Column> columns =
        List.of(
            words(head),
            figures("Share %"),
            figures("Recipe kg"),
            figures("Overage kg"),
            figures("Weigh kg"),
            room("Lot"),
            room("Actual"),
            room("Initials"));
    List<List<String>> rows = new ArrayList<>();
    for (Weighed line : lines) {
      rows.add(
          row(
              List.of(line.title(), share(line.share()), kg(line.target())),
              List.of(extra(line.extra(), Unit.KG, GRAMS), kg(line.total())),
              3));
    }
    Weighed.Sum sum = BatchPlan.sum(lines);
    rows.add(
        row(
            List.of("Together", share(sum.share()), kg(sum.target())),
            List.of(extra(sum.extra(), Unit.KG, GRAMS), kg(sum.total())),
            3));
    return new Table(columns, rows, true);
  }

  static Table micro(String head, List<Weighed> lines) {
    List<Column> columns =
        List.of(
            words(head),
            figures("Share %"),
            figures("Recipe g"),
            figures("Overage g"),
            figures("Weigh g"),
            room("Lot"),
            room("Actual"),
            room("Weighed"),
            room("Checked"));
    List<List<String>> rows = new ArrayList<>();
    for (Weighed line : lines) {
      rows.add(
          row(
              List.of(line.title(), share(line.share()), grams(line.target())),
              List.of(extra(line.extra(), Unit.G, 2), grams(line.total())),
              4));
    }
    Weighed.Sum sum = BatchPlan.sum(lines);
    rows.add(
        row(
            List.of("Together", share(sum.share()), grams(sum.target())),
            List.of(extra(sum.extra(), Unit.G, 2), grams(sum.total())),
            4));
    return new Table(columns, rows, true);
  }

  static Table coat(List<Weighed> lines) {
    List<Column> columns =
        List.of(
            words("Coat"),
            figures("Share %"),
            figures("Recipe kg"),
            figures("Overage kg"),
            figures("Weigh kg"),
            figures("g per kg of kernel"),
            room("Lot"),
            room("Actual"),
            room("Initials"));
    List<List<String>> rows = new ArrayList<>();
    for (Weighed line : lines) {
      rows.add(
          row(
              List.of(line.title(), share(line.share()), kg(line.target())),
              List.of(
                  extra(line.extra(), Unit.KG, GRAMS), kg(line.total()), grams(line.perKgKernel())),
              3));
    }
    Weighed.Sum sum = BatchPlan.sum(lines);
    rows.add(
        row(
            List.of("Together", share(sum.share()), kg(sum.target())),
            List.of(extra(sum.extra(), Unit.KG, GRAMS), kg(sum.total()), grams(sum.perKgKernel())),
            3));
    return new Table(columns, rows, true);
  }

  static List<Block> drying(Task.Drying drying) {
    TrayChart chart = drying.chart();
    String load = Figures.fixed(Unit.G.fromBase(chart.loaded()), 0);
    String what = chart.ofThePlant() ? "A tray loaded with " : "A sample of ";
    return List.of(
        new Words(
            what
                + load
                + " g net of wet feed is dry when it weighs, net. Measure the moisture before, take"
                + " its row."),
        tray(chart),
        checks(drying.checks()));
  }

  private static Table tray(TrayChart chart) {
    List<Column> columns = new ArrayList<>();
    columns.add(words("Moisture before"));
    for (double target : chart.targets()) {
      String aim = target == chart.aim() ? " (aim)" : "";
      columns.add(figures("g at " + Figures.plain(target, Unit.PERCENT) + aim));
    }
    List<List<String>> rows =
        chart.rows().stream()
            .map(
                row ->
                    Stream.concat(
                            Stream.of(Figures.fixed(Unit.PERCENT.fromBase(row.before()), 2) + " %"),
                            row.weights().stream().map(kg -> Figures.fixed(Unit.G.fromBase(kg), 1)))
                        .toList())
            .toList();
    return new Table(columns, rows, false);
  }

  private static Table checks(List<Double> hours) {
    List<Column> columns =
        List.of(
            words("Check after"),
            room("Time"),
            room("Tray, g net"),
            room("Air °C"),
            room("Moisture %"),
            room("Initials"));
    List<List<String>> rows =
        hours.stream().map(hour -> row(List.of(hours(hour)), List.of(), 5)).toList();
    return new Table(columns, rows, false);
  }

  private static String hours(double hours) {
    return hours < 1 ? Figures.plain(hours, Unit.MINUTE) : Figures.plain(hours, Unit.HOUR);
  }

  static Table massBalance(MassBalance balance) {
    List<List<String>> rows =
        List.of(
            List.of("Overage for handling, apart and in none of these", kg(balance.handling()), ""),
            List.of("Through the mixer", kg(balance.mix()), ""),
            List.of("+ water", kg(balance.water()), ""),
            List.of("+ steam", kg(balance.steam()), ""),
            List.of("- water that goes off", kg(balance.evaporated()), ""),
            List.of("= kernel", kg(balance.kernel()), ""),
            List.of("+ coat", kg(balance.coat()), ""),
            List.of("= finished feed", kg(balance.finished()), ""),
            List.of("- dust, fines, start-up", kg(balance.shrink()), ""),
            List.of("= in the bags", kg(balance.bagged()), ""));
    return new Table(List.of(words("Mass"), figures("kg"), room("Actual")), rows, false);
  }

  static Table expected(List<Expectation> expected) {
    List<Column> columns =
        List.of(
            words("Analysis"),
            figures("Expected"),
            words("Limit"),
            words("From"),
            figures("Judged"),
            words("Kept"),
            room("Found"));
    List<List<String>> rows = new ArrayList<>();
    for (Expectation one : expected) {
      boolean first = true;
      for (Held held : one.held()) {
        String more = one.partlyUnknown() ? " or more" : "";
        rows.add(
            List.of(
                first ? one.title() + one.basis() : "",
                first ? measured(one.expected(), one.unit()) + more : "",
                held.bound(),
                held.kind(),
                measured(held.judged(), held.unit()),
                held.keeps() ? "yes" : "NO",
                ""));
        first = false;
      }
    }
    return new Table(columns, rows, false);
  }

  /** kg to the gram. */
  static String kg(double kg) {
    return Figures.fixed(kg, GRAMS);
  }

  private static String grams(double kg) {
    return Figures.fixed(Unit.G.fromBase(kg), 2);
  }

  /** Nothing where there is none. */
  private static String extra(double kg, Unit unit, int decimals) {
    String figure = Figures.fixed(unit.fromBase(kg), decimals);
    return figure.equals(Figures.fixed(0, decimals)) ? "" : figure;
  }

  private static String share(double percent) {
    return Figures.fixed(percent, 2);
  }

  private static String measured(double figure, String unit) {
    return unit.isEmpty() ? Figures.plain(figure) : Figures.plain(figure) + " " + unit;
  }

  private static List<String> row(List<String> first, List<String> then, int room) {
    return Stream.of(first, then, Stream.generate(() -> "").limit(room).toList())
        .flatMap(List::stream)
        .toList();
  }

  private static Column words(String head) {
    return new Column(head, Holds.WORDS);
  }

  private static Column figures(String head) {
    return new Column(head, Holds.FIGURES);
  }

  private static Column room(String head) {
    return new Column(head, Holds.ROOM);
  }
}
