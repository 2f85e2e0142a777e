package dev.pellucid.engine.records;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotMoves.Moved;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What cannot be in the books of the store: more taken than there was, another count. */
final class StoreBooks {
  static final Code OVERDRAWN = new Code("lot-overdrawn");
  static final Code COUNT = new Code("lot-count-off");

  /** Sweepings and rounding: less is nobody's fault (common practice, no source). */
  private static final double SPILT = 0.005;

  /**
   * So far from the books a count is looked at, of what was received; common practice, no source.
   */
  private static final double FAR = 0.01;

  /** So much more than came is hardly found, as a part of it; common practice, no source. */
  private static final double MORE = 0.1;

  private final FeedTables tables;
  private final Stock stock;

  StoreBooks(FeedTables tables, Stock stock) {
    this.tables = tables;
    this.stock = stock;
  }

  /** Something that leaves a lot. */
  private record Out(
      LocalDate day, double kg, Severity severity, Span place, String what, String help) {}

  void look(Consumer<Finding> out) {
    for (Lot lot : tables.lots().values()) {
      List<Out> outs = outs(lot);
      overdrawn(lot, outs).ifPresent(out);
      lot.moves().corrections().forEach(one -> more(lot, one).ifPresent(out));
      lot.moves().counted().forEach(count -> counted(lot, count, outs).ifPresent(out));
    }
    stock.draws().forEach(draw -> beyond(draw).ifPresent(out));
  }

  /** In the order of days; of one day batches first. */
  private List<Out> outs(Lot lot) {
    List<Out> outs = new ArrayList<>();
    for (Use use : stock.uses()) {
      if (use.lot().equals(lot.number())) {
        outs.add(out(use, use.kg()));
      }
    }
    for (Stock.Draw draw : stock.draws()) {
      draw.taken().stream()
          .filter(taken -> taken.lot().number().equals(lot.number()))
          .forEach(taken -> outs.add(out(draw.use(), taken.kg())));
    }
    lot.moves().returned().forEach(one -> outs.add(out(lot, one, " of it went back")));
    lot.moves().disposed().forEach(one -> outs.add(out(lot, one, " of it were thrown away")));
    outs.sort(Comparator.comparing(Out::day));
    return outs;
  }

  private static Out out(Use use, double kg) {
    return new Out(
        use.day(),
        kg,
        use.made() ? Severity.WARNING : Severity.ERROR,
        use.place(),
        use.batch() + " takes " + Figures.plain(kg, Unit.KG),
        use.made()
            ? "another lot was used as well, or a weight is wrong: fix the record"
            : "take the rest from another lot, or make a smaller batch");
  }

  private static Out out(Lot lot, Moved moved, String went) {
    boolean more = moved.kg() > most(lot) * (1 + SPILT);
    return new Out(
        moved.signed().day(),
        moved.kg(),
        more ? Severity.ERROR : Severity.WARNING,
        moved.amount(),
        Figures.plain(moved.kg(), Unit.KG) + went,
        more
            ? "look for a slipped decimal point, or for another lot that was meant"
            : "fix the weight, or write a correction of the store with its reason");
  }

  /** kg of it that there ever were, with all corrections. */
  private static double most(Lot lot) {
    return lot.kg() + lot.moves().corrections().stream().mapToDouble(Moved::kg).sum();
  }

  private static Optional<Finding> overdrawn(Lot lot, List<Out> outs) {
    double most = most(lot);
    if (most < -lot.kg() * SPILT) {
      return Optional.of(corrected(lot, lot.moves().corrections()));
    }
    double left = most;
    for (Out one : outs) {
      if (one.kg() > left + lot.kg() * SPILT) {
        return Optional.of(overdrawn(lot, one, Math.max(0, left)));
      }
      left -= one.kg();
    }
    return Optional.empty();
  }

  private static Finding corrected(Lot lot, List<Moved> corrections) {
    Moved last = corrections.get(corrections.size() - 1);
    return Finding.error(
            OVERDRAWN,
            last.amount(),
            "of lot "
                + lot.number()
                + " "
                + Figures.plain(lot.kg(), Unit.KG)
                + " came, and corrections take more than that off")
        .seeing("quantity written", lot.weighed())
        .helping("fix the correction, or the quantity that came");
  }

  /** A store does not grow: much more than came is a slip of the pen, or of the quantity. */
  private static Optional<Finding> more(Lot lot, Moved correction) {
    return correction.kg() <= MORE * lot.kg()
        ? Optional.empty()
        : Optional.of(
            Finding.warning(
                    COUNT,
                    correction.amount(),
                    "lot "
                        + lot.number()
                        + " is corrected by "
                        + exactly(correction.kg())
                        + " more, "
                        + Figures.plain(correction.kg() / lot.kg(), Unit.PERCENT)
                        + " of what came")
                .seeing("quantity written", lot.weighed())
                .helping("look for a slipped decimal point")
                .helping("if more came than is written, fix the quantity of the lot instead"));
  }

  private static Finding overdrawn(Lot lot, Out out, double left) {
    return Finding.of(
            OVERDRAWN,
            out.severity(),
            out.place(),
            "of lot "
                + lot.number()
                + " "
                + Figures.plain(left, Unit.KG)
                + " are left, "
                + out.what())
        .seeing("quantity written", lot.declared())
        .helping(out.help());
  }

  private static Optional<Finding> beyond(Stock.Draw draw) {
    Use use = draw.use();
    double there = draw.taken().stream().mapToDouble(Stock.Taken::kg).sum();
    if (!draw.known() || draw.beyond() <= use.kg() * SPILT) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
                OVERDRAWN,
                use.made() ? Severity.WARNING : Severity.ERROR,
                use.place(),
                "by the books "
                    + Figures.plain(there, Unit.KG)
                    + " are left in bin "
                    + use.bin()
                    + ", "
                    + use.batch()
                    + " takes "
                    + Figures.plain(use.kg(), Unit.KG))
            .helping(
                "a lot that was put into it is not written down, or its bin is not: write bin: "
                    + use.bin()
                    + " at the lot")
            .helping("or a weight is wrong: fix the record"));
  }

  /** What the books say at the end of the day of a count, later corrections of it included. */
  private Optional<Finding> counted(Lot lot, Moved count, List<Out> outs) {
    LocalDate day = count.signed().day();
    double books = lot.kg();
    for (Moved one : lot.moves().corrections()) {
      books += one.signed().day().isBefore(next(lot, day)) ? one.kg() : 0;
    }
    for (Out one : outs) {
      books -= one.day().isAfter(day) ? 0 : one.kg();
    }
    double gap = count.kg() - books;
    return day.isBefore(lot.received()) || Math.abs(gap) <= FAR * lot.kg()
        ? Optional.empty()
        : Optional.of(off(lot, count, books, gap));
  }

  /** The day of the next count, before which corrections belong to this one. */
  private static LocalDate next(Lot lot, LocalDate day) {
    return lot.moves().counted().stream()
        .map(one -> one.signed().day())
        .filter(one -> one.isAfter(day))
        .min(Comparator.naturalOrder())
        .orElse(LocalDate.MAX);
  }

  private static Finding off(Lot lot, Moved count, double books, double gap) {
    String kg = exactly(Math.abs(gap));
    String key = gap < 0 ? "less" : "more";
    Finding finding =
        Finding.warning(
                COUNT,
                count.amount(),
                "of lot "
                    + lot.number()
                    + " "
                    + exactly(count.kg())
                    + " were counted, the books say "
                    + exactly(books)
                    + ": "
                    + kg
                    + " "
                    + key
                    + ", "
                    + Figures.plain(Math.abs(gap) / lot.kg(), Unit.PERCENT)
                    + " of what came")
            .seeing("quantity written", lot.weighed());
    return (lot.bin().isPresent()
            ? finding.noting(
                "what was taken from bin "
                    + lot.bin().get()
                    + " without a lot is counted of its oldest lot first")
            : finding)
        .helping(
            "look for a batch that is not written down or names another lot; else write a"
                + " correction with its reason: {day: "
                + count.signed().day()
                + ", by: ..., "
                + key
                + ": "
                + kg
                + ", because: ...}");
  }

  /** To the gram: it goes into a correction. */
  private static String exactly(double kg) {
    return BigDecimal.valueOf(kg)
            .setScale(3, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " kg";
  }
}
