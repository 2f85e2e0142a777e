package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.leastcost.Contradiction.Reach;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Ease;
import dev.pellucid.engine.optimise.Part;
import dev.pellucid.engine.optimise.Reaching;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.optimise.Task;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the ingredients of a recipe reach of the figure that is in the way: of the limit of a
 * contradiction that is loosened most readily, while nothing is asked of the same figure and all
 * else is kept; where even that cannot be met, while the other parts of the contradiction are.
 *
 * @param task that cannot be met
 */
record Reached(Task task, Solver solver) {
  /** Empty where no limit with a unit is among the parts. */
  Optional<Reach> of(List<Part> parts) {
    Optional<Requirement.OfLimit> limit = figure(parts);
    Optional<Unit> unit =
        limit.flatMap(it -> it.limit().writtenInForce().measured()).map(it -> it.unit());
    return unit.isEmpty() ? Optional.empty() : reach(limit.get(), unit.get(), parts);
  }

  private static Optional<Requirement.OfLimit> figure(List<Part> parts) {
    Optional<Requirement.OfLimit> found = Optional.empty();
    for (Ease ease : Ease.values()) {
      boolean first = true;
      for (Part part : parts) {
        Optional<Requirement.OfLimit> limit = limit(part);
        if (limit.isPresent() && part.ease() == ease && first) {
          found = limit;
          first = false;
        }
      }
    }
    return found;
  }

  private static Optional<Requirement.OfLimit> limit(Part part) {
    return part.byKind(
        kept -> limit(kept.of().of()),
        least -> Optional.empty(),
        most -> Optional.empty(),
        moves -> Optional.empty());
  }

  private static Optional<Requirement.OfLimit> limit(Requirement one) {
    return one.byKind(
        Optional::of,
        practice -> Optional.empty(),
        cap -> Optional.empty(),
        label -> Optional.empty(),
        order -> Optional.empty(),
        stock -> Optional.empty());
  }

  private Optional<Reach> reach(Requirement.OfLimit asked, Unit unit, List<Part> parts) {
    return ends(Part.only(task, others(Part.of(task), asked)), asked, unit)
        .or(() -> ends(Part.only(task, others(withLines(parts), asked)), asked, unit))
        .or(() -> ends(Part.only(task, others(parts, asked)), asked, unit));
  }

  private List<Part> withLines(List<Part> parts) {
    List<Part> some = new ArrayList<>(parts);
    for (Part part : Part.of(task)) {
      if (part.ease() == Ease.LINE && !parts.contains(part)) {
        some.add(part);
      }
    }
    return some;
  }

  private static List<Part> others(List<Part> parts, Requirement.OfLimit asked) {
    List<Part> others = new ArrayList<>();
    for (Part part : parts) {
      if (limit(part).filter(it -> isOfSame(it.limit(), asked.limit())).isEmpty()) {
        others.add(part);
      }
    }
    return others;
  }

  private static boolean isOfSame(Limit one, Limit other) {
    return one.subject().text().equals(other.subject().text());
  }

  private Optional<Reach> ends(Task others, Requirement.OfLimit asked, Unit unit) {
    Reaching reaching = new Reaching(others, solver);
    OptionalDouble nearest = reaching.nearest(asked);
    OptionalDouble farthest =
        nearest.isPresent() ? reaching.farthest(asked) : OptionalDouble.empty();
    if (farthest.isEmpty()) {
      return Optional.empty();
    }
    double near = unit.fromBase(nearest.getAsDouble());
    double far = unit.fromBase(farthest.getAsDouble());
    boolean isMin = asked.limit().side() == Bound.Side.MIN;
    return Optional.of(
        new Reach(
            asked.limit().subject().text() + asked.limit().basis().words(),
            unit,
            isMin ? far : near,
            isMin ? near : far,
            unit.fromBase(asked.limit().inForce())));
  }
}
