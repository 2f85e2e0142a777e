package dev.pellucid.engine.judge;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.resolve.Limit;
import java.util.function.Function;

/**
 * A figure that an ingredient does not tell and by which a feed with more of it would be judged.
 * Whoever looks for the cheapest feed would go just there, so no ingredient gets more while it is
 * silent.
 */
public sealed interface Silence {
  /** Whose file does not tell it. */
  Ingredient ingredient();

  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<OfContent, R> content,
      Function<OfCap, R> cap,
      Function<OfDigestibility, R> digestibility,
      Function<OfNeed, R> need);

  /**
   * A content that more of would break a limit.
   *
   * @param limit the first of the recipe that asks for it
   */
  record OfContent(Ingredient ingredient, Nutrient nutrient, Limit limit) implements Silence {
    @Override
    public <R> R byKind(
        Function<OfContent, R> content,
        Function<OfCap, R> cap,
        Function<OfDigestibility, R> digestibility,
        Function<OfNeed, R> need) {
      return content.apply(this);
    }
  }

  /** How much of it the species takes, or that there is no most. */
  record OfCap(Ingredient ingredient, Species species) implements Silence {
    @Override
    public <R> R byKind(
        Function<OfContent, R> content,
        Function<OfCap, R> cap,
        Function<OfDigestibility, R> digestibility,
        Function<OfNeed, R> need) {
      return cap.apply(this);
    }
  }

  /**
   * How much of a nutrient the species digests.
   *
   * @param whole of which it is the part: crude protein
   */
  record OfDigestibility(Ingredient ingredient, Nutrient whole, Species species)
      implements Silence {
    @Override
    public <R> R byKind(
        Function<OfContent, R> content,
        Function<OfCap, R> cap,
        Function<OfDigestibility, R> digestibility,
        Function<OfNeed, R> need) {
      return digestibility.apply(this);
    }
  }

  /** What the species needs told, for what is not told is not judged. */
  record OfNeed(Ingredient ingredient, Nutrient nutrient, Species species) implements Silence {
    @Override
    public <R> R byKind(
        Function<OfContent, R> content,
        Function<OfCap, R> cap,
        Function<OfDigestibility, R> digestibility,
        Function<OfNeed, R> need) {
      return need.apply(this);
    }
  }
}
