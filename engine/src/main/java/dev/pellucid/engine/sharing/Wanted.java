package dev.pellucid.engine.sharing;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.leastcost.Posed;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.JointTask.Made;
import dev.pellucid.engine.optimise.Requirement.OfStock.Counted;
import dev.pellucid.engine.resolve.Line;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;

/**
 * A feed that is to be made.
 *
 * @param posed its recipe as a task
 * @param counted whether kg are those in the bags, or of recipe as batches are written down
 * @param due in the order of their days
 */
public record Wanted(Posed posed, Counted counted, List<Due> due) {
  public Wanted {
    due = List.copyOf(due);
  }

  /**
   * So much of it by a day.
   *
   * @param batch the number of the batch; empty where it is only a quantity, of which a part can be
   *     made
   * @param spared kg of each ingredient that premixes bring which are there already
   */
  public record Due(LocalDate day, double kg, String batch, SortedMap<String, Double> spared) {
    public Due {
      spared = Collections.unmodifiableSortedMap(new TreeMap<>(spared));
    }

    /** Of which no premix is there. */
    public Due(LocalDate day, double kg, String batch) {
      this(day, kg, batch, new TreeMap<>());
    }

    /** Whether it is made whole or not at all. */
    public boolean isBatch() {
      return !batch.isEmpty();
    }

    double spared(String ingredient) {
      return spared.getOrDefault(ingredient, 0.0);
    }

    Due of(double otherKg) {
      return new Due(day, otherKg, batch, times(spared, kg > 0 ? otherKg / kg : 0));
    }

    Due sparing(SortedMap<String, Double> other) {
      return new Due(day, kg, batch, other);
    }

    private static SortedMap<String, Double> times(SortedMap<String, Double> kg, double times) {
      SortedMap<String, Double> all = new TreeMap<>(kg);
      all.replaceAll((name, one) -> one * times);
      return all;
    }
  }

  /**
   * So much of a feed.
   *
   * @param bagged whether kg are those in the bags, and not of recipe
   */
  public static Wanted of(Posed posed, boolean bagged, List<Due> due) {
    return new Wanted(posed, bagged ? Counted.BAGGED : Counted.WEIGHED, due);
  }

  public String code() {
    return posed.recipe().recipe().code();
  }

  /** Of its recipe, below the folder. */
  public String path() {
    return posed.recipe().recipe().source().path();
  }

  /** Whether kg are those in the bags, and not of recipe. */
  public boolean isBagged() {
    return counted == Counted.BAGGED;
  }

  /** Names of all that it takes or may take from the store, premixes opened. */
  public SortedSet<String> ingredients() {
    SortedSet<String> names = new TreeSet<>();
    for (Line line : posed.task().feed().recipe().lines()) {
      if (line.material().reworked().isEmpty()) {
        line.material().ingredients().forEach(one -> names.add(one.name()));
      }
    }
    return names;
  }

  /** All of it. */
  public double kg() {
    return due.stream().mapToDouble(Due::kg).sum();
  }

  /** The part of it that is made on a day or later; nothing of what is not made at all. */
  double from(LocalDate day) {
    double late = due.stream().filter(one -> !one.day().isBefore(day)).mapToDouble(Due::kg).sum();
    return kg() > 0 ? late / kg() : 0;
  }

  /** Kg of an ingredient that premixes bring which are there, of what is made from a day on. */
  double spared(String ingredient, LocalDate from) {
    return due.stream()
        .filter(one -> !one.day().isBefore(from))
        .mapToDouble(one -> one.spared(ingredient))
        .sum();
  }

  /** The same of all of it, and no more than a feed takes of its premixes. */
  double spared(String ingredient, ComputedFeed feed) {
    double spared = spared(ingredient, LocalDate.MIN);
    if (spared == 0 || kg() == 0) {
      return 0;
    }
    double premixed = Takes.premixed(made(), feed, ingredient);
    return due.stream()
        .mapToDouble(one -> Math.min(one.spared(ingredient), premixed * one.kg() / kg()))
        .sum();
  }

  /**
   * The same with premixes that are there.
   *
   * @param kg of each ingredient that they bring, by the place of what is due
   */
  public Wanted sparing(IntFunction<SortedMap<String, Double>> kg) {
    double part = leastOfPremixes();
    ComputedFeed feed = posed.task().feed();
    List<Due> others = new ArrayList<>();
    for (int i = 0; i < due.size(); i++) {
      Due one = due.get(i);
      SortedMap<String, Double> spared = new TreeMap<>(kg.apply(i));
      spared.replaceAll(
          (name, its) -> Math.min(its, Takes.premixed(made().of(one.kg()), feed, name)) * part);
      others.add(one.sparing(spared));
    }
    return new Wanted(posed, counted, others);
  }

  /** The part of its premixes that stays, however its shares move. */
  private double leastOfPremixes() {
    double part = 1;
    for (Free free : posed.task().free()) {
      if (free.line().material().premixed().isPresent() && free.written() > 0) {
        double least = free.orNone() ? 0 : Math.min(free.low(), free.written());
        part = Math.min(part, least / free.written());
      }
    }
    return part;
  }

  Made made() {
    return new Made(posed.task(), kg(), counted);
  }

  /** The same with other quantities, in the same order. */
  Wanted making(List<Double> kg) {
    List<Due> others = new ArrayList<>();
    for (int i = 0; i < due.size(); i++) {
      others.add(due.get(i).of(kg.get(i)));
    }
    return new Wanted(posed, counted, others);
  }
}
