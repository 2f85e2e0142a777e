package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A row of {@code practice/sequence.yaml}: what one batch leaves on the line that the next one
 * should not take up. A batch that holds the same itself takes no harm, and is never meant.
 *
 * @param before species or groups of species whose feeds it matters for; empty: every feed and
 *     premix
 * @param flush what is run through in between; empty: the one must never follow the other
 * @param place where the row names what is left
 */
public record SequenceRow(
    Left left,
    List<String> before,
    Optional<Flush> flush,
    String because,
    Source source,
    Span place) {
  public SequenceRow {
    before = List.copyOf(before);
  }

  /** What is left behind, and how people call it. */
  public sealed interface Left {
    /** Applies the one of these that is for its kind. */
    <R> R byKind(
        Function<Held, R> held,
        Function<Marked, R> marked,
        Function<Above, R> above,
        Function<Besides, R> besides);

    String words();

    /**
     * An ingredient.
     *
     * @param name its own or that of a group
     */
    record Held(String name, String words) implements Left {
      @Override
      public <R> R byKind(
          Function<Held, R> held,
          Function<Marked, R> marked,
          Function<Above, R> above,
          Function<Besides, R> besides) {
        return held.apply(this);
      }
    }

    /** Ingredients of a trait. */
    record Marked(Trait trait, String words) implements Left {
      @Override
      public <R> R byKind(
          Function<Held, R> held,
          Function<Marked, R> marked,
          Function<Above, R> above,
          Function<Besides, R> besides) {
        return marked.apply(this);
      }
    }

    /**
     * More of a nutrient than is good for the next.
     *
     * @param most per kg of the feed at its richest, in the base of the kind
     */
    record Above(Nutrient nutrient, double most, String asWritten) implements Left {
      @Override
      public String words() {
        return nutrient.title() + " above " + asWritten;
      }

      @Override
      public <R> R byKind(
          Function<Held, R> held,
          Function<Marked, R> marked,
          Function<Above, R> above,
          Function<Besides, R> besides) {
        return above.apply(this);
      }
    }

    /** Something that a plant makes beside the feeds of the folder. */
    record Besides(AlsoMade what) implements Left {
      @Override
      public String words() {
        return what.words();
      }

      @Override
      public <R> R byKind(
          Function<Held, R> held,
          Function<Marked, R> marked,
          Function<Above, R> above,
          Function<Besides, R> besides) {
        return besides.apply(this);
      }
    }
  }

  /**
   * What cleans the line.
   *
   * @param with an ingredient
   * @param to where it goes afterwards
   */
  public record Flush(double kg, Ingredient with, String to) {}

  /** Whether an ingredient by itself leaves it behind; of a nutrient this cannot be said. */
  public boolean isLeftBy(Ingredient ingredient) {
    return left.byKind(
        held -> ingredient.name().equals(held.name()) || ingredient.groups().contains(held.name()),
        marked -> ingredient.traits().contains(marked.trait()),
        above -> false,
        besides -> false);
  }

  /** What a plant makes beside the feeds of the folder, where it is this that is left behind. */
  public Optional<AlsoMade> besides() {
    return left.byKind(
        held -> Optional.empty(),
        marked -> Optional.empty(),
        above -> Optional.empty(),
        besides -> Optional.of(besides.what()));
  }

  /** Whether it matters for feeds of a species, or for what is of none. */
  public boolean isFor(Optional<Species> species) {
    return before.isEmpty() || species.filter(one -> before.stream().anyMatch(one::is)).isPresent();
  }
}
