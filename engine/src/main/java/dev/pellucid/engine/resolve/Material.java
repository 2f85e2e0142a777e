package dev.pellucid.engine.resolve;

import dev.pellucid.engine.larder.Ingredient;
import dev.pellucid.engine.larder.Price;
import java.util.Optional;

/** What a line weighs out. */
public sealed interface Material {
  /** As recipes call it. */
  String name();

  /** For people. */
  String title();

  /**
   * An ingredient.
   *
   * @param price on the day of the run
   */
  record Single(Ingredient ingredient, Optional<Price> price) implements Material {
    @Override
    public String name() {
      return ingredient.name();
    }

    @Override
    public String title() {
      return ingredient.title();
    }
  }

  /** A premix made here. */
  record Premixed(ResolvedPremix premix) implements Material {
    @Override
    public String name() {
      return premix.code();
    }

    @Override
    public String title() {
      return premix.title();
    }
  }
}
