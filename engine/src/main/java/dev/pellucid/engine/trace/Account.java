package dev.pellucid.engine.trace;

import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Balance;
import dev.pellucid.engine.trace.Recall.Between;
import dev.pellucid.engine.trace.Recall.Store;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One account of kg: what there was, what left it on which day, and what was counted.
 *
 * <p>What left on the day of a count had left before it. What came back on that day may have come
 * after it, and may be there besides. What is of a day that is still to come has not moved, and a
 * count of a day before there was anything found nothing out. A correction puts the books right and
 * moves nothing: after a count one that takes off changes the gap alone, and one of that day or
 * later that adds may be there besides. So what is told as left is never less than there can be.
 */
final class Account {
  private static final double CLOSE = 1e-9;
  private static final Kilograms NOTHING = Kilograms.NONE;

  private final OptionalDouble had;
  private final LocalDate since;
  private final LocalDate today;
  private final List<Move> moves = new ArrayList<>();
  private Kilograms used = NOTHING;
  private Kilograms planned = NOTHING;
  private Kilograms unnamed = NOTHING;
  private double delivered;
  private double returned;
  private double disposed;
  private double corrected;
  private double samples;
  private double water;
  private int bags;
  private Optional<Count> count = Optional.empty();
  private Optional<LocalDate> emptied = Optional.empty();

  private enum Sort {
    LEFT,
    CAME_BACK,
    CORRECTED,
    /** Of this account or of another: no record can say. */
    MAY_HAVE_LEFT
  }

  /**
   * @param kg of a correction below nothing where the books were made less
   */
  private record Move(LocalDate day, Sort sort, double kg, boolean whole) {}

  /** Of what there was at first, before every day, where nobody counted. */
  private record Count(LocalDate day, double kg) {}

  /**
   * @param since from which day there was any
   * @param today on which it is asked
   */
  Account(OptionalDouble had, LocalDate since, LocalDate today) {
    this.had = had;
    this.since = since;
    this.today = today;
  }

  /** What a planned batch should have taken before today it may have taken. */
  Account taken(List<Recall.Taken> taken) {
    for (Recall.Taken one : taken) {
      if (one.planned() || one.day().isAfter(today)) {
        planned = planned.plus(one.kg());
        if (one.day().isBefore(today)) {
          move(one.day(), Sort.MAY_HAVE_LEFT, one.kg());
        }
      } else {
        used = used.plus(one.kg());
        move(one.day(), Sort.LEFT, one.kg());
      }
    }
    return this;
  }

  /** It may be of this account, and no record says so. */
  void unnamed(LocalDate day, Kilograms kg) {
    if (!day.isAfter(today) && (kg.told() > CLOSE || !kg.whole())) {
      unnamed = unnamed.plus(kg);
      move(day, Sort.MAY_HAVE_LEFT, kg);
    }
  }

  /** So many full bags are left, where that is known. */
  Account bags(int left) {
    bags = left;
    return this;
  }

  /** Water that was added to what was weighed: some may be in it still. */
  Account water(double kg) {
    water = kg;
    return this;
  }

  void delivered(LocalDate day, double kg) {
    delivered += moved(day, Sort.LEFT, kg);
  }

  /** From those who got it. */
  void cameBack(LocalDate day, double kg) {
    returned += moved(day, Sort.CAME_BACK, kg);
  }

  void backToSupplier(LocalDate day, double kg) {
    returned += moved(day, Sort.LEFT, kg);
  }

  void disposed(LocalDate day, double kg) {
    disposed += moved(day, Sort.LEFT, kg);
  }

  void sample(LocalDate day, double kg) {
    samples += moved(day, Sort.LEFT, kg);
  }

  /**
   * @param less kg that the books were made less by; below zero where more
   */
  void corrected(LocalDate day, double less) {
    corrected -= moved(day, Sort.CORRECTED, -less);
  }

  private void move(LocalDate day, Sort sort, Kilograms kg) {
    moves.add(new Move(day, sort, kg.told(), kg.whole()));
  }

  private double moved(LocalDate day, Sort sort, double kg) {
    if (day.isAfter(today)) {
      return 0;
    }
    moves.add(new Move(day, sort, kg, true));
    return kg;
  }

  /** The last count counts; of two of one day the one that is written last. */
  void counted(LocalDate day, double kg) {
    boolean can = !day.isBefore(since) && !day.isAfter(today);
    if (can && count.filter(one -> one.day().isAfter(day)).isEmpty()) {
      count = Optional.of(new Count(day, kg));
    }
  }

  /** Nothing was left on a day, whatever the books say; a count of that day or later counts. */
  void emptied(LocalDate day) {
    emptied = Optional.of(day);
  }

  Balance balance() {
    Optional<LocalDate> empty =
        emptied.filter(day -> count.filter(one -> !one.day().isBefore(day)).isEmpty());
    Optional<Count> known = empty.map(day -> new Count(day, 0)).or(() -> count);
    Optional<Count> from = known.or(this::atFirst);
    return new Balance(
        had,
        used,
        planned,
        delivered,
        returned,
        disposed,
        corrected,
        samples,
        unnamed,
        from.map(it -> store(it, known.isPresent(), empty)),
        had.isPresent() ? from.flatMap(it -> gap(it, known.isPresent())) : Optional.empty());
  }

  private Optional<Count> atFirst() {
    return had.isPresent()
        ? Optional.of(new Count(LocalDate.MIN, had.getAsDouble()))
        : Optional.empty();
  }

  private Store store(Count from, boolean known, Optional<LocalDate> empty) {
    double kg = after(from, known);
    double most = clean(Math.max(0, kg + mayBeBesides(from, known)));
    double least = clean(Math.max(0, kg - mayHaveLeft(from)));
    boolean exact = least == most && most > 0;
    boolean moved =
        known && moves.stream().anyMatch(one -> isAfter(one, from) || isEither(one, from));
    return new Store(
        new Amount(exact ? bags : 0, most),
        Math.min(least, most),
        known && empty.isEmpty() ? Optional.of(from.day()) : Optional.empty(),
        empty,
        moved);
  }

  /** What was counted less all that surely left after it. */
  private double after(Count from, boolean known) {
    double kg = from.kg();
    for (Move one : moves) {
      if (isAfter(one, from)) {
        kg +=
            switch (one.sort()) {
              case LEFT -> -one.kg();
              case CAME_BACK -> one.kg();
              case CORRECTED -> known ? 0 : one.kg();
              case MAY_HAVE_LEFT -> 0;
            };
      }
    }
    return kg;
  }

  private double mayBeBesides(Count from, boolean known) {
    return known
        ? moves.stream().filter(one -> isEither(one, from)).mapToDouble(Move::kg).sum()
        : water;
  }

  private double mayHaveLeft(Count from) {
    double kg = 0;
    for (Move one : moves) {
      if (isAfter(one, from) && one.sort() == Sort.MAY_HAVE_LEFT) {
        kg += one.kg();
      }
      boolean open = one.sort() == Sort.LEFT || one.sort() == Sort.MAY_HAVE_LEFT;
      kg = isAfter(one, from) && open && !one.whole() ? Double.POSITIVE_INFINITY : kg;
    }
    return kg;
  }

  private static boolean isAfter(Move move, Count from) {
    return move.day().isAfter(from.day());
  }

  /** Whether it may be in what was counted, or be there besides. */
  private static boolean isEither(Move move, Count from) {
    return switch (move.sort()) {
      case CAME_BACK -> move.day().equals(from.day());
      case CORRECTED -> move.kg() > 0 && !move.day().isBefore(from.day());
      case LEFT, MAY_HAVE_LEFT -> false;
    };
  }

  /**
   * What is missing on the day of the count, and below nothing what left besides. Where not all
   * that left before is told, only that too much left can be said.
   */
  private Optional<Between> gap(Count from, boolean known) {
    double books = known ? had.orElse(0) : from.kg();
    boolean told = known;
    for (Move one : moves) {
      boolean before = !isAfter(one, from);
      if (one.sort() == Sort.CORRECTED) {
        books += known ? one.kg() : 0;
      } else if (before && one.sort() != Sort.MAY_HAVE_LEFT) {
        books += one.sort() == Sort.LEFT ? -one.kg() : one.kg();
        told &= one.whole();
      }
    }
    double kg = after(from, known);
    double besides = known ? mayBeBesides(from, true) : 0;
    double most = known ? books + water - from.kg() - Math.max(0, -kg) : Math.min(0, kg + water);
    most = clean(most);
    double least = books - from.kg() - besides - Math.max(0, -kg - besides);
    least = clean(least > 0 ? Math.max(0, least - mayHaveLeftBefore(from)) : least);
    return told || most < 0 ? Optional.of(new Between(least, most)) : Optional.empty();
  }

  private double mayHaveLeftBefore(Count from) {
    double kg = 0;
    for (Move one : moves) {
      if (one.sort() == Sort.MAY_HAVE_LEFT && !isAfter(one, from)) {
        kg += one.whole() ? one.kg() : Double.POSITIVE_INFINITY;
      }
    }
    return kg;
  }

  private static double clean(double kg) {
    return Math.abs(kg) < CLOSE ? 0 : kg;
  }
}
