package dev.pellucid.engine.compare;

import dev.pellucid.engine.check.Verdict;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.End;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.larder.Nutrient;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What one recipe comes to in one state of the folder.
 *
 * @param layout its words line by line, so that white space is no change
 * @param reads the names that it looked up
 * @param figures absent where it could not be computed
 */
public record RecipeState(
    String code, String layout, Set<String> reads, Optional<FeedFigures> figures) {
  public RecipeState {
    reads = Set.copyOf(reads);
  }

  /** Whether a profile of limits holds the recipe, asked for or by law. */
  boolean isHeldBy(String profile) {
    return figures.stream()
        .flatMap(all -> all.limits().keySet().stream())
        .anyMatch(key -> key.startsWith(profile + " "));
  }

  /**
   * The figures of a feed.
   *
   * @param lines percent of the recipe by the name of the line, in order
   * @param nutrients on target and fresh, as fed, by name
   * @param costPerKg of what is bagged
   * @param limits by what they bound, in order
   * @param waivers what is waived and until when
   */
  public record FeedFigures(
      Map<String, String> lines,
      Map<String, Amount> nutrients,
      double costPerKg,
      Map<String, Held> limits,
      Set<String> waivers) {
    public FeedFigures {
      lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
      nutrients = Collections.unmodifiableMap(new LinkedHashMap<>(nutrients));
      limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
      waivers = Collections.unmodifiableSet(new TreeSet<>(waivers));
    }

    /** The figures of a computed feed and its verdicts. */
    public static FeedFigures of(ComputedFeed feed, List<Verdict> verdicts) {
      Map<String, String> lines = new LinkedHashMap<>();
      for (Line line : feed.recipe().lines()) {
        lines.merge(
            line.material().name(), line.share().toString(), (one, two) -> one + " and " + two);
      }
      Map<String, Amount> nutrients = new LinkedHashMap<>();
      Readings readings = new Readings(feed);
      for (Nutrient nutrient : feed.nutrients().inOrder()) {
        double value =
            readings
                .at(
                    new Subject.Nutrients(List.of(nutrient), nutrient.name()),
                    new Basis.AsFed(),
                    End.EXPECTED)
                .value();
        nutrients.put(nutrient.name(), new Amount(value, nutrient.unit()));
      }
      Map<String, Held> limits = new LinkedHashMap<>();
      Set<String> waivers = new TreeSet<>();
      for (Verdict verdict : verdicts) {
        Limit limit = verdict.limit();
        limits.put(key(limit), held(verdict));
        limit
            .waiver()
            .ifPresent(
                waiver ->
                    waivers.add(
                        limit.subject().text()
                            + " "
                            + limit.side().word()
                            + " "
                            + waiver.written().asWritten()
                            + " until "
                            + waiver.until()));
      }
      return new FeedFigures(lines, nutrients, feed.costPerKg(), limits, waivers);
    }

    private static String key(Limit limit) {
      return limit.origin().name()
          + " "
          + limit.subject().text()
          + " "
          + limit.side().word()
          + limit.basis().words()
          + limit.inBatches();
    }

    private static Held held(Verdict verdict) {
      Limit limit = verdict.limit();
      Bound.Limit written = limit.writtenInForce();
      double judged = shown(verdict.judged(), written);
      double bound = shown(limit.inForce(), written);
      double room = limit.side() == Bound.Side.MIN ? judged - bound : bound - judged;
      String batches =
          limit.inBatches().isPresent()
              ? " in "
                  + Figures.plain(limit.inBatches().getAsDouble(), Unit.PERCENT)
                  + " of batches"
              : "";
      return new Held(
          limit.subject().text(),
          limit.side().word() + " " + written.asWritten() + limit.basis().words() + batches,
          judged,
          bound == 0 ? room : room / Math.abs(bound),
          verdict.keeps());
    }

    private static double shown(double base, Bound.Limit written) {
      return written instanceof Bound.Limit.Measured measured
          ? measured.amount().unit().fromBase(base)
          : base;
    }
  }

  /** A figure in the base of its unit's kind. */
  public record Amount(double base, Unit unit) {}

  /**
   * One side of one limit.
   *
   * @param bound as written, with its basis and confidence
   * @param judged in the unit of the bound
   * @param room what is left to the bound as a part of it; below nought where it is broken
   */
  public record Held(String subject, String bound, double judged, double room, boolean keeps) {}
}
