package dev.pellucid.engine.records;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.LotState.State;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.resolve.MaterialMaxima;
import dev.pellucid.engine.resolve.MaterialMaxima.Over;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Lots whose own analysis is over the maximum of their kind of material. What is over a legal one
 * may not be diluted into a feed, however little goes in, so no sheet takes of such a lot. One that
 * failed its inspection is set apart already, and nothing more is said of it.
 */
public final class LotsOverMaxima {
  /** Where no raw material is bounded. */
  public static final LotsOverMaxima NONE = new LotsOverMaxima(Map.of());

  private final Map<String, List<Found>> byLot;

  /**
   * What a lot is over.
   *
   * @param at what was measured, the largest where it is a sum
   */
  record Found(Over over, Content at, List<String> nutrients) {}

  private LotsOverMaxima(Map<String, List<Found>> byLot) {
    this.byLot = byLot;
  }

  /** Those of a folder. */
  public static LotsOverMaxima of(FeedTables tables, MaterialMaxima maxima) {
    Map<String, List<Found>> byLot = new HashMap<>();
    for (Lot lot : tables.lots().values()) {
      Ingredient library = tables.ingredients().get(lot.ingredient());
      if (library != null && !lot.measured().isEmpty() && !isFailed(lot)) {
        List<Found> found = found(lot, library, maxima);
        if (!found.isEmpty()) {
          byLot.put(lot.number(), found);
        }
      }
    }
    return new LotsOverMaxima(byLot);
  }

  private static boolean isFailed(Lot lot) {
    return lot.lastState().filter(told -> told.state() == State.FAILED).isPresent();
  }

  private static List<Found> found(Lot lot, Ingredient library, MaterialMaxima maxima) {
    List<Found> found = new ArrayList<>();
    Optional<Content> moisture = here(lot, library, Nutrients.MOISTURE);
    if (moisture.isEmpty()) {
      return found;
    }
    double water = moisture.get().low();
    for (Over over :
        maxima.over(lot.ingredient(), one -> least(here(lot, library, one.name())), water)) {
      Optional<Content> most = most(lot, over.limit().subject().addends());
      if (most.isPresent()) {
        List<String> names = over.limit().subject().addends().stream().map(Nutrient::name).toList();
        found.add(new Found(over, most.get(), names));
      }
    }
    return found;
  }

  /** What the lot tells, or what its ingredient does. */
  private static Optional<Content> here(Lot lot, Ingredient library, String nutrient) {
    Optional<Content> measured = lot.measured(nutrient);
    return measured.isPresent() ? measured : LotContents.told(library, nutrient);
  }

  private static OptionalDouble least(Optional<Content> told) {
    return told.isPresent() ? OptionalDouble.of(told.get().low()) : OptionalDouble.empty();
  }

  /** The largest that was measured; empty where all of it is of the library, which has its own. */
  private static Optional<Content> most(Lot lot, List<Nutrient> addends) {
    Optional<Content> most = Optional.empty();
    for (Nutrient nutrient : addends) {
      Optional<Content> measured = lot.measured(nutrient.name());
      if (measured.isPresent() && (most.isEmpty() || measured.get().low() > most.get().low())) {
        most = measured;
      }
    }
    return most;
  }

  /** What a lot is over, law first. */
  List<Found> of(Lot lot) {
    return byLot.getOrDefault(lot.number(), List.of());
  }

  /** The first legal maximum that a lot is over. */
  Optional<Found> law(Lot lot) {
    for (Found one : of(lot)) {
      if (one.over().isLaw()) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  /** Whether what a lot holds of a nutrient is told here already. */
  boolean tells(Lot lot, String nutrient) {
    for (Found one : of(lot)) {
      if (one.nutrients().contains(nutrient)) {
        return true;
      }
    }
    return false;
  }

  /** The numbers of the lots that may not be used. */
  Set<String> barred(FeedTables tables) {
    Set<String> barred = new HashSet<>();
    for (Lot lot : tables.lots().values()) {
      if (law(lot).isPresent()) {
        barred.add(lot.number());
      }
    }
    return barred;
  }

  /** Says it at each figure. */
  void look(FeedTables tables, Consumer<Finding> out) {
    for (Lot lot : tables.lots().values()) {
      for (Found one : of(lot)) {
        out.accept(finding(lot, one));
      }
    }
  }

  private static Finding finding(Lot lot, Found found) {
    boolean law = found.over().isLaw();
    Finding finding =
        Finding.of(
                LotAboveMaximum.CODE,
                law ? Severity.ERROR : Severity.WARNING,
                found.at().place(),
                "lot "
                    + lot.number()
                    + " of "
                    + lot.ingredient()
                    + " holds "
                    + found.over().words())
            .seeing("limit written", found.over().limit().origin().span());
    return (law
            ? finding
                .noting(
                    "what is over its own maximum may not be diluted into a feed, however little")
                .helping("set the lot apart, write inspection: failed, and tell who sold it")
            : finding.helping(
                "ask the person who releases lots before it is used, and keep it from young fish"))
        .helping("where the figure is a writing mistake, fix it")
        .about(
            new About(
                found.over().limit().subject().text(), About.Side.MAX, List.of(lot.number())));
  }
}
