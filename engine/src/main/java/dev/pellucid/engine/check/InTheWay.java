package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.measure.Closeness;
import dev.pellucid.text.TextEdit;
import java.util.List;
import java.util.Optional;

/**
 * What stands in the way where no change of shares meets a limit: of the line that would have to
 * move least, how far, and the bound or the other limit that keeps it from there.
 */
final class InTheWay {
  private static final int CORRECTIONS = 4;

  private final RuleContext recipe;
  private final Limit limit;
  private final Moves moves;

  private InTheWay(RuleContext recipe, Verdict broken) {
    this.recipe = recipe;
    this.limit = broken.limit();
    this.moves = recipe.fixing().moves(recipe);
  }

  /** In words; empty where no line by itself would meet it, however far it moves. */
  static Optional<String> words(RuleContext recipe, ComputedFeed feed, Verdict broken) {
    return feed.recipe().rest().isEmpty() ? Optional.empty() : new InTheWay(recipe, broken).words();
  }

  private Optional<String> words() {
    Line rest = moves.rest().orElseThrow();
    Line least = rest;
    double points = 0;
    for (Line line : moves.free()) {
      double needed = needed(line, rest);
      if (needed != 0 && (points == 0 || Math.abs(needed) < Math.abs(points))) {
        least = line;
        points = needed;
      }
    }
    if (points == 0) {
      return Optional.empty();
    }
    String name = least.material().name();
    String amount =
        Figures.visible(Math.abs(points), 1) + " points " + (points > 0 ? "more " : "less ") + name;
    return Optional.of(amount + " alone would meet it, but " + obstacle(least, rest, points));
  }

  /** How far a line must move, whatever forbids it; zero where it cannot meet the limit. */
  private double needed(Line line, Line rest) {
    double slope = moves.slope(line, limit);
    if (slope == 0) {
      return 0;
    }
    double points = -moves.room(limit) / slope;
    for (int i = 0; i < CORRECTIONS; i++) {
      Optional<ComputedFeed> there = moved(line, rest, points);
      if (there.isEmpty()) {
        return 0;
      }
      points -= Moves.room(new Readings(there.get()), limit) / slope;
    }
    points = inSteps(line, points * (1 + Closeness.PART));
    Optional<ComputedFeed> there = moved(line, rest, points);
    return there.filter(it -> Judge.verdict(new Readings(it), limit).keeps()).isPresent()
        ? points
        : 0;
  }

  /** In whole steps of the line, where it has some: so many as are needed. */
  private static double inSteps(Line line, double points) {
    if (line.step().isEmpty()) {
      return points;
    }
    double step = line.step().get().part() * 100;
    return Math.copySign(Closeness.up(Math.abs(points) / step) * step, points);
  }

  private Optional<ComputedFeed> moved(Line line, Line rest, double points) {
    double[] by = new double[moves.size()];
    by[line.index()] = points;
    by[rest.index()] = -points;
    return moves.moved(by);
  }

  private String obstacle(Line line, Line rest, double points) {
    double far = Math.abs(points) - Closeness.PART;
    if (far > (points > 0 ? moves.up(line) : moves.down(line))) {
      return bound(line, points > 0);
    }
    if (far > (points > 0 ? moves.down(rest) : moves.up(rest))) {
      return bound(rest, points < 0);
    }
    Proof proof = new Proof(recipe, List.of(limit));
    ComputedFeed there = moved(line, rest, points).orElseThrow();
    return proof
        .broken(new Readings(there))
        .or(() -> tried(line, points).flatMap(proof::against))
        .map(words -> "then " + words)
        .orElse("then another limit that is broken gets worse");
  }

  private Optional<RuleContext> tried(Line line, double points) {
    double share = Math.max(0, Moves.points(line) + points);
    TextEdit edit = new TextEdit(line.figure(), Figures.fixed(share, 3) + " %");
    return recipe.fixing().again().with(List.of(edit));
  }

  private static String bound(Line line, boolean up) {
    String name = line.material().name();
    if (line.within().isEmpty()) {
      return line.rest()
          ? name + " does not have that much left"
          : name + " has no within, and without one it may not move so far";
    }
    double end = up ? line.within().get().high() : line.within().get().low();
    return "the within of "
        + name
        + " ends at "
        + Figures.plain(end * 100)
        + " % and it is at "
        + Figures.fixed(line.designed().kgPer100(), 2)
        + " %";
  }
}
