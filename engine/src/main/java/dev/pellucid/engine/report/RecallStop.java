package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.RecallFigures.figures;
import static dev.pellucid.engine.report.RecallFigures.kg;
import static dev.pellucid.engine.report.RecallFigures.name;
import static dev.pellucid.engine.report.RecallFigures.words;

import dev.pellucid.engine.report.Block.Folded;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Verbatim;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.InBin;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Recall.Left;
import dev.pellucid.engine.trace.Recall.Limit;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.engine.trace.Trace.Reason;
import java.util.ArrayList;
import java.util.List;

/** What to stop: what lies in the store, what is to be made of it, and what to write where. */
final class RecallStop {
  /** A longer list of files is folded on a page; the table above it has every number. */
  private static final int LONG = 12;

  private final RecallList told;
  private final RecallLines lines;

  RecallStop(RecallList told) {
    this.told = told;
    this.lines = new RecallLines(told);
  }

  void into(List<Block> blocks) {
    List<Left> hold = told.answer().stop().hold();
    List<Left> held = told.answer().stop().held();
    List<Left> closed = told.answer().stop().closed();
    blocks.add(new Heading("STOP: what must not leave, and must not be used", false));
    if (hold.isEmpty() && held.isEmpty() && closed.isEmpty()) {
      blocks.add(
          new Words(
              "Nothing of it is left in the store, as far as "
                  + (told.unsearched().isEmpty() ? "records tell." : "could be searched.")));
    } else if (hold.isEmpty() && closed.isEmpty()) {
      blocks.add(new Words("All of it that is left is stopped already."));
    } else if (!hold.isEmpty()) {
      blocks.add(new Words("Lock these up, and put them on hold:"));
      blocks.add(table(hold));
    }
    if (!held.isEmpty()) {
      blocks.add(new Words("Stopped already; leave them where they are:"));
      blocks.add(table(held));
    }
    if (!closed.isEmpty()) {
      blocks.add(new Words(CLOSED));
      blocks.add(table(closed));
    }
    if (!hold.isEmpty() || !held.isEmpty() || !closed.isEmpty()) {
      blocks.add(new Warnings(List.of(REWORK)));
    }
    ahead(blocks);
    bins(told.answer().stop().bins(), blocks);
    planned(told.answer().stop().planned(), blocks);
  }

  /** What to write where, once all is stopped and called. */
  void write(List<Block> blocks) {
    List<RecallLines.Write> all = new ArrayList<>(lines.toHold(told.answer().stop().hold()));
    all.addAll(lines.toKeepOut(told.answer().stop().planned()));
    all.addAll(lines.toClean(told.answer().stop().planned()));
    if (!all.isEmpty()) {
      blocks.add(new Heading("WRITE: then no sheet and no proposal takes any of it", false));
      write(all, blocks);
    }
  }

  private static final String CLOSED =
      "Their records are closed, so they should be fed or gone; but by the books this is left, and"
          + " nobody counted it. Look whether it is there, lock up what is, and write what you find"
          + " into counted:";

  private static final String REWORK =
      "Put nothing of these into another batch: not as rework, not as fines or flush, and fill up no"
          + " part bag of them.";

  private static Table table(List<Left> all) {
    List<List<String>> rows = new ArrayList<>();
    for (Left one : all) {
      rows.add(
          List.of(
              one.thing().number(),
              TraceWords.kindOf(one.thing()),
              RecallWords.holds(one.certain()),
              RecallWords.left(one.store()),
              one.store().map(it -> RecallFigures.bags(it.amount())).orElse("-"),
              RecallWords.whenCounted(one.store()),
              RecallWords.word(one.state())));
    }
    return RecallFigures.table(
        List.of(
            name("Lot or batch"),
            words("Of"),
            name("Holds it"),
            figures("kg left"),
            figures("Bags"),
            words("Counted"),
            words("Stands")),
        rows);
  }

  /** What is to leave, so that it does not. */
  private void ahead(List<Block> blocks) {
    List<String> ahead =
        told.answer().notFollowed().stream()
            .filter(one -> one.limit() == Limit.MOVED_AHEAD)
            .map(RecallWords::notFollowed)
            .toList();
    if (!ahead.isEmpty()) {
      blocks.add(new Warnings(ahead));
    }
  }

  private static void bins(List<InBin> bins, List<Block> blocks) {
    if (!bins.isEmpty()) {
      blocks.add(
          new Warnings(
              bins.stream()
                  .map(
                      bin ->
                          "Take nothing from bin "
                              + bin.bin()
                              + ": "
                              + String.join(", ", bin.lots())
                              + (bin.lots().size() > 1 ? " may lie in it together" : " lies in it")
                              + bin.emptied()
                                  .map(day -> ", emptied last on " + day)
                                  .orElse(", and no record tells when it was last empty")
                              + ".")
                  .toList()));
    }
  }

  private void planned(List<Affected> planned, List<Block> blocks) {
    if (planned.isEmpty()) {
      return;
    }
    blocks.add(
        new Words(
            "Planned. Do not make these before their records name other lots, or, where it is only"
                + " the line, before the line is clean"
                + (planned.stream().anyMatch(this::isPutIn)
                    ? ", or what was put into them is kept out:"
                    : ":")));
    blocks.add(new Points(planned.stream().map(this::planned).toList()));
  }

  /** One whose day is over may be made, and nobody wrote down what was weighed. */
  private String planned(Affected one) {
    boolean overdue = one.batch().day().isBefore(told.day());
    return would(one)
        + (overdue
            ? "; its day is over and nothing of it is weighed, so it may be made already: ask"
            : "");
  }

  private String would(Affected one) {
    String of = one.batch().number() + " of " + one.batch().day();
    if (one.certain()) {
      return of + " would hold " + kg(one.kg()) + " kg of it: " + named(one);
    }
    String most = one.most().whole() ? ", " + kg(one.most()) + " kg at most" : "";
    return of + " may hold it" + most + ": " + RecallWords.why(one, told.number()) + keepOut(one);
  }

  private boolean isPutIn(Affected one) {
    boolean flush = one.why().stream().anyMatch(doubt -> doubt.reason() == Reason.FLUSH_INTO);
    return flush || !lines.putIn(one).isEmpty();
  }

  /** What other records tell of it can be mended there. */
  private String keepOut(Affected one) {
    return isPutIn(one) ? "; keep out what was put into it, and write where that is now" : "";
  }

  /** What its own record names, and what other records tell of it. */
  private String named(Affected one) {
    List<String> ways = new ArrayList<>();
    if (lines.isNamed(one)) {
      ways.add("its record names it");
    }
    for (Step step : lines.putIn(one)) {
      ways.add(
          step.kind() == Kind.FINES
              ? "fines of "
                  + step.from()
                  + " were put into it: "
                  + told.file(step.from())
                  + "; keep them out and write where they are now"
              : "a flush with "
                  + step.from()
                  + " was put into it, by the record of another batch; keep it out and write where"
                  + " it is now");
    }
    return String.join("; and ", ways);
  }

  private static void write(List<RecallLines.Write> all, List<Block> blocks) {
    for (RecallLines.Write one : all) {
      blocks.add(new Words(one.words()));
      if (!one.files().isEmpty()) {
        Points files = new Points(one.files());
        blocks.add(
            one.files().size() > LONG
                ? new Folded("All " + one.files().size() + " records", List.of(files))
                : files);
      }
      blocks.add(new Verbatim(one.lines()));
    }
  }
}
