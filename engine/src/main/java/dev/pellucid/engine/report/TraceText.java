package dev.pellucid.engine.report;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.trace.Kilograms;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Origins;
import dev.pellucid.engine.trace.Recall.Sent;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.Trace.Back;
import dev.pellucid.engine.trace.Trace.Batch;
import dev.pellucid.engine.trace.Trace.Holding;
import dev.pellucid.engine.trace.Trace.LotOf;
import dev.pellucid.engine.trace.Trace.Maybe;
import dev.pellucid.engine.trace.Trace.Onward;
import dev.pellucid.engine.trace.Trace.Thing;
import dev.pellucid.engine.trace.Trace.Way;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The answer of a trace in plain text, for a screen. */
public final class TraceText {
  private static final int WIDTH = 160;
  private static final int FINEST = 6;

  private final StringBuilder text = new StringBuilder();

  private TraceText() {}

  /** Where a number went, and who got it. */
  public record Went(Onward onward, List<Call> calls) {
    public Went {
      calls = List.copyOf(calls);
    }
  }

  /**
   * Lays an answer out.
   *
   * @param origins what may be in the batch that was asked for besides
   * @param searched what was searched, in words
   * @param unsearched what could not be
   */
  public static String of(
      List<Back> back,
      List<Origins> origins,
      List<Went> onward,
      String searched,
      List<String> unsearched) {
    TraceText made = new TraceText();
    back.forEach(made::back);
    origins.forEach(made::may);
    onward.forEach(one -> made.onward(one, !back.isEmpty()));
    if (onward.stream().anyMatch(one -> !one.onward().holds().isEmpty())
        || back.stream().anyMatch(one -> !one.holds().isEmpty())) {
      made.line(
          "kg as weighed in, before water and losses; of a planned batch as its recipe asks.");
    }
    made.line("Searched: " + searched + ".");
    if (!unsearched.isEmpty()) {
      made.line("NOT SEARCHED, so that this answer may not be whole:");
      unsearched.forEach(one -> made.line("  " + one));
    }
    return made.text.toString();
  }

  private void line(String words) {
    text.append(words).append('\n');
  }

  /** What may be in it besides, and how it may have come. */
  private void may(Origins origins) {
    if (origins.may().isEmpty()) {
      return;
    }
    line("May be in it besides:");
    line("");
    List<List<String>> rows = new ArrayList<>();
    for (Step one : origins.steps()) {
      if (!one.certain()) {
        String from = one.line().isEmpty() ? "" : one.line() + ", ";
        String bin = one.bin().isEmpty() ? "" : " " + one.bin();
        rows.add(List.of(one.from(), one.to(), from + RecallWords.kind(one.kind()) + bin));
      }
    }
    table(
        new Table(
            List.of(
                new Column("Lot or batch", Holds.NAME),
                new Column("Into", Holds.NAME),
                new Column("Why", Holds.NAME)),
            rows,
            false));
    line("");
  }

  private void onward(Went went, boolean headed) {
    Onward answer = went.onward();
    if (!headed) {
      head(answer.thing());
    }
    if (answer.holds().isEmpty()) {
      line("No record that was searched tells that it went into a batch.");
    } else {
      line("It went into " + batches(answer.holds().size()) + ":");
      line("");
      table(holdings(answer.holds()));
      answer.thing().lot().ifPresent(lot -> weighedIn(lot, answer.holds()));
    }
    line("");
    may(answer);
    onLine(answer);
    delivered(went.calls());
    if (!answer.earlier().isEmpty()) {
      line(
          "Not counted: "
              + String.join(", ", answer.earlier())
              + "; each has such a line, its lot not given, but is of a day before there was any of "
              + answer.thing().number()
              + ".");
      line("");
    }
    circle(answer.circle());
  }

  /** How much of a lot is told to be gone. */
  private void weighedIn(LotOf lot, List<Holding> holds) {
    Kilograms made = direct(holds, false);
    Kilograms planned = direct(holds, true);
    line("");
    line(
        "Of "
            + Figures.plain(lot.kg())
            + " kg that came, "
            + sum(made)
            + " kg were weighed in"
            + (planned.equals(none())
                ? ""
                : ", " + sum(planned) + " kg are put aside for planned batches")
            + ".");
  }

  private static Kilograms none() {
    return new Kilograms(0, true);
  }

  private static Kilograms direct(List<Holding> holds, boolean planned) {
    double told = 0;
    boolean whole = true;
    for (Holding one : holds) {
      for (Way way : one.ways()) {
        if (way.through().isEmpty() && one.batch().became().equals("planned") == planned) {
          told += way.kg().told();
          whole &= way.kg().whole();
        }
      }
    }
    return new Kilograms(told, whole);
  }

  private static String sum(Kilograms kg) {
    return (kg.whole() ? "" : "at least ") + Figures.plain(kg.told());
  }

  private void may(Onward answer) {
    if (answer.may().isEmpty()) {
      return;
    }
    line(
        "It MAY be in "
            + batches(answer.may().size())
            + (answer.holds().isEmpty() ? "" : " more")
            + ", and no record can say:");
    line("");
    reasons(answer.may(), answer);
  }

  private void onLine(Onward answer) {
    if (!answer.onLine().isEmpty()) {
      line(
          batches(answer.onLine().size())
              + " may hold only what was left behind on the line, or took of such a batch:");
      line("");
      reasons(answer.onLine(), answer);
    }
  }

  private void reasons(List<Maybe> all, Onward answer) {
    List<List<String>> rows = new ArrayList<>();
    for (Maybe one : all) {
      List<String> cells = batch(one.batch());
      List<String> why =
          one.doubts().stream()
              .map(doubt -> TraceWords.why(doubt, answer.thing().number()))
              .distinct()
              .toList();
      add(rows, cells, why);
    }
    table(
        new Table(
            Stream.concat(BATCH.stream(), Stream.of(new Column("Why", Holds.NAME))).toList(),
            rows,
            false));
    line("");
  }

  /** To whom these batches went, what is certain first. */
  private void delivered(List<Call> calls) {
    List<List<String>> rows = new ArrayList<>();
    for (boolean certain : new boolean[] {true, false}) {
      for (Call call : calls) {
        call.sent().stream()
            .filter(sent -> sent.certain() == certain)
            .forEach(sent -> rows.add(delivered(call.party(), sent)));
      }
    }
    if (!rows.isEmpty()) {
      line("Delivered:");
      line("");
      table(
          new Table(
              List.of(
                  new Column("To", Holds.NAME),
                  new Column("Batch", Holds.NAME),
                  new Column("Day", Holds.NAME),
                  new Column("Bags", Holds.FIGURES),
                  new Column("kg", Holds.FIGURES),
                  new Column("Delivery note", Holds.NAME),
                  new Column("Holds it", Holds.NAME)),
              rows,
              false));
      line("");
    }
  }

  private static List<String> delivered(String party, Sent sent) {
    String note = sent.moved().note();
    return List.of(
        party,
        sent.batch().number(),
        sent.moved().day().toString(),
        RecallFigures.bags(sent.moved().amount()),
        RecallFigures.kg(sent.moved().amount().kg()),
        note.isEmpty() ? "-" : note,
        RecallWords.holds(sent.certain()));
  }

  private static final List<Column> BATCH =
      List.of(
          new Column("Batch", Holds.NAME),
          new Column("Day", Holds.NAME),
          new Column("Batch is", Holds.NAME));

  private static List<String> batch(Batch batch) {
    return List.of(batch.number(), batch.day().toString(), TraceWords.became(batch));
  }

  private void back(Back answer) {
    head(answer.thing());
    if (answer.holds().isEmpty()) {
      line("Its record names no lot.");
    } else {
      line("In it:");
      line("");
      List<List<String>> rows = new ArrayList<>();
      int decimals = decimals(answer.holds());
      for (Holding one : answer.holds()) {
        List<String> cells = new ArrayList<>(List.of(one.thing().number()));
        cells.add(TraceWords.of(one.thing()));
        cells.add(kg(one.kg(), decimals));
        add(rows, cells, one.ways().stream().map(TraceWords::way).toList());
      }
      table(
          new Table(
              List.of(
                  new Column("Lot or batch", Holds.NAME),
                  new Column("Of", Holds.NAME),
                  new Column("kg in it", Holds.FIGURES),
                  new Column("Came in", Holds.NAME)),
              rows,
              false));
      line("");
      answer.holds().stream()
          .filter(one -> one.thing().lot().isPresent())
          .forEach(one -> line("  " + TraceWords.facts(one.thing(), ", ")));
    }
    line("");
    if (!answer.unknown().isEmpty()) {
      line("Lines of which no record can say the lot:");
      line("");
      table(
          new Table(
              List.of(
                  new Column("Batch", Holds.NAME),
                  new Column("Why", Holds.NAME),
                  new Column("kg", Holds.FIGURES),
                  new Column("May be of", Holds.WORDS)),
              answer.unknown().stream().map(TraceWords::unknown).toList(),
              false));
      line("");
    }
    circle(answer.circle());
  }

  private void circle(List<String> circle) {
    if (!circle.isEmpty()) {
      line(
          "By their records these batches hold themselves, which cannot be; no kg is given of what"
              + " passes between them: "
              + String.join(", ", circle)
              + ".");
      line("");
    }
  }

  private void head(Thing thing) {
    line(TraceWords.facts(thing, "\n  "));
    line("");
  }

  private static Table holdings(List<Holding> holds) {
    List<List<String>> rows = new ArrayList<>();
    int decimals = decimals(holds);
    for (Holding one : holds) {
      List<String> row = new ArrayList<>(batch(one.batch()));
      row.add(kg(one.kg(), decimals));
      add(rows, row, one.ways().stream().map(TraceWords::way).toList());
    }
    return new Table(
        Stream.concat(
                BATCH.stream(),
                Stream.of(new Column("kg of it", Holds.FIGURES), new Column("Came in", Holds.NAME)))
            .toList(),
        rows,
        false);
  }

  /** A row, and a further one for each further word of its last column. */
  private static void add(List<List<String>> rows, List<String> cells, List<String> last) {
    for (int i = 0; i < last.size(); i++) {
      List<String> row = new ArrayList<>(i == 0 ? cells : cells.stream().map(cell -> "").toList());
      row.add(last.get(i));
      rows.add(row);
    }
  }

  private static int decimals(List<Holding> holds) {
    return holds.stream()
        .mapToDouble(one -> one.kg().told())
        .filter(kg -> kg > 0)
        .mapToInt(kg -> Math.min(FINEST, Math.max(0, Figures.decimals(kg) - 1)))
        .max()
        .orElse(0);
  }

  private static String kg(Kilograms kg, int decimals) {
    if (kg.whole()) {
      return Figures.fixed(kg.told(), decimals);
    }
    return kg.told() > 0 ? "at least " + Figures.fixed(kg.told(), decimals) : "not given";
  }

  private void table(Table table) {
    TextTable.lines(table, WIDTH).forEach(row -> line("  " + row.stripTrailing()));
  }

  private static String batches(int number) {
    return Plural.of(number, "batch", "batches");
  }
}
