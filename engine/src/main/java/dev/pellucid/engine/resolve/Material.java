package dev.pellucid.engine.resolve;

import dev.pellucid.engine.larder.Ingredient;
import dev.pellucid.engine.larder.Price;
import dev.pellucid.engine.larder.Species;
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

  /** What is made here of several ingredients. */
  sealed interface Blended extends Material {
    /** What it is made of. */
    ResolvedPremix premix();
  }

  /**
   * Finished feed that is worked in again.
   *
   * @param species that the feed was made for, where its recipe tells one
   */
  record Reworked(ResolvedPremix premix, Optional<Species> species) implements Blended {
    /** What its name begins with: {@code rework CG-36}. */
    public static final String REWORK = "rework ";

    @Override
    public String name() {
      return REWORK + premix.code();
    }

    @Override
    public String title() {
      return premix.title();
    }
  }

  /** A premix made here. */
  record Premixed(ResolvedPremix premix) implements Blended {
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
