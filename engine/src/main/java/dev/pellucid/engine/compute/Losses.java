package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Retention;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a nutrient of a row is lost on its way into the feed, place by place. What it keeps at each
 * of them, one times the other, is what the row keeps.
 */
public final class Losses {
  private Losses() {}

  /**
   * One place on the way.
   *
   * @param step the step that heats it; the store otherwise
   * @param premix whose store it is; empty for what happens to the feed
   * @param kept what is left of one there
   */
  public record Loss(
      Step step, Optional<String> premix, Optional<Warmth> warmth, Time time, Parts kept) {
    /** Whether the folder says what is kept here. */
    public boolean told() {
      return kept.told();
    }
  }

  /** How warm it is, in °C. */
  public record Warmth(double coolest, double aim, double hottest) {
    static Warmth of(double one) {
      return new Warmth(one, one, one);
    }
  }

  /** How long it lies, in hours; none where it passes through. */
  public record Time(OptionalDouble hours) {
    static final Time NONE = new Time(OptionalDouble.empty());

    static Time of(double hours) {
      return new Time(OptionalDouble.of(hours));
    }
  }

  /**
   * Parts of one that are left.
   *
   * @param expected fresh, at what is aimed at
   * @param poorest where most is lost, at the end of the shelf life
   * @param richest fresh, where least is lost
   * @param told whether the folder says so
   */
  public record Parts(double expected, double poorest, double richest, boolean told) {}

  /**
   * All places on one way.
   *
   * @param stability the class that says what is kept, and where it is told
   * @param premixes that the ingredient comes in, the outermost first
   */
  public record Way(Retention stability, List<String> premixes, List<Loss> losses) {
    public Way {
      premixes = List.copyOf(premixes);
      losses = List.copyOf(losses);
    }

    /** What is left of one at an end. */
    public double kept(Scenario end) {
      double kept = 1;
      for (Loss loss : losses) {
        kept *=
            switch (end) {
              case EXPECTED -> loss.kept().expected();
              case POOREST -> loss.kept().poorest();
              case RICHEST -> loss.kept().richest();
            };
      }
      return kept;
    }
  }

  /** The way of a nutrient of a row; empty where it is stable, or where no process is told. */
  public static Optional<Way> of(ComputedFeed feed, Row row, Nutrient nutrient, Practice practice) {
    Retentions retentions = new Retentions(practice);
    int stability = row.composition().stability().get(nutrient.index());
    Optional<Retention> told = retentions.at(stability);
    if (told.isEmpty() || !feed.recipe().process().isTold()) {
      return Optional.empty();
    }
    RetentionPath path =
        new RetentionPath(
            retentions,
            feed.recipe().process(),
            feed.recipe().declared(),
            feed.surroundings().airTemperature(),
            0);
    List<ResolvedPremix> through = row.leaf().through();
    List<String> premixes = new ArrayList<>();
    for (ResolvedPremix premix : through) {
      premixes.add(premix.code());
    }
    boolean heated = row.line().place() == Place.MIX;
    return Optional.of(new Way(told.get(), premixes, path.losses(stability, heated, through)));
  }
}
