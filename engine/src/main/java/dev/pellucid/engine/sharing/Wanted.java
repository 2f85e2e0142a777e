package dev.pellucid.engine.sharing;

import dev.pellucid.engine.leastcost.Posed;
import dev.pellucid.engine.optimise.JointTask.Made;
import dev.pellucid.engine.optimise.Requirement.OfStock.Counted;
import dev.pellucid.engine.resolve.Line;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

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
   */
  public record Due(LocalDate day, double kg, String batch) {
    /** Whether it is made whole or not at all. */
    public boolean isBatch() {
      return !batch.isEmpty();
    }

    Due of(double otherKg) {
      return new Due(day, otherKg, batch);
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
