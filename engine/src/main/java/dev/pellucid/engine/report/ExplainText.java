package dev.pellucid.engine.report;

import dev.pellucid.engine.explain.Explanation;
import dev.pellucid.engine.explain.Explanation.Part;
import dev.pellucid.engine.explain.Explanation.Sum;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Words;
import java.util.ArrayList;
import java.util.List;

/** An explanation as plain text; the last column adds up to the figure, digit for digit. */
public final class ExplainText {
  private static final String UNTOLD =
      ": counted as nothing here; against a maximum it counts as the most that it can be.";

  private static final String TOGETHER =
      "± is one standard deviation. Ingredients vary one by one, so it is the root of the sum of"
          + " the squares; what one ingredient brings in several lines adds up first. Within one"
          + " ingredient the contents that a figure follows from are taken to move together, each to"
          + " the side that moves it more, and the two sides of a ratio apart.";

  private ExplainText() {}

  public static String of(Explanation explanation) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title(explanation.code(), explanation.subject()));
    explanation.ratio().ifPresent(words -> blocks.add(new Words(words)));
    for (Sum sum : explanation.sums()) {
      blocks.add(new Heading(sum.title(), false));
      blocks.add(new Facts(facts(sum, explanation.finishedKg())));
      sum.formulas().forEach(formula -> blocks.add(new Words(formula)));
      blocks.add(table(sum));
      if (!sum.none().isEmpty()) {
        blocks.add(new Words("None is in " + names(sum.none()) + "."));
      }
      if (!sum.untold().isEmpty()) {
        blocks.add(
            new Words("Not told, or told as below a figure, by " + names(sum.untold()) + UNTOLD));
      }
      if (!sum.assumed().isEmpty()) {
        blocks.add(
            new Words("How it varies is taken from practice for " + names(sum.assumed()) + "."));
      }
      if (!sum.still().isEmpty()) {
        blocks.add(new Words("Nothing says how it varies in " + names(sum.still()) + "."));
      }
      if (!sum.varies().isEmpty()) {
        blocks.add(new Words(TOGETHER));
      }
    }
    return new TextPage().render(blocks);
  }

  private static String names(List<String> names) {
    return String.join(", ", names);
  }

  private static List<Fact> facts(Sum sum, double finishedKg) {
    String figure = sum.figure() + " " + sum.unit();
    if (sum.poorest().isEmpty()) {
      return List.of(new Fact("Comes to", figure));
    }
    return List.of(
        new Fact("On target and fresh", figure),
        new Fact("At the poorest", sum.poorest() + " " + sum.unit()),
        new Fact("At the richest", sum.richest() + " " + sum.unit()),
        new Fact("From lot to lot", varies(sum)),
        new Fact("100 kg of recipe make", Figures.fixed(finishedKg, 3) + " kg of finished feed"));
  }

  private static String varies(Sum sum) {
    String varies =
        sum.varies().isEmpty() ? "nothing is told" : "± " + sum.varies() + " " + sum.unit();
    if (sum.taken().isEmpty()) {
      return varies;
    }
    String set = "set by the process: " + sum.taken().get();
    return sum.varies().isEmpty() ? set : set + ", and " + varies + " of what else is in it";
  }

  /** The deviation has a column where there is one. */
  private static Table table(Sum sum) {
    boolean varies = !sum.varies().isEmpty();
    List<Column> columns =
        new ArrayList<>(
            List.of(
                new Column("Line", Holds.WORDS),
                new Column("kg in 100", Holds.FIGURES),
                new Column("Holds", Holds.FIGURES),
                new Column("Kept %", Holds.FIGURES),
                new Column("Source", Holds.WORDS)));
    if (varies) {
      columns.add(new Column("±", Holds.FIGURES));
    }
    columns.add(new Column("Brings " + sum.unit(), Holds.FIGURES));
    List<List<String>> rows = new ArrayList<>();
    for (Part part : sum.parts()) {
      List<String> row =
          new ArrayList<>(
              List.of(part.line(), part.kg(), part.holds(), part.kept(), part.source()));
      rows.add(ended(row, varies, part.varies(), part.brings()));
    }
    List<String> together = new ArrayList<>(List.of("Together", "", "", "", ""));
    rows.add(ended(together, varies, sum.varies(), sum.figure()));
    return new Table(columns, rows, true);
  }

  private static List<String> ended(
      List<String> row, boolean varies, String deviation, String brings) {
    if (varies) {
      row.add(deviation);
    }
    row.add(brings);
    return row;
  }
}
