package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Decision;
import dev.pellucid.engine.data.BatchRecord.Release;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.LotState;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A batch that was made while its lots were passed, one of which is on hold, failed or went back
 * since; also where the lot came through a premix, rework or a part bag. What is left of the batch
 * is no better than its lot.
 */
public final class HeldLater {
  static final Code CODE = new Code("lot-held-later");

  private final FeedTables tables;
  private final Inside inside;
  private final LocalDate day;

  HeldLater(FeedTables tables, LocalDate day) {
    this.tables = tables;
    this.inside = new Inside(tables, day);
    this.day = day;
  }

  /** Once for each batch. */
  void look(Consumer<Finding> out) {
    for (BatchRecord batch : tables.batches().values()) {
      if (batch.isMade() && !batch.closed() && !batch.isRejected() && !batch.isHeld()) {
        look(batch).or(() -> source(batch)).ifPresent(out);
      }
    }
  }

  /** Whether nothing of a batch may leave or be used. */
  static boolean isStop(Decision decision) {
    return switch (decision) {
      case RELEASED -> false;
      case HELD, REJECTED, ON_HOLD, WITHDRAWN -> true;
    };
  }

  /** A premix or feed in it that was released on its day, and is stopped since. */
  private Optional<Finding> source(BatchRecord batch) {
    for (Inside.Through source : inside.batches(batch)) {
      boolean stopped = source.batch().isRejected() || source.batch().isHeld();
      boolean then =
          source.batch().standingOn(source.taken()).filter(HeldLater::isStop).isPresent();
      Optional<LocalDate> since = since(source.batch());
      if (stopped && !then && since.isPresent() && !Inside.isDecided(batch, since.get())) {
        return Optional.of(finding(batch, source, since.get()));
      }
    }
    return Optional.empty();
  }

  /** The day of what was decided last, where that is told. */
  public static Optional<LocalDate> since(BatchRecord source) {
    return source.decidedOn(LocalDate.MAX).flatMap(Release::day);
  }

  private static Finding finding(BatchRecord batch, Inside.Through source, LocalDate since) {
    Finding finding =
        Finding.warning(
                CODE,
                source.way().place(batch),
                "batch "
                    + source.batch().number()
                    + in(source)
                    + ", is "
                    + (source.batch().isHeld() ? "on hold" : "withdrawn")
                    + " since "
                    + since)
            .seeing(
                "decided",
                source
                    .batch()
                    .decidedOn(LocalDate.MAX)
                    .map(Release::place)
                    .orElse(source.batch().declared()));
    return seeing(finding, batch, source.way()).helping(hold(batch));
  }

  /** Another record that tells what is in a batch. */
  private static Finding seeing(Finding finding, BatchRecord batch, Inside.Way way) {
    return way.brought()
        .filter(it -> !it.by().equals(batch))
        .map(it -> finding.seeing(it.key() + " written", it.place()))
        .orElse(finding);
  }

  private static String in(Inside.Through source) {
    return source
        .way()
        .brought()
        .map(
            brought ->
                switch (brought.how()) {
                  case PART_BAG -> ", of which a part bag is in it";
                  case FINES ->
                      brought.of().equals(source.batch())
                          ? ", whose fines are in it"
                          : ", which is in it by the fines of " + brought.of().number();
                  case FLUSH ->
                      ", which may be in it by the flush that was run after "
                          + brought.of().number();
                })
        .orElse(", which is in it");
  }

  private static String hold(BatchRecord batch) {
    return "hold what is left of "
        + batch.number()
        + ", and write decided-later: with on-hold, or with released and the reason";
  }

  private Optional<Finding> look(BatchRecord batch) {
    List<Inside.Held> stopped = new ArrayList<>();
    for (Inside.Held held : inside.of(batch)) {
      Inside.stopped(held.lot(), day)
          .filter(told -> counts(batch, held, told))
          .ifPresent(told -> stopped.add(held));
    }
    return stopped.isEmpty() ? Optional.empty() : Optional.of(finding(batch, stopped));
  }

  /** What stood so on the day of the batch already is told of the batch itself. */
  private static boolean counts(BatchRecord batch, Inside.Held held, LotState told) {
    return (!held.isDirect() || told.day().isAfter(held.taken()))
        && !Inside.isDecided(batch, told.day());
  }

  private Finding finding(BatchRecord batch, List<Inside.Held> stopped) {
    Inside.Held first = stopped.get(0);
    LotState told = Inside.stopped(first.lot(), day).orElseThrow();
    Span place = first.way().place(batch);
    Finding finding =
        Finding.warning(CODE, place, "lot " + first.lot().number() + through(first) + words(told))
            .seeing("state written", told.place());
    finding = seeing(finding, batch, first.way());
    if (!told.because().isEmpty()) {
      finding = finding.noting("because: " + told.because());
    }
    List<String> others =
        stopped.stream()
            .map(held -> held.lot().number())
            .filter(number -> !number.equals(first.lot().number()))
            .distinct()
            .toList();
    if (!others.isEmpty()) {
      finding = finding.noting("and so are lots of it: " + String.join(", ", others));
    }
    return finding
        .helping(hold(batch))
        .helping(
            "mvn pellucid:trace -Dpellucid.lot="
                + first.lot().number()
                + " says what else holds it");
  }

  private static String through(Inside.Held held) {
    if (held.way().isFlush()) {
      return ", which may be in it by a flush,";
    }
    String may = held.way().isPerhaps() ? ", which may be in it," : "";
    return held.isDirect() ? may : ", which came through " + String.join(", ", held.codes()) + ",";
  }

  /** How a lot stands, with a blank before it. */
  public static String words(LotState told) {
    return switch (told.state()) {
      case ON_HOLD -> " is on hold since " + told.day();
      case FAILED -> " failed on " + told.day();
      case RETURNED -> " went back to who sold it on " + told.day();
      case WAITING, PASSED, PASSED_FOR -> " is passed";
    };
  }
}
