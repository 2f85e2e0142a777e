package dev.pellucid.engine.sharing;

import dev.pellucid.engine.linear.Constraint;
import dev.pellucid.engine.linear.LinearProgram;
import dev.pellucid.engine.linear.Optimum;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.linear.Variable;
import dev.pellucid.engine.optimise.JointAnswer;
import dev.pellucid.engine.sharing.Wanted.Due;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How much can be made where there is not enough for all: the most kg, by recipes that take as
 * little as they can; of what comes to the same, that which is made first. A quantity is made in
 * part, a batch whole or not at all.
 */
final class MostMade {
  /** For each place later a feed counts so much less, so that of two alike the earlier is made. */
  private static final double LATER = 1e-4;

  /** By how much, as a part of it, a quantity may be missed and count as whole. */
  private static final double NEAR = 1e-7;

  /** Quantities are told in such kg, so that bags can be filled. */
  private static final double STEP = 10;

  private static final double SMALL = 1000;

  private final Solver solver;
  private final List<Wanted> wanted;
  private final List<Supply> supplies;
  private final JointAnswer.Found sparing;
  private final List<Place> places = new ArrayList<>();

  /** One quantity of one feed. */
  private record Place(int feed, int due, LocalDate day) {}

  /**
   * @param sparing the recipes that take as little as they can
   */
  MostMade(Solver solver, List<Wanted> wanted, List<Supply> supplies, JointAnswer.Found sparing) {
    this.solver = solver;
    this.wanted = wanted;
    this.supplies = supplies;
    this.sparing = sparing;
    for (int f = 0; f < wanted.size(); f++) {
      for (int d = 0; d < wanted.get(f).due().size(); d++) {
        places.add(new Place(f, d, wanted.get(f).due().get(d).day()));
      }
    }
    places.sort(Comparator.comparing(Place::day).thenComparing(Place::feed));
  }

  /**
   * What is made of each.
   *
   * @param reserved kg of each supply that are kept back
   */
  Optional<List<Wanted>> of(double[] reserved) {
    List<Variable> variables = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      Due due = due(places.get(i));
      double worth = -(1 - LATER * i);
      variables.add(new Variable(0, due.kg(), worth, false, due.isBatch() ? due.kg() : 0));
    }
    List<Constraint> rows = new ArrayList<>();
    for (int s = 0; s < supplies.size(); s++) {
      Supply supply = supplies.get(s);
      rows.add(row(supply, LocalDate.MIN, supply.kg() - reserved[s]));
      for (Map.Entry<LocalDate, Double> day : supply.lasting().entrySet()) {
        rows.add(row(supply, day.getKey(), day.getValue() - reserved[s]));
      }
    }
    return solver.solve(new LinearProgram(variables, rows)).optimum().map(this::made);
  }

  private Constraint row(Supply supply, LocalDate from, double kg) {
    double[] row = new double[places.size()];
    for (int i = 0; i < row.length; i++) {
      Place place = places.get(i);
      double all = wanted.get(place.feed()).kg();
      row[i] =
          place.day().isBefore(from) || all <= 0
              ? 0
              : Math.max(0, perKg(place, supply.ingredient(), all));
    }
    return Constraint.of(row, Double.NEGATIVE_INFINITY, Math.max(0, kg));
  }

  /** What one kg takes beside what premixes bring that are there. */
  private double perKg(Place place, String ingredient, double all) {
    Due due = due(place);
    double spared = due.kg() > 0 ? due.spared(ingredient) / due.kg() : 0;
    return sparing.taken(place.feed(), ingredient) / all - spared;
  }

  private List<Wanted> made(Optimum optimum) {
    List<List<Double>> kg = new ArrayList<>();
    for (Wanted one : wanted) {
      kg.add(new ArrayList<>(one.due().stream().map(due -> 0.0).toList()));
    }
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      kg.get(place.feed()).set(place.due(), told(due(place), optimum.value(i)));
    }
    List<Wanted> made = new ArrayList<>();
    for (int f = 0; f < wanted.size(); f++) {
      made.add(wanted.get(f).making(kg.get(f)));
    }
    return made;
  }

  /** Downwards to what a person plans. */
  private static double told(Due due, double kg) {
    double step = due.isBatch() ? due.kg() : due.kg() < SMALL ? 1 : STEP;
    return kg >= due.kg() * (1 - NEAR) ? due.kg() : Math.floor(kg / step + NEAR) * step;
  }

  private Due due(Place place) {
    return wanted.get(place.feed()).due().get(place.due());
  }
}
