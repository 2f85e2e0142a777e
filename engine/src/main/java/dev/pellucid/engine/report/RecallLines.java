package dev.pellucid.engine.report;

import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Recall.Left;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.engine.trace.Trace.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What to write into which file, so that a recall stands in the records too. What a person has to
 * fill in is {@code ____}, as in a new file.
 */
final class RecallLines {
  private static final String OPEN = "____";

  private final RecallList told;

  RecallLines(RecallList told) {
    this.told = told;
  }

  /**
   * Lines that go into each of some files.
   *
   * @param words what to do with them
   * @param files into which; none where the words name it
   */
  record Write(String words, List<String> files, List<String> lines) {
    Write {
      files = List.copyOf(files);
      lines = List.copyOf(lines);
    }
  }

  /** Batches that stand alike need the same lines, a lot has its own. */
  List<Write> toHold(List<Left> hold) {
    List<Write> all = new ArrayList<>();
    List<Left> lots = hold.stream().filter(one -> one.thing().lot().isPresent()).toList();
    List<Left> batches =
        hold.stream()
            .filter(one -> one.thing().lot().isEmpty() && one.thing().batch().isPresent())
            .toList();
    lots.forEach(one -> all.add(lot(one)));
    for (boolean certain : new boolean[] {true, false}) {
      List<Left> decided = of(batches, certain, false);
      List<Left> open = of(batches, certain, true);
      if (!decided.isEmpty()) {
        all.add(
            new Write(
                "Write this at the end of " + these(decided) + DECIDED,
                files(decided),
                List.of(
                    "decided-later:",
                    "  - {day: "
                        + day()
                        + ", by: "
                        + OPEN
                        + ", decision: on-hold, "
                        + because(certain)
                        + "}")));
      }
      if (!open.isEmpty()) {
        all.add(
            new Write(
                "Nobody has decided on these yet. Write this at the end of " + these(open) + ":",
                files(open),
                List.of("release: {decision: held, by: " + OPEN + ", " + because(certain) + "}")));
      }
    }
    return all;
  }

  /** Whether a batch weighs it, or fills up a part bag of it. */
  boolean isNamed(Affected batch) {
    return surely(batch).anyMatch(step -> !isPutIn(step));
  }

  /** What other records tell to be put into a batch. */
  List<Step> putIn(Affected batch) {
    return surely(batch).filter(RecallLines::isPutIn).toList();
  }

  private Stream<Step> surely(Affected batch) {
    return told.answer().steps().stream()
        .filter(step -> step.certain() && step.to().equals(batch.batch().number()));
  }

  private static boolean isPutIn(Step step) {
    return step.kind() == Kind.FINES || step.kind() == Kind.FLUSH;
  }

  /** Fines that were put into batches which are planned still. */
  List<Write> toKeepOut(List<Affected> planned) {
    List<Write> all = new ArrayList<>();
    for (Affected batch : planned) {
      for (Step step : putIn(batch)) {
        if (step.kind() == Kind.FINES) {
          all.add(
              new Write(
                  "Keep the fines of "
                      + step.from()
                      + " out of "
                      + batch.batch().number()
                      + ". Write where they are now into this record, and leave their weight as it"
                      + " is:",
                  List.of(told.file(step.from())),
                  List.of("fines: {weight: " + OPEN + ", to: " + OPEN + "}")));
        }
      }
    }
    return all;
  }

  /**
   * For batches that are planned and named for the line alone; none of a batch whose record says
   * that the line was cleaned.
   */
  List<Write> toClean(List<Affected> planned) {
    List<Affected> line =
        planned.stream().filter(one -> !one.certain() && one.onLine() && !one.isCleaned()).toList();
    List<String> files = line.stream().map(one -> told.file(one.batch().number())).toList();
    boolean flushed = line.stream().anyMatch(RecallLines::isFlushed);
    return files.isEmpty()
        ? List.of()
        : List.of(
            new Write(
                "It is only the line for "
                    + (files.size() == 1 ? "this planned batch" : "these planned batches")
                    + "."
                    + (flushed ? FLUSH : "")
                    + " Once the line is clean, write who cleaned it into the record:",
                files,
                List.of("cleaned: {day: " + OPEN + ", by: " + OPEN + ", how: " + OPEN + "}")));
  }

  private static final String FLUSH =
      " What is flushed before that is kept apart and marked, and goes into no feed: write in"
          + " flushed: to where it is kept.";

  private static boolean isFlushed(Affected batch) {
    return batch.why().stream()
        .filter(one -> one.reason() == Reason.NEXT_ON_LINE || one.reason() == Reason.ORDER_NOT_TOLD)
        .anyMatch(one -> !one.names().isEmpty());
  }

  private static final String DECIDED =
      " (where decided-later is there already, the second line alone, as its last):";

  private static List<Left> of(List<Left> batches, boolean certain, boolean open) {
    return batches.stream()
        .filter(one -> one.certain() == certain && one.state().word().equals("open") == open)
        .toList();
  }

  private static String these(List<Left> all) {
    return all.size() == 1 ? "this record" : "each of these records";
  }

  private List<String> files(List<Left> all) {
    return all.stream().map(one -> told.file(one.thing().number())).toList();
  }

  /** The short form of an inspection has no hand, and gives way to the long one. */
  private Write lot(Left left) {
    String number = left.thing().number();
    boolean isShort = left.state().by().isEmpty();
    boolean looked = left.state().day().isPresent() && !left.state().word().startsWith("not ");
    List<String> lines = new ArrayList<>();
    lines.add("    states:");
    if (isShort && looked) {
      lines.add(
          "      - {day: "
              + left.state().day().orElseThrow()
              + ", by: "
              + OPEN
              + ", state: "
              + left.state().word()
              + "}");
    }
    lines.add(
        "      - {day: "
            + day()
            + ", by: "
            + OPEN
            + ", state: on-hold, "
            + because(left.certain())
            + "}");
    String words =
        "Write this below lot "
            + number
            + " in "
            + told.file(number)
            + (isShort
                ? looked ? ", in place of its line inspection:" : ":"
                : " (its states are there already: the last line alone, as their last):");
    return new Write(words, List.of(), lines);
  }

  /**
   * How to write down what was counted.
   *
   * @param bags whether full bags are counted by themselves
   */
  static List<String> count(String day, boolean bags) {
    return List.of(
        "counted:",
        "  - {day: "
            + day
            + ", by: "
            + OPEN
            + (bags ? ", bags: " + OPEN : "")
            + ", weight: "
            + OPEN
            + "}");
  }

  private String day() {
    return told.day().toString();
  }

  private String because(boolean certain) {
    String words =
        certain
            ? told.number() + " is recalled"
            : "may hold " + told.number() + " which is recalled";
    return "because: " + quoted(words);
  }

  /** What is no plain word of YAML stands between marks. */
  private static String quoted(String words) {
    return words.matches("[A-Za-z0-9][A-Za-z0-9 ._/-]*")
        ? words
        : "'" + words.replace("'", "''") + "'";
  }
}
