package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.RecallFigures.figures;
import static dev.pellucid.engine.report.RecallFigures.kg;
import static dev.pellucid.engine.report.RecallFigures.name;
import static dev.pellucid.engine.report.RecallFigures.words;

import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Verbatim;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Balance;
import dev.pellucid.engine.trace.Recall.Store;
import dev.pellucid.engine.trace.RecallList;
import java.util.ArrayList;
import java.util.List;

/** Whether what came in is what went out: of the thing itself, and of each batch with it. */
final class RecallBalances {
  private final RecallList told;

  RecallBalances(RecallList told) {
    this.told = told;
  }

  void into(List<Block> blocks) {
    blocks.add(new Heading("Does it add up?", false));
    if (told.answer().thing().lot().isPresent()) {
      blocks.add(new Words("Of " + told.number() + ", in kg:"));
      blocks.add(lot(told.answer().balance()));
      gap(told.answer().balance(), blocks);
    }
    List<Affected> made = new ArrayList<>(told.made(true));
    made.addAll(told.made(false));
    if (!made.isEmpty()) {
      blocks.add(new Words("Of the batches, in kg of feed or premix:"));
      blocks.add(batches(made));
      if (made.stream().map(Affected::balance).anyMatch(RecallBalances::isRough)) {
        blocks.add(new Words(ROUGH));
      }
      uncounted(made, blocks);
    }
  }

  private static Block lot(Balance of) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("came", kg(of.had())));
    rows.add(List.of("used by batches", kg(of.used())));
    rows.add(List.of("went back to the supplier", kg(of.returned())));
    rows.add(List.of("disposed of", kg(of.disposed())));
    rows.add(List.of("corrected by the store", kg(of.corrected())));
    rows.add(
        List.of(
            of.store().map(it -> "in the store, " + RecallWords.counted(it)).orElse("in the store"),
            RecallWords.left(of.store())));
    rows.add(List.of("gap", of.gap().map(RecallFigures::kg).orElse("cannot be known")));
    of.gapShare()
        .ifPresent(
            share -> rows.add(List.of("gap in percent", RecallFigures.percent(share) + " %")));
    if (of.planned().told() > 0 || !of.planned().whole()) {
      rows.add(List.of("put aside for planned batches, in the store still", kg(of.planned())));
    }
    if (of.unnamed().told() > 0 || !of.unnamed().whole()) {
      rows.add(List.of("may be of it besides, and no record proves it, at most", kg(of.unnamed())));
    }
    return RecallFigures.table(List.of(words("What"), figures("kg")), rows);
  }

  private void gap(Balance of, List<Block> blocks) {
    if (isRough(of)) {
      blocks.add(new Words(ROUGH));
    }
    if (of.store().filter(it -> !it.isByBooks()).isEmpty()) {
      blocks.add(
          new Words(
              "Nobody has counted what is left of it, so a gap cannot be known. Weigh it, and write"
                  + " below the lot in "
                  + told.file(told.number())
                  + ":"));
      blocks.add(
          new Verbatim(
              RecallLines.count(told.day().toString(), false).stream()
                  .map(it -> "    " + it)
                  .toList()));
    }
  }

  private static final String ROUGH =
      "Where it says \"to\", the figure lies between the two, and no record can say where: a line that"
          + " names no lot, or a batch that should be made by now, may have taken of it; or something"
          + " came back on the very day of the count, or a correction adds to what was counted; or water was"
          + " added, and nobody weighed what became of it.";

  private static boolean isRough(Balance of) {
    return of.store().filter(it -> !it.kg().isExact()).isPresent()
        || of.gap().filter(it -> !it.isExact()).isPresent();
  }

  private static Block batches(List<Affected> made) {
    List<List<String>> rows = new ArrayList<>();
    for (Affected one : made) {
      Balance of = one.balance();
      rows.add(
          List.of(
              one.batch().number(),
              kg(of.had()),
              kg(of.used()),
              kg(of.delivered()),
              kg(of.returned()),
              kg(of.disposed()),
              kg(of.samples()),
              RecallWords.left(of.store()),
              RecallWords.whenCounted(of.store()),
              of.gap().map(RecallFigures::kg).orElse("not known"),
              of.gapShare().map(RecallFigures::percent).orElse("-")));
    }
    boolean rough = made.stream().map(Affected::balance).anyMatch(RecallBalances::isRough);
    return RecallFigures.table(
        List.of(
            name("Batch"),
            figures("Made"),
            figures("Used"),
            figures("Delivered"),
            figures("Came back"),
            figures("Disposed"),
            figures("Samples"),
            bounds("In store", rough),
            words("Counted"),
            bounds("Gap", rough),
            bounds("Gap %", rough)),
        rows);
  }

  /** Bounds are broken in two where the page is too narrow for them. */
  private static Column bounds(String head, boolean rough) {
    return rough ? words(head) : figures(head);
  }

  private void uncounted(List<Affected> made, List<Block> blocks) {
    List<String> files =
        made.stream()
            .filter(one -> one.balance().store().flatMap(Store::counted).isEmpty())
            .map(one -> told.file(one.batch().number()))
            .toList();
    if (!files.isEmpty()) {
      blocks.add(
          new Words(
              "Made = used + delivered - came back + disposed + samples + in store + gap. Where"
                  + " nobody counted, what is in the store is what the books leave, and the gap"
                  + " cannot be known. Count the full bags, weigh what is open (leave bags out where"
                  + " there are none), and write into "
                  + String.join(", ", files)
                  + ":"));
      blocks.add(new Verbatim(RecallLines.count(told.day().toString(), true)));
    }
  }
}
