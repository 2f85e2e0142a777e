package dev.pellucid.engine.weighing;

import dev.pellucid.engine.data.Scale;
import java.util.Optional;
import java.util.function.Function;

/** Where an amount goes to be weighed, or why it cannot be. */
public sealed interface Placing {
  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<Placed, R> placed, Function<TooLittle, R> tooLittle, Function<TooMuch, R> tooMuch);

  /** How it is weighed; empty where it cannot be. */
  Optional<Weight> placed();

  /** Whether it is less than any scale that carries it is to be trusted with. */
  boolean isTooLittle();

  /** It is weighed. */
  record Placed(Weight weight) implements Placing {
    @Override
    public Optional<Weight> placed() {
      return Optional.of(weight);
    }

    @Override
    public boolean isTooLittle() {
      return false;
    }

    @Override
    public <R> R byKind(
        Function<Placed, R> placed,
        Function<TooLittle, R> tooLittle,
        Function<TooMuch, R> tooMuch) {
      return placed.apply(this);
    }
  }

  /**
   * The finest scale that carries it is sensible only from more.
   *
   * @param least kg
   */
  record TooLittle(Scale scale, double least) implements Placing {
    @Override
    public Optional<Weight> placed() {
      return Optional.empty();
    }

    @Override
    public boolean isTooLittle() {
      return true;
    }

    @Override
    public <R> R byKind(
        Function<Placed, R> placed,
        Function<TooLittle, R> tooLittle,
        Function<TooMuch, R> tooMuch) {
      return tooLittle.apply(this);
    }
  }

  /** Even the scale that carries most would need too many weighings. */
  record TooMuch(Scale scale, long weighings) implements Placing {
    @Override
    public Optional<Weight> placed() {
      return Optional.empty();
    }

    @Override
    public boolean isTooLittle() {
      return false;
    }

    @Override
    public <R> R byKind(
        Function<Placed, R> placed,
        Function<TooLittle, R> tooLittle,
        Function<TooMuch, R> tooMuch) {
      return tooMuch.apply(this);
    }
  }
}
