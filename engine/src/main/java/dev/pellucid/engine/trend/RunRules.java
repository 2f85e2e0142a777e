package dev.pellucid.engine.trend;

import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Holds each figure of a course, with those before it, against the rules. */
final class RunRules {
  private final List<Spot> spots;
  private final boolean scaled;

  private RunRules(List<Spot> spots) {
    this.spots = spots;
    this.scaled = spots.stream().allMatch(spot -> spot.spreads().isPresent());
  }

  /** At which figures which rules speak, in the order of figures and rules. */
  static List<Run> in(List<Spot> spots) {
    RunRules rules = new RunRules(spots);
    List<Run> runs = new ArrayList<>();
    for (int at = 0; at < spots.size(); at++) {
      for (RunRule rule : RunRule.values()) {
        rules.at(rule, at).ifPresent(runs::add);
      }
    }
    return List.copyOf(runs);
  }

  private Optional<Run> at(RunRule rule, int at) {
    return switch (rule) {
      case BEYOND_THREE -> beyondThree(at);
      case TWO_OF_THREE -> twoOfThree(at);
      case EIGHT_ON_ONE_SIDE -> onOneSide(at);
      case SIX_IN_A_ROW -> inARow(at);
    };
  }

  private Optional<Run> beyondThree(int at) {
    return isBeyond(at, RunRule.OUTER)
        ? Optional.of(new Run(RunRule.BEYOND_THREE, at, at, spots.get(at).off() > 0))
        : Optional.empty();
  }

  private Optional<Run> twoOfThree(int at) {
    if (!isBeyond(at, RunRule.INNER)) {
      return Optional.empty();
    }
    boolean up = spots.get(at).off() > 0;
    for (int before = at - 1; before >= Math.max(0, at - 2); before--) {
      if (isBeyond(before, RunRule.INNER) && spots.get(before).off() > 0 == up) {
        return Optional.of(new Run(RunRule.TWO_OF_THREE, before, at, up));
      }
    }
    return Optional.empty();
  }

  private boolean isBeyond(int at, double limit) {
    OptionalDouble spreads = spots.get(at).spreads();
    return spreads.isPresent() && Closeness.isAbove(Math.abs(spreads.getAsDouble()), limit);
  }

  private Optional<Run> onOneSide(int at) {
    int side = spots.get(at).side();
    int from = at;
    while (side != 0 && from > 0 && spots.get(from - 1).side() == side) {
      from--;
    }
    return longEnough(RunRule.EIGHT_ON_ONE_SIDE, from, at, side > 0);
  }

  private Optional<Run> inARow(int at) {
    int way = at == 0 ? 0 : way(at);
    int from = at;
    while (way != 0 && from > 0 && way(from) == way) {
      from--;
    }
    return longEnough(RunRule.SIX_IN_A_ROW, from, at, way > 0);
  }

  /** Whether a figure is higher than the one before it, lower, or the same. */
  private int way(int at) {
    double one = height(at - 1);
    double next = height(at);
    return Closeness.same(one, next) ? 0 : next > one ? 1 : -1;
  }

  /** In spreads, so that batches of a changed recipe compare; else as it is. */
  private double height(int at) {
    Spot spot = spots.get(at);
    return scaled ? spot.spreads().orElse(0) : spot.off();
  }

  private static Optional<Run> longEnough(RunRule rule, int from, int to, boolean up) {
    return to - from + 1 >= rule.window()
        ? Optional.of(new Run(rule, from, to, up))
        : Optional.empty();
  }
}
