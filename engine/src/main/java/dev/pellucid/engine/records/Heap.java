package dev.pellucid.engine.records;

import dev.pellucid.engine.data.Bin;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Nutrients;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * What can be taken from by itself: a lot, or a bin with all lots that can be in it, since nobody
 * can take one of them alone.
 *
 * @param bin empty of a lot that lies in none
 * @param lots the oldest first
 */
record Heap(String bin, List<Lot> lots, Stock stock) {
  /** What is past its day first goes first; what does not age goes last. */
  static final Comparator<Heap> ORDER =
      Comparator.comparing((Heap heap) -> heap.first(lot -> lot.bestBefore().orElse(LocalDate.MAX)))
          .thenComparing(heap -> heap.first(Lot::received))
          .thenComparing(Heap::number);

  Heap {
    lots = List.copyOf(lots);
  }

  /** Those that hold an ingredient, on a day. */
  static List<Heap> of(Ingredient ingredient, FeedTables tables, Stock stock, LocalDate day) {
    Bins bins = new Bins(tables);
    List<Heap> heaps = new ArrayList<>();
    Set<String> names = new LinkedHashSet<>();
    for (Lot lot : tables.lots().values()) {
      if (!lot.ingredient().equals(ingredient.name())
          || lot.received().isAfter(day)
          || !bins.isThere(lot, day)) {
        continue;
      }
      if (lot.bin().isEmpty()) {
        heaps.add(new Heap("", List.of(lot), stock));
      } else if (names.add(Bin.key(lot.bin().get()))) {
        heaps.add(new Heap(lot.bin().get(), bins.possible(lot.bin().get(), day), stock));
      }
    }
    return heaps;
  }

  /** How it is called: its lot where there can be no other in it. */
  String number() {
    return lots.size() == 1 ? lots.get(0).number() : bin;
  }

  double left() {
    return lots.stream().mapToDouble(stock::left).sum();
  }

  /** Why nothing may be taken of it for something; empty where it may. */
  Optional<String> hindrance(Ingredient ingredient, GoesInto into) {
    for (Lot lot : lots) {
      Optional<String> why = hindrance(lot, ingredient, into);
      if (why.isPresent()) {
        return Optional.of(
            lots.size() == 1
                ? "lot " + lot.number() + " " + why.get()
                : "bin " + bin + " may hold lot " + lot.number() + ", which " + why.get());
      }
    }
    return Optional.empty();
  }

  private Optional<String> hindrance(Lot lot, Ingredient ingredient, GoesInto into) {
    if (!lot.ingredient().equals(ingredient.name())) {
      return Optional.of("is of " + lot.ingredient());
    }
    if (stock.isBarred(lot)) {
      return Optional.of("is over a maximum of raw materials");
    }
    if (lot.isExpired(into.day()) && stock.left(lot) > 0) {
      return Optional.of("was good until " + lot.bestBefore().orElseThrow());
    }
    return isDry(lot, ingredient)
        ? Passing.hindrance(lot, into)
        : Optional.of("is as moist as " + ingredient.name() + " must not be");
  }

  private static boolean isDry(Lot lot, Ingredient ingredient) {
    Optional<Content> moisture = lot.measured(Nutrients.MOISTURE);
    return moisture.isEmpty()
        || ingredient.maxMoisture().isEmpty()
        || moisture.get().high() < ingredient.maxMoisture().getAsDouble();
  }

  /** kg that may go into something. */
  double most(GoesInto into) {
    double most = left();
    for (Lot lot : lots) {
      OptionalDouble bound = Passing.most(lot, into);
      most = bound.isPresent() ? Math.min(most, bound.getAsDouble()) : most;
    }
    return most;
  }

  /** The first of the days of those of which something is left. */
  private LocalDate first(Function<Lot, LocalDate> of) {
    return lots.stream()
        .filter(lot -> stock.left(lot) > 0)
        .map(of)
        .min(Comparator.naturalOrder())
        .orElse(LocalDate.MAX);
  }
}
