package dev.pellucid.engine.data;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * A dryer of a plant.
 *
 * @param title for people
 * @param way how feed goes through it
 * @param warmth at which temperatures it works; where none is told, at any
 */
public record Dryer(String title, Way way, Optional<Warmth> warmth) {
  /** Common practice, drawn wide, no source. */
  private static final double LEAST_DRIED = 0.03;

  private static final double MOST_DRIED = 0.8;

  /** From and to, in °C. */
  public record Warmth(double low, double high, String asWritten) {}

  /** How feed goes through a dryer, and how much at once. */
  public sealed interface Way {
    /** Applies the one of these that is for its kind. */
    <R> R byKind(Function<Trays, R> trays, Function<Bed, R> bed, Function<Belt, R> belt);
  }

  /**
   * On trays.
   *
   * @param load wet feed on one tray, in kg
   * @param atOnce how many trays it takes; empty: as many as there are
   */
  public record Trays(double load, OptionalInt atOnce) implements Way {
    @Override
    public <R> R byKind(Function<Trays, R> trays, Function<Bed, R> bed, Function<Belt, R> belt) {
      return trays.apply(this);
    }
  }

  /**
   * As a bed that is filled, blown through and emptied.
   *
   * @param waterPerHour the most water that it takes off, in kg
   * @param holds wet feed at once, in kg; empty: a whole batch
   */
  public record Bed(double waterPerHour, OptionalDouble holds) implements Way {
    /** Whether water and load hardly go together; then that is told at the dryer. */
    public boolean isDoubted() {
      return Dryer.isDoubted(waterPerHour, holds);
    }

    @Override
    public <R> R byKind(Function<Trays, R> trays, Function<Bed, R> bed, Function<Belt, R> belt) {
      return bed.apply(this);
    }
  }

  /**
   * On a belt that runs on.
   *
   * @param waterPerHour the most water that it takes off, in kg
   * @param holds wet feed on the belt, in kg, where it is told
   */
  public record Belt(double waterPerHour, OptionalDouble holds) implements Way {
    @Override
    public <R> R byKind(Function<Trays, R> trays, Function<Bed, R> bed, Function<Belt, R> belt) {
      return belt.apply(this);
    }
  }

  /** The water that comes off in an hour is commonly such a part of what is in the dryer. */
  static boolean isDoubted(double waterPerHour, OptionalDouble holds) {
    return holds.isPresent()
        && (waterPerHour < LEAST_DRIED * holds.getAsDouble()
            || waterPerHour > MOST_DRIED * holds.getAsDouble());
  }

  /**
   * Whether it dries at a temperature.
   *
   * @param celsius empty where the recipe tells none; then any dryer does
   */
  public boolean works(OptionalDouble celsius) {
    return celsius.isEmpty()
        || warmth.isEmpty()
        || (celsius.getAsDouble() >= warmth.get().low()
            && celsius.getAsDouble() <= warmth.get().high());
  }
}
