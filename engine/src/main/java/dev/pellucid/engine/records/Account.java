package dev.pellucid.engine.records;

import dev.pellucid.engine.records.Recall.Amount;
import dev.pellucid.engine.records.Recall.Balance;
import dev.pellucid.engine.records.Recall.Store;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One account of kg: what there was, what left it on which day, and what was counted. What left on
 * the day of a count had left before it.
 */
final class Account {
  private static final double CLOSE = 1e-9;

  private final OptionalDouble had;
  private final List<Out> out = new ArrayList<>();
  private Kilograms used = Kilograms.NONE;
  private Kilograms planned = Kilograms.NONE;
  private Kilograms unnamed = Kilograms.NONE;
  private double delivered;
  private double returned;
  private double disposed;
  private double corrected;
  private double samples;
  private int bags;
  private Optional<Count> count = Optional.empty();

  private record Out(LocalDate day, Kilograms kg, double sign) {}

  private record Count(LocalDate day, double kg) {}

  Account(OptionalDouble had) {
    this.had = had;
  }

  Account taken(List<Recall.Taken> taken) {
    for (Recall.Taken one : taken) {
      if (one.planned()) {
        planned = planned.plus(one.kg());
      } else {
        used = used.plus(one.kg());
        out.add(new Out(one.day(), one.kg(), 1));
      }
    }
    return this;
  }

  Account unnamed(Kilograms kg) {
    unnamed = kg;
    return this;
  }

  /** So many full bags are left, where that is known. */
  Account bags(int left) {
    bags = left;
    return this;
  }

  void delivered(LocalDate day, double kg) {
    delivered += out(day, kg, 1);
  }

  /** From those who got it. */
  void cameBack(LocalDate day, double kg) {
    returned += out(day, kg, -1);
  }

  void backToSupplier(LocalDate day, double kg) {
    returned += out(day, kg, 1);
  }

  void disposed(LocalDate day, double kg) {
    disposed += out(day, kg, 1);
  }

  void sample(LocalDate day, double kg) {
    samples += out(day, kg, 1);
  }

  /**
   * @param less kg that the books were made less by; below zero where more
   */
  void corrected(LocalDate day, double less) {
    corrected += less;
    out(day, Math.abs(less), Math.signum(less));
  }

  private double out(LocalDate day, double kg, double sign) {
    out.add(new Out(day, new Kilograms(kg, true), sign));
    return kg;
  }

  /** The last count counts; of two of one day the one that is written last. */
  void counted(LocalDate day, double kg) {
    if (count.filter(one -> one.day().isAfter(day)).isEmpty()) {
      count = Optional.of(new Count(day, kg));
    }
  }

  Balance balance() {
    Optional<Store> store = count.map(this::after).or(this::byBooks);
    OptionalDouble gap = gap();
    OptionalDouble share =
        gap.isPresent() && had.isPresent() && had.getAsDouble() > CLOSE
            ? OptionalDouble.of(gap.getAsDouble() / had.getAsDouble())
            : OptionalDouble.empty();
    return new Balance(
        had, used, planned, delivered, returned, disposed, corrected, samples, unnamed, store, gap,
        share);
  }

  private Store after(Count last) {
    double later = 0;
    for (Out one : out) {
      later += one.day().isAfter(last.day()) ? one.sign() * one.kg().told() : 0;
    }
    return store(last.kg() - later, Optional.of(last.day()));
  }

  private Store store(double kg, Optional<LocalDate> counted) {
    boolean some = kg > CLOSE;
    return new Store(new Amount(some ? bags : 0, some ? kg : 0), counted);
  }

  private Optional<Store> byBooks() {
    OptionalDouble left = left(LocalDate.MAX);
    return left.isPresent() && isTold(LocalDate.MAX)
        ? Optional.of(store(left.getAsDouble(), Optional.empty()))
        : Optional.empty();
  }

  /** What the books have on a day, as far as all that left is told. */
  private OptionalDouble left(LocalDate day) {
    double left = had.orElse(0);
    for (Out one : out) {
      left -= one.day().isAfter(day) ? 0 : one.sign() * one.kg().told();
    }
    return had.isPresent() ? OptionalDouble.of(left) : OptionalDouble.empty();
  }

  private boolean isTold(LocalDate day) {
    return out.stream().allMatch(one -> one.day().isAfter(day) || one.kg().whole());
  }

  /** Where not all that left is told, only that too much left can be said. */
  private OptionalDouble gap() {
    LocalDate day = count.map(Count::day).orElse(LocalDate.MAX);
    OptionalDouble left = left(day);
    if (left.isEmpty()) {
      return left;
    }
    double gap = clean(left.getAsDouble() - count.map(Count::kg).orElse(0.0));
    boolean told = count.isPresent() && isTold(day);
    return told || gap < 0 ? OptionalDouble.of(gap) : OptionalDouble.empty();
  }

  private static double clean(double kg) {
    return Math.abs(kg) < CLOSE ? 0 : kg;
  }
}
