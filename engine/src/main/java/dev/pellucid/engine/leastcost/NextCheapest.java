package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.leastcost.Reasons.Next;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.Nearby;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest feed that differs in at least one ingredient: each that is in use and may be left
 * out is left out in turn, and each that is not is let in with a share that is worth weighing, and
 * of all these the cheapest is taken. Any other that differs does one of these things, so none is
 * cheaper.
 */
final class NextCheapest {
  private static final double NONE = 1e-6;

  /** The least share, in percent, with which an ingredient counts as one. */
  static final double LEAST_SHARE = 0.5;

  private static final int MOST_SOLVED = 60;

  private final Posed posed;
  private final Answer.Found found;
  private final Nearby nearby;

  NextCheapest(Posed posed, Answer.Found found, Nearby nearby) {
    this.posed = posed;
    this.found = found;
    this.nearby = nearby;
  }

  Optional<Next> of() {
    Optional<Answer.Found> best = Optional.empty();
    List<Free> lines = found.task().free();
    for (int i = 0; i < lines.size() && i < MOST_SOLVED; i++) {
      Optional<Free> other = otherwise(lines.get(i), found.shares()[i]);
      if (other.isPresent()) {
        Optional<Answer.Found> one = with(i, other.get());
        boolean cheaper =
            one.isPresent()
                && (best.isEmpty() || one.get().feed().costPerKg() < best.get().feed().costPerKg());
        best = cheaper ? one : best;
      }
    }
    return best.map(this::next);
  }

  /** In if it is out, and out if it is in; empty where it cannot. */
  private static Optional<Free> otherwise(Free line, double share) {
    if (share > NONE) {
      return line.low() <= 0 || line.orNone()
          ? Optional.of(new Free(line.line(), 0, 0, false, 0))
          : Optional.empty();
    }
    double least = Math.max(line.low(), line.step() > 0 ? line.step() : LEAST_SHARE);
    return least <= line.high()
        ? Optional.of(new Free(line.line(), least, line.high(), false, line.step()))
        : Optional.empty();
  }

  private Optional<Answer.Found> with(int i, Free other) {
    List<Free> lines = new ArrayList<>(found.task().free());
    lines.set(i, other);
    return nearby
        .solve(found.task().with(lines), found.shares())
        .byKind(Optional::of, unmet -> Optional.empty(), undecided -> Optional.empty());
  }

  private Next next(Answer.Found other) {
    List<String> comesIn = new ArrayList<>();
    List<String> goesOut = new ArrayList<>();
    for (int i = 0; i < other.shares().length; i++) {
      String name = found.task().free().get(i).line().material().name();
      boolean was = found.shares()[i] > NONE;
      boolean is = other.shares()[i] > NONE;
      if (is && !was) {
        comesIn.add(name);
      } else if (was && !is) {
        goesOut.add(name);
      }
    }
    return new Next(
        other.feed().costPerKg(), comesIn, goesOut, Advising.lines(posed, other.shares()));
  }
}
