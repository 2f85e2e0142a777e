package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.data.Species;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What a line weighs out. */
public sealed interface Material {
  /** As recipes call it. */
  String name();

  /** For people. */
  String title();

  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<Single, R> single, Function<Premixed, R> premixed, Function<Reworked, R> reworked);

  /** Applies the first to an ingredient, and the second to what a premix or rework is made of. */
  default <R> R opened(Function<Single, R> single, Function<ResolvedPremix, R> parts) {
    return byKind(
        single,
        premixed -> parts.apply(premixed.premix()),
        reworked -> parts.apply(reworked.premix()));
  }

  /** The ingredient, where it is one. */
  default Optional<Single> single() {
    return Optional.empty();
  }

  /** The premix, where it is one. */
  default Optional<ResolvedPremix> premixed() {
    return Optional.empty();
  }

  /** The finished feed, where it is such. */
  default Optional<Reworked> reworked() {
    return Optional.empty();
  }

  /** What it is made of here; none for an ingredient. */
  List<ResolvedPremix.Part> parts();

  /** The ingredients that it brings, premixes opened. They are known even without figures. */
  List<Ingredient> ingredients();

  /** Whether it is what people mean by this name, its own or a former one. */
  default boolean isCalled(String name) {
    return name().equals(name);
  }

  /** Whether it is of this group; what is made here is of none. */
  default boolean isIn(String group) {
    return false;
  }

  /** Whether it is poured and not shovelled; what is made here never is. */
  default boolean isLiquid() {
    return false;
  }

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

    @Override
    public Optional<Single> single() {
      return Optional.of(this);
    }

    @Override
    public List<ResolvedPremix.Part> parts() {
      return List.of();
    }

    @Override
    public List<Ingredient> ingredients() {
      return List.of(ingredient);
    }

    @Override
    public boolean isCalled(String name) {
      return name().equals(name) || ingredient.formerly().contains(name);
    }

    @Override
    public boolean isIn(String group) {
      return ingredient.groups().contains(group);
    }

    @Override
    public boolean isLiquid() {
      return ingredient.form().isLiquid();
    }

    @Override
    public <R> R byKind(
        Function<Single, R> single,
        Function<Premixed, R> premixed,
        Function<Reworked, R> reworked) {
      return single.apply(this);
    }
  }

  /**
   * Finished feed that is worked in again.
   *
   * @param species that the feed was made for, where its recipe tells one
   */
  record Reworked(ResolvedPremix premix, Optional<Species> species) implements Material {
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

    @Override
    public Optional<Reworked> reworked() {
      return Optional.of(this);
    }

    @Override
    public List<ResolvedPremix.Part> parts() {
      return premix.parts();
    }

    @Override
    public List<Ingredient> ingredients() {
      return premix.ingredients();
    }

    @Override
    public <R> R byKind(
        Function<Single, R> single,
        Function<Premixed, R> premixed,
        Function<Reworked, R> reworked) {
      return reworked.apply(this);
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

    @Override
    public Optional<ResolvedPremix> premixed() {
      return Optional.of(premix);
    }

    @Override
    public List<ResolvedPremix.Part> parts() {
      return premix.parts();
    }

    @Override
    public List<Ingredient> ingredients() {
      return premix.ingredients();
    }

    @Override
    public <R> R byKind(
        Function<Single, R> single,
        Function<Premixed, R> premixed,
        Function<Reworked, R> reworked) {
      return premixed.apply(this);
    }
  }
}
