package dev.pellucid.engine.report;

import static dev.pellucid.engine.report.RecallFigures.amount;
import static dev.pellucid.engine.report.RecallFigures.bags;
import static dev.pellucid.engine.report.RecallFigures.figures;
import static dev.pellucid.engine.report.RecallFigures.kg;
import static dev.pellucid.engine.report.RecallFigures.name;
import static dev.pellucid.engine.report.RecallFigures.words;

import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Look;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Together;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Limit;
import dev.pellucid.engine.trace.Recall.NotFollowed;
import dev.pellucid.engine.trace.Recall.Sent;
import dev.pellucid.engine.trace.RecallList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whom to call: a block for each party, what is certain apart from what is possible. */
final class RecallCalls {
  /** A block of so many rows or less stands on one page. */
  private static final int KEPT = 12;

  /** Names of parties are all that records have; what was said is written on paper first. */
  private static final List<String> TO_FILL_IN =
      List.of(
          "Telephone ____________________ called on ____________ at ________ by ____________________",
          "They have left ______ bags, ________ kg; answer ________________________________________");

  private static final String AGAIN = "They are called above; ask for these in the same call.";

  private static final List<Column> COLUMNS =
      List.of(
          name("Batch"),
          name("Day"),
          words("What"),
          figures("Bags"),
          figures("kg"),
          name("Delivery note"));

  private final RecallList told;

  RecallCalls(RecallList told) {
    this.told = told;
  }

  void into(List<Block> blocks) {
    List<Call> all = told.answer().calls();
    List<Call> certain = all.stream().filter(call -> !rows(call, true).isEmpty()).toList();
    List<Call> possible = all.stream().filter(call -> !rows(call, false).isEmpty()).toList();
    blocks.add(new Heading("CALL: they got a batch that holds it", false));
    List<NotFollowed> lost =
        told.answer().notFollowed().stream()
            .filter(one -> one.limit() == Limit.PARTY_NOT_TOLD)
            .toList();
    if (!lost.isEmpty()) {
      blocks.add(new Warnings(lost.stream().map(RecallWords::notFollowed).toList()));
    }
    if (certain.isEmpty()) {
      blocks.add(new Words(nobody()));
    }
    certain.forEach(call -> block(call, true, blocks));
    if (!possible.isEmpty()) {
      blocks.add(new Heading("CALL TOO: they got a batch that may hold it", false));
      possible.forEach(call -> block(call, false, blocks));
      blocks.add(new Words("Why each of these batches may hold it:"));
      blocks.add(reasons(possible));
    }
  }

  /** Nobody is a word that people act on, so it stands alone only where all was searched. */
  private String nobody() {
    return told.unsearched().isEmpty() && told.namesEveryParty()
        ? "Nobody: no record tells that any of these batches was delivered."
        : "Nobody by name, as far as could be searched; see What was searched. There may be others.";
  }

  private void block(Call call, boolean certain, List<Block> blocks) {
    Amount with = certain ? call.certain() : call.possible();
    List<List<String>> rows = rows(call, certain);
    boolean again = !certain && !rows(call, true).isEmpty();
    List<Block> block = new ArrayList<>();
    block.add(new Words(call.party() + ": " + amount(with) + " with them by the books"));
    (again ? List.of(AGAIN) : TO_FILL_IN).forEach(line -> block.add(new Words(line)));
    block.add(RecallFigures.table(COLUMNS, rows));
    tooMuch(call, certain).ifPresent(block::add);
    if (rows.size() > KEPT) {
      blocks.addAll(block);
    } else {
      blocks.add(new Together(Look.KEPT, block));
    }
  }

  /** What cannot be in the records is told where it stands, and takes nothing off. */
  private static Optional<Block> tooMuch(Call call, boolean certain) {
    List<String> batches =
        call.back().stream()
            .filter(sent -> sent.certain() == certain)
            .map(sent -> sent.batch().number())
            .distinct()
            .filter(call.tooMuchBack()::contains)
            .toList();
    return batches.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Warnings(
                List.of(
                    "The books of "
                        + call.party()
                        + " do not add up: by the records more came back of "
                        + String.join(", ", batches)
                        + " than they got. Ask them what they have.")));
  }

  private static List<List<String>> rows(Call call, boolean certain) {
    List<List<String>> rows = new ArrayList<>();
    call.sent().stream()
        .filter(sent -> sent.certain() == certain)
        .forEach(sent -> rows.add(row(sent, "delivered")));
    call.back().stream()
        .filter(sent -> sent.certain() == certain)
        .forEach(sent -> rows.add(row(sent, "came back")));
    return rows;
  }

  private static List<String> row(Sent sent, String what) {
    boolean back = what.equals("came back");
    String note = sent.moved().note();
    return List.of(
        sent.batch().number(),
        sent.moved().day().toString(),
        back && !note.isEmpty() ? what + ": " + note : what,
        bags(sent.moved().amount()),
        kg(sent.moved().amount().kg()),
        back || note.isEmpty() ? "-" : note);
  }

  private Block reasons(List<Call> calls) {
    return new Points(
        calls.stream()
            .flatMap(call -> Stream.concat(call.sent().stream(), call.back().stream()))
            .filter(sent -> !sent.certain())
            .map(sent -> sent.batch().number())
            .distinct()
            .flatMap(number -> told.batch(number).stream())
            .map(one -> one.batch().number() + ": " + RecallWords.why(one, told.number()))
            .toList());
  }
}
