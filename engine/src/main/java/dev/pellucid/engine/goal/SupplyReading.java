package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.FeedPlan.Available;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.leastcost.InStore;
import dev.pellucid.engine.sharing.Supply;
import dev.pellucid.engine.sharing.Wanted;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** What there is of what is short. */
final class SupplyReading {
  private final FeedTables tables;
  private final InStore store;
  private final List<Wanted> wanted;
  private final LocalDate day;
  private final List<String> notes = new ArrayList<>();

  SupplyReading(FeedTables tables, InStore store, List<Wanted> wanted, LocalDate day) {
    this.tables = tables;
    this.store = store;
    this.wanted = wanted;
    this.day = day;
  }

  /** What a person should know. */
  List<String> notes() {
    return notes;
  }

  List<Supply> of(PlanAsked asked) {
    SortedSet<String> taken = taken();
    List<Supply> supplies = new ArrayList<>();
    for (Available one : asked.available()) {
      if (taken.contains(one.ingredient())) {
        supplies.add(supply(one));
      } else {
        notes.add(
            one.place().place()
                + ": no feed of the plan takes "
                + one.ingredient()
                + ", so it is not shared out; take it out, or plan a feed that takes it");
      }
    }
    if (asked.allOfStore()) {
      for (String name : taken) {
        if (left(name, day).isPresent()) {
          supplies.add(ofStore(name));
        }
      }
    }
    return supplies;
  }

  private SortedSet<String> taken() {
    SortedSet<String> taken = new TreeSet<>();
    wanted.forEach(one -> taken.addAll(one.ingredients()));
    return taken;
  }

  private Supply supply(Available one) {
    if (one.kg().isPresent()) {
      return Supply.of(one.ingredient(), one.kg().getAsDouble(), price(one.ingredient()));
    }
    if (left(one.ingredient(), day).isEmpty()) {
      notes.add(
          one.amount().place()
              + ": the folder keeps no lots of "
              + one.ingredient()
              + ", so there is none in the store; write the lots into lots/, or an amount here");
    }
    return ofStore(one.ingredient());
  }

  /** What is good on the first day that a feed is made, and what of it still is on later ones. */
  private Supply ofStore(String name) {
    TreeMap<LocalDate, Double> lasting = new TreeMap<>();
    for (Wanted one : wanted) {
      one.due().forEach(due -> lasting.put(due.day(), inStore(name, due.day())));
    }
    double first = lasting.firstEntry().getValue();
    lasting.replaceAll((later, kg) -> Math.min(kg, first));
    return new Supply(name, first, lasting, true, price(name));
  }

  /**
   * The kg of its lots that may go into every feed that takes it: then all of it may go wherever it
   * is wanted. Empty where the folder keeps no lots of it.
   */
  private OptionalDouble left(String name, LocalDate on) {
    OptionalDouble left = OptionalDouble.empty();
    for (Wanted one : wanted) {
      if (one.ingredients().contains(name)) {
        OptionalDouble its =
            store.left(ingredient(name), one.posed().recipe().recipe(), one.kg(), on, day);
        boolean isLess = left.isEmpty() || its.orElse(0) < left.getAsDouble();
        left = its.isPresent() && isLess ? its : left;
      }
    }
    return left;
  }

  private double inStore(String name, LocalDate on) {
    return left(name, on).orElse(0);
  }

  private double price(String name) {
    return tables.price(name, day).map(Price::perKg).orElse(0.0);
  }

  private Ingredient ingredient(String name) {
    Ingredient one = tables.ingredients().get(name);
    if (one == null) {
      throw new IllegalArgumentException("no ingredient: " + name);
    }
    return one;
  }
}
