package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.RecallFigures.figures;
import static dev.pellucid.engine.report.RecallFigures.kg;
import static dev.pellucid.engine.report.RecallFigures.name;
import static dev.pellucid.engine.report.RecallFigures.words;

import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Folded;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Picture;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Origins;
import dev.pellucid.engine.trace.Recall.Retained;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.engine.trace.Trace.Back;
import dev.pellucid.engine.trace.Trace.Holding;
import dev.pellucid.engine.trace.Trace.Thing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How it got into each batch, what was kept of them, and what is in what is recalled. */
final class RecallWays {
  /** A table of more rows is folded on a page. */
  private static final int SHORT = 20;

  private final RecallList told;

  RecallWays(RecallList told) {
    this.told = told;
  }

  void samples(List<Block> blocks) {
    blocks.add(new Heading("Samples that were kept", false));
    List<List<String>> rows = new ArrayList<>();
    for (Affected one : told.answer().batches()) {
      one.samples().forEach(sample -> rows.add(sample(one, sample)));
    }
    if (rows.isEmpty()) {
      blocks.add(new Words("None, as far as records tell."));
      return;
    }
    List<Column> columns =
        List.of(name("Batch"), name("Holds it"), figures("kg"), words("Place"), name("Kept until"));
    fold("All samples", RecallFigures.table(columns, rows), blocks);
    String none =
        told.answer().batches().stream()
            .filter(one -> one.samples().isEmpty() && !one.isPlanned())
            .map(one -> one.batch().number())
            .collect(Collectors.joining(", "));
    if (!none.isEmpty()) {
      blocks.add(new Words("No record tells of a sample of " + none + ": ask for one."));
    }
  }

  private List<String> sample(Affected of, Retained sample) {
    return List.of(
        of.batch().number(),
        RecallWords.holds(of.certain()),
        kg(sample.kg()),
        sample.place().isEmpty() ? RecallFigures.NOT_TOLD : sample.place(),
        sample
            .until()
            .map(day -> day + (day.isBefore(told.day()) ? ", may be gone" : ""))
            .orElse(RecallFigures.NOT_TOLD));
  }

  void ways(List<Block> blocks) {
    blocks.add(new Heading("How it got there", false));
    if (told.answer().batches().isEmpty()) {
      blocks.add(new Words("No record tells that it went into a batch, or may have."));
    } else {
      blocks.add(new Picture(FlowPicture.of(PICTURE, RecallFlow.of(told))));
    }
    batches(true, "These hold it:", blocks);
    batches(false, "These may hold it, and no record can say:", blocks);
    steps(true, "Steps that the records prove:", blocks);
    steps(false, "Steps that may have been, with the kg that it can be at most:", blocks);
    told.origins().ifPresent(origins -> origins(origins, blocks));
  }

  private static final String PICTURE =
      "What went where, from left to right. Full lines are certain, broken ones possible. The tables"
          + " below say the same.";

  private void batches(boolean certain, String words, List<Block> blocks) {
    List<Affected> all =
        told.answer().batches().stream().filter(one -> one.certain() == certain).toList();
    if (all.isEmpty()) {
      return;
    }
    blocks.add(new Words(words));
    List<Column> columns =
        List.of(
            name("Batch"),
            name("Day"),
            words("Stands"),
            words("Made"),
            figures(certain ? "kg of it" : "kg at most"));
    fold(
        "All " + all.size() + " of them",
        RecallFigures.table(columns, all.stream().map(RecallWays::row).toList()),
        blocks);
    if (!certain) {
      blocks.add(new Words("Why:"));
      blocks.add(
          new Points(
              all.stream()
                  .map(one -> one.batch().number() + ": " + RecallWords.why(one, told.number()))
                  .toList()));
    }
  }

  private static List<String> row(Affected one) {
    return List.of(
        one.batch().number(),
        one.batch().day().toString(),
        RecallWords.word(one.state()),
        one.made().map(RecallFigures::amount).orElseGet(() -> weighed(one)),
        kg(one.certain() ? one.kg() : one.most()));
  }

  /** Where nothing was filled into bags it is what was weighed. */
  private static String weighed(Affected one) {
    String kg = kg(one.balance().had());
    return one.balance().had().isPresent() ? kg + " kg" : kg;
  }

  private void steps(boolean certain, String words, List<Block> blocks) {
    List<Step> steps =
        told.answer().steps().stream().filter(one -> one.certain() == certain).toList();
    if (!steps.isEmpty()) {
      blocks.add(new Words(words));
      fold("All " + steps.size() + " steps", table(steps), blocks);
    }
  }

  private static Table table(List<Step> steps) {
    return RecallFigures.table(
        List.of(
            name("From"), name("Into"), words("How"), words("Line"), name("Bin"), figures("kg")),
        steps.stream()
            .map(
                one ->
                    List.of(
                        one.from(),
                        one.to(),
                        RecallWords.kind(one.kind()),
                        one.line().isEmpty() ? "-" : one.line(),
                        one.bin().isEmpty() ? "-" : one.bin(),
                        kg(one.kg())))
            .toList());
  }

  private void origins(Origins origins, List<Block> blocks) {
    Back back = origins.back();
    blocks.add(new Heading("What is in it", false));
    if (back.holds().isEmpty()) {
      blocks.add(new Words("Its record names no lot."));
    } else {
      holds(back.holds(), blocks);
    }
    if (!origins.may().isEmpty()) {
      blocks.add(
          new Words(
              "May be in it besides: "
                  + String.join(", ", origins.may().stream().map(Thing::number).toList())
                  + "."));
      steps(origins.steps().stream().filter(one -> !one.certain()).toList(), blocks);
    }
    if (!back.unknown().isEmpty()) {
      blocks.add(new Words("Lines of which no record can say the lot:"));
      blocks.add(
          RecallFigures.table(
              List.of(name("Batch"), words("Why"), figures("kg"), words("May be of")),
              back.unknown().stream().map(TraceWords::unknown).toList()));
    }
  }

  private static void holds(List<Holding> all, List<Block> blocks) {
    List<List<String>> rows = new ArrayList<>();
    for (Holding one : all) {
      String came = String.join("; ", one.ways().stream().map(TraceWords::way).toList());
      rows.add(List.of(one.thing().number(), TraceWords.of(one.thing()), kg(one.kg()), came));
    }
    List<Column> columns =
        List.of(name("Lot or batch"), words("Of"), figures("kg in it"), words("Came in"));
    blocks.add(RecallFigures.table(columns, rows));
  }

  private static void steps(List<Step> steps, List<Block> blocks) {
    if (!steps.isEmpty()) {
      fold("All " + steps.size() + " steps", table(steps), blocks);
    }
  }

  /** On a page a long table is opened by who wants it; on paper it stands there. */
  private static void fold(String words, Table table, List<Block> blocks) {
    blocks.add(table.rows().size() > SHORT ? new Folded(words, List.of(table)) : table);
  }
}
