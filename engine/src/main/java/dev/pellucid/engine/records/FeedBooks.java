package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.BatchRecord.Fines;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Since.Handed;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The bags of a batch day by day: no more can leave than were filled, no more can come back from
 * somebody than they got, and no more can be counted than can be there.
 */
final class FeedBooks {
  static final Code MORE = new Code("more-out-than-filled");
  static final Code BACK = new Code("returned-not-delivered");
  static final Code COUNT = new Code("feed-count-off");

  /** Scales and dust: less is nobody's fault (common practice, no source). */
  private static final double SPILT = 0.005;

  /** So much of a batch goes with dust and torn bags; common practice, no source. */
  private static final double LOST = 0.05;

  private final FeedTables tables;
  private final Map<String, List<Out>> taken = new HashMap<>();

  /**
   * Something that leaves the bags, or comes back to them.
   *
   * @param what {@code 4 bags}, {@code CG-36-2026-11-20-1 takes 5 kg}
   * @param did {@code were delivered}; empty where the first says it
   */
  private record Out(LocalDate day, int bags, double kg, String what, String did, Span place) {}

  FeedBooks(FeedTables tables) {
    this.tables = tables;
    for (BatchRecord record : tables.batches().values()) {
      record.entries().forEach(entry -> take(record, entry));
      record
          .bags()
          .flatMap(Bags::begunWith)
          .ifPresent(
              begun ->
                  take(begun.batch(), record, begun.kg(), " for its first bag", begun.place()));
    }
  }

  static List<Code> codes() {
    return List.of(MORE, BACK, COUNT);
  }

  private void take(BatchRecord record, Entry entry) {
    if (tables.batches().containsKey(entry.lot())) {
      take(entry.lot(), record, entry.kg().orElse(0), "", entry.weight());
    }
  }

  private void take(String of, BatchRecord by, double kg, String why, Span place) {
    String what = by.number() + " takes " + Figures.plain(kg, Unit.KG);
    taken
        .computeIfAbsent(of, none -> new ArrayList<>())
        .add(new Out(by.day(), 0, kg, what, why, place));
  }

  void look(Consumer<Finding> out) {
    for (BatchRecord record : tables.batches().values()) {
      double kg = record.bagged().map(Located::thing).orElse(weighed(record));
      if (kg > 0) {
        List<Out> outs = outs(record);
        more(record, kg, outs).ifPresent(out);
        for (Handed count : record.since().counted()) {
          counted(record, kg, outs, count).ifPresent(out);
        }
      }
      returned(record, out);
    }
  }

  /** All that went into a batch that was filled into no bags; nothing where not all is told. */
  private static double weighed(BatchRecord record) {
    boolean all = record.entries().stream().allMatch(one -> one.kg().isPresent());
    double water = record.water().map(Located::thing).orElse(0.0);
    double kg = record.entries().stream().mapToDouble(one -> one.kg().orElse(0)).sum();
    return all && kg > 0 ? kg + water : 0;
  }

  /** In the order of days; of one day what comes back is first. */
  private List<Out> outs(BatchRecord record) {
    List<Out> outs = new ArrayList<>();
    record.since().returned().forEach(one -> outs.add(out(one, -1, "returned")));
    record.since().delivered().forEach(one -> outs.add(out(one, 1, "delivered")));
    record.since().disposed().forEach(one -> outs.add(out(one, 1, "disposed of")));
    outs.addAll(taken.getOrDefault(record.number(), List.of()));
    outs.sort(Comparator.comparing(Out::day));
    return outs;
  }

  private static Out out(Handed one, int sign, String did) {
    return new Out(
        one.signed().day(),
        sign * one.bags().orElse(0),
        sign * one.kg(),
        FeedMoves.words(one),
        (one.bags().orElse(0) == 1 ? " was " : " were ") + did,
        one.amount());
  }

  /** What is kept back of a batch, and fines, which were never in its bags, are let pass. */
  private Optional<Finding> more(BatchRecord record, double filled, List<Out> outs) {
    int most = record.bags().map(it -> it.full() + (it.rest() > 0 ? 1 : 0)).orElse(0);
    double spilt = record.bagged().isPresent() ? SPILT : LOST;
    double allowed = filled * (1 + spilt) + record.fines().map(Fines::kg).orElse(0.0);
    int bags = 0;
    double kg = 0;
    for (Out one : outs) {
      if (one.bags() + bags > most && one.bags() > 0 || one.kg() > 0 && one.kg() + kg > allowed) {
        return Optional.of(more(record, one, bags, kg, filled));
      }
      bags += one.bags();
      kg += one.kg();
    }
    return Optional.empty();
  }

  private static Finding more(BatchRecord record, Out one, int bags, double kg, double filled) {
    String were = record.bags().map(FeedMoves::words).orElse(Figures.plain(filled, Unit.KG));
    boolean inBags = one.bags() > 0;
    String left =
        inBags
            ? FeedMoves.bags(Math.max(0, record.bags().map(Bags::full).orElse(0) - bags))
            : Figures.plain(Math.max(0, filled - kg), Unit.KG);
    Finding finding =
        Finding.error(
            MORE,
            one.place(),
            one.what()
                + " of "
                + record.number()
                + one.did()
                + " on "
                + one.day()
                + (kg > 0
                    ? ", and the store had " + left + " of " + were + " left"
                    : ", and there were " + were));
    return record
        .bags()
        .map(written -> finding.seeing("bags written", written.place()))
        .orElse(finding)
        .helping("another batch went with it: write there what is of it; or fix the amount");
  }

  private static Optional<Finding> counted(
      BatchRecord record, double filled, List<Out> outs, Handed count) {
    double most = filled;
    for (Out one : outs) {
      most -= one.day().isAfter(count.signed().day()) ? 0 : one.kg();
    }
    if (most < 0) {
      return Optional.empty();
    }
    double least = most - samples(record) - cameBackOn(record, count) - LOST * filled;
    if (count.kg() > most + SPILT * filled) {
      return Optional.of(
          off(record, count, "there can be " + Figures.plain(most, Unit.KG))
              .helping(
                  "count again; if it is right, a delivery, what was disposed of or a batch that took"
                      + " of it is written too large or was of another batch, something that came"
                      + " back is not written, or more was filled than bags says"));
    }
    return count.kg() < least
        ? Optional.of(
            off(record, count, "there are " + Figures.plain(most - samples(record), Unit.KG))
                .helping(
                    "count again; if it is right, something that left is not written: a delivery,"
                        + " a batch that took of it, or what was disposed of; or something that"
                        + " came back was of another batch, or less was filled than bags says"))
        : Optional.empty();
  }

  /** What came back on the day of a count may have come after it. */
  private static double cameBackOn(BatchRecord record, Handed count) {
    return record.since().returned().stream()
        .filter(one -> one.signed().day().equals(count.signed().day()))
        .mapToDouble(Handed::kg)
        .sum();
  }

  private static double samples(BatchRecord record) {
    return record.samples().stream().mapToDouble(BatchRecord.Sample::kg).sum();
  }

  private static Finding off(BatchRecord record, Handed count, String books) {
    return Finding.warning(
        COUNT,
        count.amount(),
        "of "
            + record.number()
            + " "
            + Figures.plain(count.kg(), Unit.KG)
            + " were counted on "
            + count.signed().day()
            + ", by the books "
            + books);
  }

  private void returned(BatchRecord record, Consumer<Finding> out) {
    Map<String, Double> had = new LinkedHashMap<>();
    Map<String, String> names = new LinkedHashMap<>();
    record.since().delivered().stream()
        .filter(one -> !one.party().isBlank())
        .forEach(one -> names.putIfAbsent(ByLetters.party(one.party()), one.party().strip()));
    List<Handed> back = new ArrayList<>(record.since().returned());
    back.sort(Comparator.comparing(one -> one.signed().day()));
    for (Handed one : back) {
      String party = ByLetters.party(one.party());
      double got = delivered(record, party, one.signed().day()) - had.getOrDefault(party, 0.0);
      if (!one.party().isBlank() && one.kg() > got + SPILT * one.kg()) {
        out.accept(back(record, one, got, names));
      }
      had.merge(party, one.kg(), Double::sum);
    }
  }

  private static double delivered(BatchRecord record, String party, LocalDate day) {
    return record.since().delivered().stream()
        .filter(one -> ByLetters.party(one.party()).equals(party))
        .filter(one -> !one.signed().day().isAfter(day))
        .mapToDouble(Handed::kg)
        .sum();
  }

  private static Finding back(
      BatchRecord record, Handed one, double got, Map<String, String> names) {
    String party = one.party().strip();
    boolean none = !names.containsKey(ByLetters.party(party));
    String had =
        none
            ? ", who got none of it"
            : ", who had " + Figures.plain(Math.max(0, got), Unit.KG) + " of it on that day";
    return Finding.error(
            BACK,
            one.amount(),
            FeedMoves.words(one)
                + " of "
                + record.number()
                + " came back on "
                + one.signed().day()
                + " from "
                + party
                + had)
        .helping(
            Optional.of(NearNames.of(party, names.values()))
                .filter(near -> none && !near.isEmpty())
                .flatMap(Meant::question)
                .orElse("write what was delivered, or look on the bag for its batch"));
  }
}
