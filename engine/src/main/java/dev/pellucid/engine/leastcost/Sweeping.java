package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.leastcost.Reasons.Sweep;
import dev.pellucid.engine.leastcost.Wishes.SweepWish;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Nearby;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The cheapest feed while one price or one bound goes from here to there: solved at so many points,
 * and between two at which other bounds bind, nearer and nearer to where that turns.
 */
final class Sweeping {
  /** What begins where nothing keeps all any more. */
  static final String UNMET = "no shares keep all";

  private static final int PARTS = 24;
  private static final int DIGITS = 2000;
  private static final int MOST_TURNS = 40;

  private final Posed posed;
  private final Answer.Found found;
  private final Nearby nearby;
  private final Map<Double, At> solved = new TreeMap<>();

  Sweeping(Posed posed, Answer.Found found, Nearby nearby) {
    this.posed = posed;
    this.found = found;
    this.nearby = nearby;
  }

  /** What came of it at a point. */
  private record At(Optional<Answer.Found> answer, Set<String> binding) {}

  /** Empty where nothing of the recipe is called so, or the unit is none of it. */
  Optional<Sweep> of(SweepWish wish) {
    return Swept.of(posed, found, wish).map(swept -> sweep(wish, swept));
  }

  private Sweep sweep(SweepWish wish, Swept swept) {
    for (int i = 0; i <= PARTS; i++) {
      at(swept, wish.from() + (wish.to() - wish.from()) * i / PARTS);
    }
    List<Sweep.Turn> turns = turns(wish, swept);
    Optional<Integer> line = swept.line().or(this::movesMost);
    List<Sweep.Point> points = new ArrayList<>();
    for (Map.Entry<Double, At> each : solved.entrySet()) {
      Optional<Answer.Found> answer = each.getValue().answer();
      points.add(
          new Sweep.Point(
              each.getKey(),
              answer.isPresent()
                  ? OptionalDouble.of(answer.get().feed().costPerKg())
                  : OptionalDouble.empty(),
              answer.isPresent() && line.isPresent() ? share(answer.get(), line.get()) : 0));
    }
    return new Sweep(swept.name(), wish.unit(), points(points, wish, turns), turns);
  }

  /** The points that were asked for, and those at the turns. */
  private static List<Sweep.Point> points(
      List<Sweep.Point> all, SweepWish wish, List<Sweep.Turn> turns) {
    Set<Double> shown = new TreeSet<>();
    for (int i = 0; i <= PARTS; i++) {
      shown.add(wish.from() + (wish.to() - wish.from()) * i / PARTS);
    }
    for (Sweep.Turn turn : turns) {
      shown.add(turn.at());
    }
    return all.stream().filter(point -> shown.contains(point.at())).toList();
  }

  private At at(Swept swept, double value) {
    At known = solved.get(value);
    if (known == null) {
      Optional<Answer.Found> answer =
          nearby
              .solve(swept.task(value), found.shares())
              .byKind(Optional::of, unmet -> Optional.empty(), undecided -> Optional.empty());
      known = new At(answer, answer.map(BoundWords::binding).orElse(Set.of(UNMET)));
      solved.put(value, known);
    }
    return known;
  }

  private List<Sweep.Turn> turns(SweepWish wish, Swept swept) {
    double close = Math.abs(wish.to() - wish.from()) / DIGITS;
    List<Sweep.Turn> turns = new ArrayList<>();
    List<Double> points = new ArrayList<>(solved.keySet());
    for (int i = 0; i + 1 < points.size() && turns.size() < MOST_TURNS; i++) {
      Set<String> here = at(swept, points.get(i)).binding();
      Set<String> there = at(swept, points.get(i + 1)).binding();
      Set<String> either = new TreeSet<>(here);
      either.addAll(there);
      List<Sweep.Turn> between = new ArrayList<>();
      boolean met = !here.contains(UNMET) && !there.contains(UNMET);
      for (String name : either) {
        if (here.contains(name) != there.contains(name) && (met || name.equals(UNMET))) {
          between.add(turn(swept, name, points.get(i), points.get(i + 1), close));
        }
      }
      between.sort(java.util.Comparator.comparingDouble(Sweep.Turn::at));
      turns.addAll(between);
    }
    return turns;
  }

  private Sweep.Turn turn(Swept swept, String name, double from, double to, double close) {
    boolean begins = at(swept, to).binding().contains(name);
    double before = from;
    double after = to;
    while (after - before > close) {
      double middle = (before + after) / 2;
      if (at(swept, middle).binding().contains(name) == begins) {
        after = middle;
      } else {
        before = middle;
      }
    }
    return new Sweep.Turn(name.equals(UNMET) && begins ? before : after, name, begins);
  }

  /** The place of the free line that has the widest range of shares. */
  private Optional<Integer> movesMost() {
    Optional<Integer> most = Optional.empty();
    double widest = 0;
    for (int i = 0; i < found.shares().length; i++) {
      double least = Double.POSITIVE_INFINITY;
      double greatest = Double.NEGATIVE_INFINITY;
      for (At at : solved.values()) {
        if (at.answer().isPresent()) {
          least = Math.min(least, at.answer().get().shares()[i]);
          greatest = Math.max(greatest, at.answer().get().shares()[i]);
        }
      }
      if (greatest - least > widest) {
        widest = greatest - least;
        most = Optional.of(i);
      }
    }
    return most;
  }

  private static double share(Answer.Found answer, int line) {
    List<Free> free = answer.task().free();
    return line < free.size() ? answer.shares()[line] : 0;
  }
}
