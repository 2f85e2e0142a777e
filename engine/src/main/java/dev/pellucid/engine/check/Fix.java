package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Weighing;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The smallest change of one line, taken up by the {@code rest}, that keeps a broken limit.
 *
 * <p>Each change is computed through the whole feed again, so that water, drying, storage and
 * confidence count; it must stay within the bounds of both lines and break no limit that was kept.
 * A line that tells no bounds may change by half, since it is there for a reason of its own.
 * Premixes are left alone, for their dose is not a free figure. What is weighed on top stays as it
 * is. Shares are in points, kg per 100 kg of recipe.
 */
final class Fix {
  private static final double PROBE = 0.01;
  private static final int TRIES = 8;

  private final ComputedFeed feed;
  private final Verdict broken;
  private final Line rest;
  private final List<LimitStatus> before;

  private Fix(RuleContext recipe, ComputedFeed feed, Verdict broken, Line rest) {
    this.feed = feed;
    this.broken = broken;
    this.rest = rest;
    this.before = recipe.limits();
  }

  /** More, or where negative less, of a line in place of the rest. */
  record Change(Line line, double points, int decimals, Line rest) {
    String words() {
      String name = line.material().name();
      String amount = Figures.fixed(Math.abs(points), decimals) + " points ";
      return points > 0
          ? amount + "more " + name + " in place of " + rest.material().name() + " would meet it"
          : amount + "less " + name + ", made up by " + rest.material().name() + ", would meet it";
    }
  }

  /** Empty where no such change keeps the limit, or there is no rest. */
  static Optional<Change> smallest(RuleContext recipe, ComputedFeed feed, Verdict broken) {
    Optional<Line> rest = feed.recipe().rest();
    return rest.flatMap(line -> new Fix(recipe, feed, broken, line).smallest());
  }

  private Optional<Change> smallest() {
    List<Change> changes = new ArrayList<>();
    for (Line line : feed.recipe().lines()) {
      if (!line.rest() && line.material().single().isPresent()) {
        change(line).ifPresent(changes::add);
      }
    }
    return changes.stream().min(Comparator.comparingDouble(c -> Math.abs(c.points())));
  }

  private Optional<Change> change(Line line) {
    double short0 = -broken.room();
    OptionalDouble probe = gain(line, PROBE);
    double slope = probe.isPresent() ? (probe.getAsDouble() + short0) / PROBE : 0;
    if (short0 <= 0 || slope == 0) {
      return Optional.empty();
    }
    double room = slope > 0 ? roomUp(line) : -roomDown(line);
    double points = short0 / slope;
    for (int i = 0; i < TRIES && Math.abs(points) <= Math.abs(room); i++) {
      OptionalDouble gain = gain(line, points);
      if (gain.isEmpty()) {
        return Optional.empty();
      }
      points -= gain.getAsDouble() / slope;
    }
    return roundedUp(line, points, room);
  }

  private Optional<Change> roundedUp(Line line, double points, double room) {
    double size = Math.abs(points);
    int decimals = size >= 0.5 ? 1 : size >= 0.05 ? 2 : 3;
    double step = Math.pow(10, -decimals);
    double steps = Math.ceil(size / step - 1e-6);
    for (int more = 0; more < 3; more++) {
      double rounded = Math.signum(points) * (steps + more) * step;
      if (Math.abs(rounded) <= Math.abs(room) + Closeness.PART && fixes(line, rounded)) {
        return Optional.of(new Change(line, rounded, decimals, rest));
      }
    }
    return Optional.empty();
  }

  private double roomUp(Line line) {
    double ceiling = line.within().map(free -> free.high() * 100).orElse(points(line) * 1.5);
    double floor = rest.within().map(free -> free.low() * 100).orElse(0.0);
    return Math.max(0, Math.min(ceiling - points(line), points(rest) - floor));
  }

  private double roomDown(Line line) {
    double floor = line.within().map(free -> free.low() * 100).orElse(points(line) / 2);
    double ceiling = rest.within().map(free -> free.high() * 100).orElse(100.0);
    return Math.max(0, Math.min(points(line) - floor, ceiling - points(rest)));
  }

  private static double points(Line line) {
    return line.designed().kgPer100();
  }

  /** How far the limit is kept after a change; negative while it is broken. */
  private OptionalDouble gain(Line line, double points) {
    Optional<ComputedFeed> changed = changed(line, points);
    if (changed.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Judge.verdict(new Readings(changed.get()), broken.limit()).room());
  }

  private boolean fixes(Line line, double points) {
    return changed(line, points).map(Readings::new).filter(this::keepsAll).isPresent();
  }

  /** Whether what was kept is kept still, and what was broken is too. */
  private boolean keepsAll(Readings after) {
    return before.stream()
        .filter(status -> status.state().isKept() || status.limit().equals(broken.limit()))
        .allMatch(status -> Judge.verdict(after, status.limit()).keeps());
  }

  private Optional<ComputedFeed> changed(Line line, double points) {
    Weighing written = feed.weighing();
    List<Double> inFeed = new ArrayList<>(written.inFeed());
    inFeed.set(line.index(), inFeed.get(line.index()) + points);
    inFeed.set(rest.index(), inFeed.get(rest.index()) - points);
    boolean possible = inFeed.get(line.index()) >= 0 && inFeed.get(rest.index()) >= 0;
    return possible ? feed.weighed(new Weighing(inFeed, written.onTop())).feed() : Optional.empty();
  }
}
