package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.OnTheLine;
import dev.pellucid.engine.plan.OnTheLine.Flushing;
import dev.pellucid.engine.plan.OnTheLine.Minded;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Warnings;
import java.util.ArrayList;
import java.util.List;

/** What must not be made right before a batch, and what is flushed with where it may. */
final class SequenceBlocks {
  private static final String APART = "keep this flush apart and marked, into no feed";

  private SequenceBlocks() {}

  /** What is run through before a batch, and where it goes; empty where nothing is told. */
  static String flushed(OnTheLine line) {
    if (line.flushed().isEmpty()) {
      return "";
    }
    return line.isKeptApart() ? line.flushed() + ": " + APART : line.flushed() + ", " + line.to();
  }

  /** Nothing where nothing is to be minded. */
  static List<Block> of(OnTheLine line) {
    List<Block> blocks = new ArrayList<>();
    List<String> warned = new ArrayList<>();
    if (line.isKeptApart()) {
      warned.add("The line is to be clean before this batch: " + line.toClean() + ".");
      warned.add("What is flushed before that goes into no feed. Keep it apart and marked.");
    }
    for (Minded one : line.minded()) {
      if (one.madeBeside()) {
        warned.add(beside(one));
      } else if (one.flush().isEmpty()) {
        warned.add(never(one));
      }
    }
    if (!warned.isEmpty()) {
      blocks.add(new Warnings(warned));
    }
    List<List<String>> rows = new ArrayList<>();
    for (boolean beside : new boolean[] {true, false}) {
      line.minded().stream()
          .filter(one -> one.madeBeside() == beside)
          .flatMap(one -> one.flush().map(flush -> row(line, one, flush)).stream())
          .forEach(rows::add);
    }
    if (!rows.isEmpty()) {
      blocks.add(
          new Table(
              List.of(
                  new Column("Right after a batch of, or with", Holds.WORDS),
                  new Column("Flush kg", Holds.FIGURES),
                  new Column("With", Holds.WORDS),
                  new Column("Flush goes", Holds.WORDS)),
              rows,
              false));
    }
    return blocks;
  }

  /** What no batch record of the folder can name, so the hand must ask for it. */
  private static String beside(Minded one) {
    String what = one.holds();
    String start = "This plant also makes " + what + ". Ask what was made before this batch. ";
    String because = " " + TaskWords.capital(one.because()) + ".";
    if (one.flush().isEmpty()) {
      return start + "Right after " + what + " never make this batch." + because;
    }
    return start + "Right after " + what + " flush as the first line of the table says." + because;
  }

  private static String never(Minded one) {
    return "Never right after a batch that holds this: "
        + one.holds()
        + ". "
        + TaskWords.capital(one.because())
        + ".";
  }

  private static List<String> row(OnTheLine line, Minded one, Flushing flush) {
    String to = line.isKeptApart() && !one.madeBeside() ? APART : flush.to();
    String after = one.madeBeside() ? TaskWords.capital(one.holds()) : one.holds();
    return List.of(after, Figures.plain(flush.kg()), flush.with(), to);
  }
}
