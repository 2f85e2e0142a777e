package dev.pellucid.engine.trace;

import dev.pellucid.engine.trace.RandomMill.Batch;
import dev.pellucid.engine.trace.RandomMill.Delivery;
import dev.pellucid.engine.trace.RandomMill.Line;
import dev.pellucid.engine.trace.RandomMill.Move;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.NullUnmarked;

/**
 * What is left of a lot or a batch of a made-up mill, and what is missing: reckoned for each case
 * that can be, where it is not known what left or which came first. The least and the most of all
 * cases are the bounds.
 */
@NullUnmarked
@SuppressWarnings("ReferenceEquality")
final class PlainBooks {
  enum Sort {
    LEFT,
    CAME,
    CORRECTED,
    MAY
  }

  /** What moved on which day; {@code unknown} where there is more, and no record says how much. */
  record Gone(LocalDate day, Sort sort, double kg, boolean unknown) {}

  /** What there was, what moved, and what is known of a day; {@code on} is absent for nothing. */
  record Books(
      boolean ofLot, double had, double water, List<Gone> gone, LocalDate on, double counted) {
    boolean isKnown() {
      return on != null;
    }
  }

  private final RandomMill mill;
  private final PlainSearch plain;
  private final LocalDate today;

  PlainBooks(RandomMill mill, PlainSearch plain, LocalDate today) {
    this.mill = mill;
    this.plain = plain;
    this.today = today;
  }

  Books of(Delivery lot) {
    List<Gone> gone = new ArrayList<>();
    for (Batch batch : mill.batches) {
      for (Line line : batch.lines()) {
        if (plain.isOnly(lot.number(), line, batch)) {
          took(batch, number(line.kg()), gone);
        }
      }
      if (batch.flush().kg() > 0 && plain.couldRun(batch).equals(Set.of(lot.number()))) {
        Batch into = plain.batch(batch.flush().to());
        took(into == null ? batch : into, batch.flush().kg(), gone);
      }
    }
    may(lot.number(), gone);
    for (Move move : lot.moves()) {
      switch (move.what()) {
        case "counted" -> {}
        case "corrections" -> gone.add(new Gone(move.day(), Sort.CORRECTED, -move.loose(), false));
        default -> gone.add(new Gone(move.day(), Sort.LEFT, move.loose(), false));
      }
    }
    return books(lot.kg(), 0, gone, lot.moves(), 0, lot.day(), emptied(lot));
  }

  private LocalDate emptied(Delivery lot) {
    LocalDate first = null;
    for (String bin : mill.emptied.keySet()) {
      for (LocalDate day : mill.emptied.get(bin)) {
        boolean after = day.isAfter(lot.day()) && day.isBefore(today);
        boolean its = PlainSearch.isOneBin(bin, lot.bin()) && after;
        first = its && (first == null || day.isBefore(first)) ? day : first;
      }
    }
    return first;
  }

  Books of(Batch of) {
    List<Gone> gone = new ArrayList<>();
    boolean bagged = of.bags().of() > 0;
    for (Batch batch : mill.batches) {
      double weighed = 0;
      boolean unknown = false;
      for (Line line : batch.lines()) {
        if (plain.isOnly(of.number(), line, batch)) {
          unknown |= line.kg().isEmpty();
          weighed += line.kg().isEmpty() ? 0 : number(line.kg());
        }
      }
      boolean fines = of != batch && of.finesTo().equalsIgnoreCase(batch.number());
      double kg = bagged ? weighed - (fines ? of.fines() : 0) : weighed + plain.fines(of, batch);
      took(batch, Math.max(0, kg), unknown, gone);
      if (batch.bags().begunWith().equals(of.number())) {
        took(batch, batch.bags().begunKg(), gone);
      }
    }
    may(of.number(), gone);
    of.samples().forEach(kg -> gone.add(new Gone(of.day(), Sort.LEFT, kg, false)));
    for (Move move : of.moves()) {
      double kg = move.bags() * of.bags().of() + move.loose();
      if (!move.what().equals("counted")) {
        Sort sort = move.what().equals("returned") ? Sort.CAME : Sort.LEFT;
        gone.add(new Gone(move.day(), sort, kg, false));
      }
    }
    double had = bagged ? of.bags().kg() : of.isMade() ? plain.made(of) : Double.NaN;
    double water = bagged ? 0 : of.water();
    return books(had, water, gone, of.moves(), bagged ? of.bags().of() : 1, of.day(), null);
  }

  private void took(Batch by, double kg, List<Gone> gone) {
    took(by, Double.isNaN(kg) ? 0 : kg, Double.isNaN(kg), gone);
  }

  private void took(Batch by, double kg, boolean unknown, List<Gone> gone) {
    if ((by.isMade() || by.day().isBefore(today)) && (kg > 0 || unknown)) {
      gone.add(new Gone(by.day(), by.isMade() ? Sort.LEFT : Sort.MAY, kg, unknown));
    }
  }

  /** Of every line that may be of it, and that nothing proves. */
  private void may(String number, List<Gone> gone) {
    String kind = plain.kind(number);
    for (Batch batch : mill.batches) {
      if (!batch.isMade() && !batch.day().isBefore(today)) {
        continue;
      }
      boolean there = !batch.day().isBefore(plain.since(number)) && batch != plain.batch(number);
      List<Double> kg = new ArrayList<>();
      for (Line line : batch.lines()) {
        boolean drawn = plain.could(line, batch).contains(number);
        boolean open = there && line.kind().equals(kind) && plain.isOpen(line, batch);
        if ((drawn && !plain.isOnly(number, line, batch)) || open) {
          kg.add(number(line.kg()));
        }
      }
      for (Line left : plain.left(batch)) {
        if (there && left.kind().equals(kind)) {
          kg.add(Double.NaN);
        }
      }
      if (there && plain.isInUnrecorded(kind, batch)) {
        kg.add(Double.NaN);
      }
      Set<String> run = plain.couldRun(batch);
      boolean named = !batch.flush().lot().isEmpty();
      boolean ofKind =
          there && plain.isFlushOpen(batch, batch) && batch.flush().with().equals(kind);
      boolean shared = named && run.size() > 1 && run.contains(number);
      if (batch.flush().kg() > 0 && (ofKind || shared)) {
        kg.add(batch.flush().kg());
      }
      kg.forEach(
          one -> {
            boolean unknown = Double.isNaN(one);
            gone.add(new Gone(batch.day(), Sort.MAY, unknown ? 0 : one, unknown));
          });
    }
  }

  private static double number(String kg) {
    return PlainSearch.number(kg);
  }

  /** Nothing of a day to come has moved, and a count of a day before there was any is none. */
  private Books books(
      double had,
      double water,
      List<Gone> all,
      List<Move> moves,
      double bag,
      LocalDate since,
      LocalDate emptied) {
    List<Gone> gone = all.stream().filter(one -> !one.day().isAfter(today)).toList();
    LocalDate on = null;
    double counted = 0;
    for (Move move : moves) {
      boolean counts = !move.day().isBefore(since) && !move.day().isAfter(today);
      boolean last = on == null || !move.day().isBefore(on);
      if (move.what().equals("counted") && counts && last) {
        on = move.day();
        counted = move.bags() * bag + move.loose();
      }
    }
    boolean empty = emptied != null && (on == null || on.isBefore(emptied));
    return new Books(bag == 0, had, water, gone, empty ? emptied : on, empty ? 0 : counted);
  }

  /** What is in the store in one case. */
  static double store(Books books, boolean taken, boolean late, boolean wet) {
    double kg = books.isKnown() ? books.counted() : books.had() + (wet ? books.water() : 0);
    for (Gone one : books.gone()) {
      boolean after = !books.isKnown() || one.day().isAfter(books.on());
      boolean same = books.isKnown() && one.day().equals(books.on());
      double unknown = one.unknown() && taken ? 1e12 : 0;
      kg +=
          switch (one.sort()) {
            case LEFT -> after ? -one.kg() - unknown : 0;
            case CAME -> after || (same && late) ? one.kg() : 0;
            case CORRECTED ->
                !books.isKnown() || (late && (after || same) && one.kg() > 0) ? one.kg() : 0;
            case MAY -> after && taken ? -one.kg() - unknown : 0;
          };
    }
    return Math.max(0, kg);
  }

  /**
   * What is missing in one case: all that there was, less all that surely left, may have left
   * before it was counted, and is in the store.
   */
  static double gap(Books books, boolean taken, boolean late, boolean wet) {
    double kg = books.had() + (wet ? books.water() : 0) - store(books, false, late, wet);
    double may = 0;
    for (Gone one : books.gone()) {
      boolean before = books.isKnown() && !one.day().isAfter(books.on());
      kg -= one.sort() == Sort.LEFT ? one.kg() : 0;
      kg += one.sort() == Sort.CAME || one.sort() == Sort.CORRECTED ? one.kg() : 0;
      may += one.sort() == Sort.MAY && before ? one.kg() + (one.unknown() ? 1e12 : 0) : 0;
    }
    return taken ? Math.max(kg - may, Math.min(kg, 0)) : kg;
  }

  /** Whether all that left before it was counted is told. */
  static boolean isTold(Books books) {
    return books.gone().stream()
        .filter(one -> one.sort() == Sort.LEFT)
        .noneMatch(one -> one.unknown() && !one.day().isAfter(books.on()));
  }
}
