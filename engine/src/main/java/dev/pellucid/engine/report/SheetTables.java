package dev.pellucid.engine.report;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.plan.Expectation;
import dev.pellucid.engine.plan.Mass;
import dev.pellucid.engine.plan.MassBalance;
import dev.pellucid.engine.plan.Premixing.Supplied;
import dev.pellucid.engine.plan.Task;
import dev.pellucid.engine.plan.TrayChart;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The tables of a batch sheet beside the weigh lists. */
final class SheetTables {
  private SheetTables() {}

  static List<Block> drying(Task.Drying drying) {
    TrayChart chart = drying.chart();
    String load = Figures.fixed(Unit.G.fromBase(chart.loaded()), 0);
    String what = chart.ofThePlant() ? "A tray loaded with " : "A sample of ";
    return List.of(
        new Words(
            what
                + load
                + " g net of wet feed is dry when it weighs as below, net. Measure the moisture"
                + " before, take its row; when it is beyond these rows, ask before you dry."),
        chart(chart),
        checks(drying.checks(), chart.ofThePlant() ? "Tray, g net" : "Sample, g net"));
  }

  private static Table chart(TrayChart chart) {
    List<Column> columns = new ArrayList<>();
    columns.add(figures("Moisture before"));
    for (double target : chart.targets()) {
      String aim = target == chart.aim() ? " (aim)" : "";
      columns.add(figures("g at " + Figures.plain(target, Unit.PERCENT) + aim));
    }
    List<List<String>> rows =
        chart.rows().stream()
            .map(
                row ->
                    Stream.concat(
                            Stream.of(Figures.fixed(Unit.PERCENT.fromBase(row.before()), 1) + " %"),
                            row.weights().stream().map(kg -> Figures.fixed(Unit.G.fromBase(kg), 0)))
                        .toList())
            .toList();
    return new Table(columns, rows, false);
  }

  private static Table checks(List<Double> hours, String weighed) {
    List<Column> columns =
        List.of(
            words("Check after"),
            room("Time"),
            room(weighed),
            room("Air °C"),
            room("Moisture %"),
            new Column("By", Holds.INITIALS));
    List<List<String>> rows =
        hours.stream().map(hour -> List.of(hours(hour), "", "", "", "", "")).toList();
    return new Table(columns, rows, false);
  }

  private static String hours(double hours) {
    return hours < 1 ? Figures.plain(hours, Unit.MINUTE) : Figures.plain(hours, Unit.HOUR);
  }

  static Table massBalance(MassBalance balance) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(mass("Weighed, recipe shares", balance.weighed()));
    more(rows, "- coat, goes on later", balance.coat());
    so(rows, "= into the mixer", balance.mix());
    more(rows, "+ water", balance.water());
    more(rows, "+ steam", balance.steam());
    more(rows, "- water that goes off", balance.evaporated());
    so(rows, "= kernel", balance.kernel());
    more(rows, "+ coat", balance.coat());
    more(rows, "- water that goes off after the coat", balance.evaporatedCoated());
    so(rows, "= finished", balance.finished());
    more(rows, "- dust, fines, start-up", balance.shrink());
    rows.add(mass("= in the bags", balance.bagged()));
    more(rows, "Overage for handling: weighed on top, lost on the way", balance.handling());
    return new Table(List.of(words("Mass"), figures("kg"), room("Actual kg")), rows, false);
  }

  /** A sum where the row before it changed anything. */
  private static void so(List<List<String>> rows, String what, Mass mass) {
    String before = rows.get(rows.size() - 1).get(0);
    if (before.startsWith("+") || before.startsWith("-")) {
      rows.add(mass(what, mass));
    }
  }

  /** Nothing where there is none. */
  private static void more(List<List<String>> rows, String what, Mass mass) {
    if (!mass.isZero()) {
      rows.add(mass(what, mass));
    }
  }

  private static List<String> mass(String what, Mass mass) {
    return List.of(what, mass.inKg(), "");
  }

  /** What is expected, beside what is asked, with room for what is found. */
  static Table expected(String head, List<Expectation> expected) {
    List<Column> columns =
        List.of(
            words(head),
            figures("Expected"),
            words("Limit"),
            words("From"),
            figures("Judged"),
            words("Limit met"),
            room("Found"));
    List<List<String>> rows = new ArrayList<>();
    for (Expectation one : expected) {
      boolean first = true;
      for (Held held : one.held()) {
        rows.add(
            List.of(
                first ? one.title() + one.basis() : "",
                first ? figure(one) : "",
                held.demand().askedNowBesideBasis(),
                held.demand().kindWord()
                    + held.demand().waivedUntil().map(day -> ", waived until " + day).orElse(""),
                judged(held),
                held.keeps() ? "yes" : "NO",
                ""));
        first = false;
      }
    }
    return new Table(columns, rows, false);
  }

  /** {@code Digestible protein 31.56 % (min 29 %, judged 31.22 %, kept)}. */
  static String reckoned(Expectation one) {
    List<String> asked = new ArrayList<>();
    for (Held held : one.held()) {
      asked.add(
          held.demand().askedNowBesideBasis()
              + held.demand().waivedUntil().map(day -> ", waived until " + day).orElse("")
              + ", judged "
              + judged(held)
              + (held.keeps() ? ", kept" : ", NOT kept"));
    }
    return one.title() + one.basis() + " " + figure(one) + " (" + String.join("; ", asked) + ")";
  }

  private static String figure(Expectation one) {
    return one.certainty().sign() + measured(Figures.plain(one.expected()), one.unit());
  }

  private static String judged(Held held) {
    return measured(
        held.certainty().sign() + Figures.plainBeside(held.shown(), held.bound()),
        held.unit().symbol());
  }

  static Table supplied(List<Supplied> supplied) {
    List<Column> columns =
        List.of(
            words("Nutrient"),
            figures("Asked per kg of feed"),
            figures("Designed per kg of premix"),
            figures("Fresh"),
            figures("Stored"),
            room("Found"));
    List<List<String>> rows =
        supplied.stream()
            .map(
                one ->
                    List.of(
                        one.title() + ", " + one.unit(),
                        Figures.plain(one.asked()),
                        Figures.plain(one.designed()),
                        Figures.plain(one.fresh()),
                        one.stored().isPresent()
                            ? Figures.plain(one.stored().getAsDouble())
                            : "not known",
                        ""))
            .toList();
    return new Table(columns, rows, false);
  }

  private static String measured(String figure, String unit) {
    return unit.isEmpty() ? figure : figure + " " + unit;
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
