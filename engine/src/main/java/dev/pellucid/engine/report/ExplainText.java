package dev.pellucid.engine.report;

import dev.pellucid.engine.explain.Explanation;
import dev.pellucid.engine.explain.Explanation.Part;
import dev.pellucid.engine.explain.Explanation.Sum;
import dev.pellucid.engine.explain.Worked;
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
import java.util.Optional;

/** An explanation as plain text; the last column adds up to the figure, digit for digit. */
public final class ExplainText {
  private static final String UNTOLD =
      ": counted as nothing here; against a maximum it counts as the most that it can be.";

  private static final String TOGETHER =
      "± is one standard deviation between lots. Lots of one ingredient do not depend on those of"
          + " another, so the deviations do not add up: together it is the root of the sum of their"
          + " squares. What one ingredient brings in several lines adds up first. Within one"
          + " ingredient the contents that a figure follows from are taken to move together, each to"
          + " the side that moves it more, and the two sides of a ratio apart.";

  /** So many lines that bring less than the last digit stand by themselves. */
  private static final int FEW = 3;

  private ExplainText() {}

  public static String of(Explanation explanation) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title(explanation.code(), explanation.title()));
    for (Worked judged : explanation.sums().isEmpty() ? List.<Worked>of() : explanation.judged()) {
      blocks.add(new Words(judged.title()));
    }
    explanation.ratio().ifPresent(words -> blocks.add(new Words(words)));
    for (Sum sum : explanation.sums()) {
      sum(sum, explanation.finishedKg(), blocks);
    }
    explanation.judged().forEach(one -> worked(one, blocks));
    if (explanation.judged().isEmpty()) {
      blocks.add(new Words("No limit of " + explanation.code() + " is on it."));
    }
    return new TextPage().render(blocks);
  }

  private static void sum(Sum sum, double finishedKg, List<Block> blocks) {
    boolean same = sum.name().equalsIgnoreCase(sum.title());
    blocks.add(new Heading(same ? sum.title() : sum.title() + " (" + sum.name() + ")", false));
    blocks.add(new Facts(facts(sum, finishedKg)));
    blocks.add(table(sum));
    sum.words().forEach(words -> blocks.add(new Words(words)));
    tiny(sum).ifPresent(words -> blocks.add(new Words(words)));
    if (!sum.none().isEmpty()) {
      blocks.add(new Words("None is in " + names(sum.none()) + "."));
    }
    if (!sum.untold().isEmpty()) {
      blocks.add(
          new Words("Not given, or given as below a figure, in " + names(sum.untold()) + UNTOLD));
    }
    if (!sum.assumed().isEmpty()) {
      blocks.add(
          new Words(
              "The deviation is the usual one of practice/spreads.yaml for "
                  + names(sum.assumed())
                  + "."));
    }
    if (!sum.still().isEmpty()) {
      blocks.add(new Words("No deviation is given for " + names(sum.still()) + "."));
    }
    if (!sum.varies().isEmpty()) {
      blocks.add(new Words(TOGETHER));
    }
    sum.worked().forEach(one -> worked(one, blocks));
  }

  private static void worked(Worked one, List<Block> blocks) {
    blocks.add(new Heading(one.title(), false));
    List<Column> columns = new ArrayList<>();
    for (Worked.Head head : one.heads()) {
      columns.add(new Column(head.words(), head.figures() ? Holds.FIGURES : Holds.WORDS));
    }
    blocks.add(new Table(columns, one.rows(), one.total()));
    one.words().forEach(words -> blocks.add(new Words(words)));
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
        new Fact("Between lots", varies(sum)),
        new Fact("100 kg of recipe make", Figures.fixed(finishedKg, 3) + " kg of finished feed"));
  }

  private static String varies(Sum sum) {
    boolean still = sum.varies().isEmpty();
    String varies = still ? "" : "± " + sum.varies() + " " + sum.unit();
    if (sum.taken().isEmpty()) {
      return still ? "no deviation is given" : varies + ", one standard deviation";
    }
    String set = "set by the process: " + sum.taken().get();
    return still ? set : set + "; the rest varies by " + varies;
  }

  /** Of a column that says nothing there is none. */
  private static Table table(Sum sum) {
    List<Part> seen = new ArrayList<>();
    List<Part> tiny = new ArrayList<>();
    for (Part part : sum.parts()) {
      (part.brings().startsWith("<") ? tiny : seen).add(part);
    }
    if (tiny.size() <= FEW) {
      seen = sum.parts();
      tiny = List.of();
    }
    List<Column> columns =
        List.of(
            new Column("Line", Holds.WORDS),
            new Column("kg in 100", Holds.FIGURES),
            new Column("Holds", Holds.FIGURES),
            new Column("Kept %", Holds.FIGURES),
            new Column("Source", Holds.WORDS),
            new Column("±", Holds.FIGURES),
            new Column("Brings " + sum.unit(), Holds.FIGURES));
    List<List<String>> rows = new ArrayList<>();
    for (Part part : seen) {
      rows.add(
          List.of(
              part.line(),
              part.kg(),
              part.holds(),
              part.kept(),
              part.source(),
              part.varies(),
              part.brings()));
    }
    if (!tiny.isEmpty()) {
      String more = tiny.size() + " more, each";
      rows.add(List.of(more, "", "", "", "", "", tiny.get(0).brings()));
    }
    rows.add(List.of("Together", "", "", "", "", sum.varies(), sum.figure()));
    return said(columns, rows);
  }

  private static Table said(List<Column> columns, List<List<String>> rows) {
    List<Column> kept = new ArrayList<>();
    List<List<String>> cells = new ArrayList<>();
    rows.forEach(row -> cells.add(new ArrayList<>()));
    for (int i = 0; i < columns.size(); i++) {
      int column = i;
      if (rows.stream().anyMatch(row -> !row.get(column).isEmpty())) {
        kept.add(columns.get(i));
        for (int row = 0; row < rows.size(); row++) {
          cells.get(row).add(rows.get(row).get(i));
        }
      }
    }
    return new Table(kept, cells, true);
  }

  /** Lines that bring less than the last digit, where they are many and stand together. */
  private static Optional<String> tiny(Sum sum) {
    List<String> names = new ArrayList<>();
    String less = "";
    for (Part part : sum.parts()) {
      if (part.brings().startsWith("<")) {
        names.add(part.line());
        less = part.brings().substring(1) + " " + sum.unit();
      }
    }
    return names.size() > FEW
        ? Optional.of("Less than " + less + " each bring " + names(names) + ".")
        : Optional.empty();
  }
}
