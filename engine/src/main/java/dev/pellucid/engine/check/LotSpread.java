package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Composition;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Practice.DefaultSpread;
import dev.pellucid.engine.data.Source;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Of a figure of a feed, what each ingredient brings to it and how that differs from lot to lot,
 * and who says so.
 */
record LotSpread(List<Part> parts) {
  LotSpread {
    parts = List.copyOf(parts);
  }

  /**
   * What one ingredient does.
   *
   * @param most its row that brings most
   * @param brings in amounts of 100 kg of recipe, on target and fresh
   * @param deviation one standard deviation of that
   */
  record Part(Row most, double brings, double deviation, Basis basis) {
    String ingredient() {
      return most.ingredient().name();
    }

    private boolean isWiderThan(Part other) {
      return deviation == other.deviation ? brings > other.brings : deviation > other.deviation;
    }
  }

  /** Who says how a content differs from lot to lot. */
  sealed interface Basis {
    /** Whether something better than memory or invention stands behind it. */
    boolean isBacked();

    /** In a sentence, after "the spread of fish-meal-65": {@code is ± 0.15 mg/kg, ...}. */
    String words();
  }

  /** The ± of the ingredient itself. */
  record Written(Content content, Nutrient nutrient, OptionalInt analyses) implements Basis {
    @Override
    public boolean isBacked() {
      return LotSpread.isBacked(content.source());
    }

    @Override
    public String words() {
      return "is ± "
          + Figures.plain(content.spread().orElse(0), nutrient.unit())
          + " by "
          + content.place().file().path()
          + from(content.source(), analyses);
    }
  }

  /** What practice tells of the nutrient. */
  record Usual(DefaultSpread spread) implements Basis {
    @Override
    public boolean isBacked() {
      return LotSpread.isBacked(spread.source());
    }

    @Override
    public String words() {
      return "is "
          + Figures.plain(spread.share(), Unit.PERCENT)
          + " of it by practice/spreads.yaml"
          + from(spread.source(), spread.analyses());
    }
  }

  /** Nobody says it. */
  record NotTold() implements Basis {
    @Override
    public boolean isBacked() {
      return false;
    }

    @Override
    public String words() {
      return "is not given, and counts as none";
    }
  }

  /** Of the nutrients of a limit. */
  static LotSpread of(ComputedFeed feed, FeedTables tables, Limit limit) {
    List<Nutrient> nutrients = limit.subject().addends();
    int[] indexes = new int[nutrients.size()];
    for (int i = 0; i < indexes.length; i++) {
      indexes[i] = nutrients.get(i).index();
    }
    List<Part> parts = new ArrayList<>();
    for (List<Row> rows : feed.rowsByIngredient()) {
      Row most = rows.get(0);
      double brings = 0;
      double deviation = 0;
      for (Row row : rows) {
        most = brings(row, indexes) > brings(most, indexes) ? row : most;
        brings += brings(row, indexes);
        deviation += row.deviation(indexes);
      }
      if (brings > 0) {
        parts.add(new Part(most, brings, deviation, basis(feed, tables, most, nutrients)));
      }
    }
    return new LotSpread(parts);
  }

  /** The one that moves the figure most; of those that do not move, the one that brings most. */
  Optional<Part> widest() {
    Optional<Part> widest = Optional.empty();
    for (Part part : parts) {
      if (widest.isEmpty() || part.isWiderThan(widest.get())) {
        widest = Optional.of(part);
      }
    }
    return widest;
  }

  /** Whether most of the figure comes from ingredients of which nothing backs the spread. */
  boolean isUnsure() {
    double all = 0;
    double unsure = 0;
    for (Part part : parts) {
      all += part.brings();
      unsure += part.basis().isBacked() ? 0 : part.brings();
    }
    return unsure > all / 2;
  }

  /** Of those that nothing backs, the one that brings most. */
  Optional<Part> mostUnsure() {
    Optional<Part> most = Optional.empty();
    for (Part part : parts) {
      if (!part.basis().isBacked() && (most.isEmpty() || part.brings() > most.get().brings())) {
        most = Optional.of(part);
      }
    }
    return most;
  }

  private static double brings(Row row, int[] nutrients) {
    double brings = 0;
    for (int nutrient : nutrients) {
      brings += row.amount(Scenario.EXPECTED, nutrient);
    }
    return brings;
  }

  /** Of the content that a row tells and by which its figure moves most. */
  private static Basis basis(
      ComputedFeed feed, FeedTables tables, Row row, List<Nutrient> nutrients) {
    double furthest = -1;
    Basis basis = new NotTold();
    for (Nutrient nutrient : nutrients) {
      for (Composition.Derived.Term term : row.composition().net().get(nutrient.index())) {
        double moves = Math.abs(term.factor()) * row.composition().spread().at(term.nutrient());
        if (moves > furthest) {
          furthest = moves;
          basis = basis(feed, tables, row, feed.nutrients().inOrder().get(term.nutrient()));
        }
      }
    }
    return basis;
  }

  private static Basis basis(ComputedFeed feed, FeedTables tables, Row row, Nutrient nutrient) {
    Optional<ContentBlock> block =
        row.ingredient().telling(nutrient.name(), feed.recipe().species());
    Content told = block.isPresent() ? block.get().byNutrient().get(nutrient.name()) : null;
    if (told == null) {
      return new NotTold();
    }
    if (told.spread().isPresent()) {
      return new Written(told, nutrient, block.get().analyses());
    }
    DefaultSpread usual = tables.practice().spreads().get(nutrient.name());
    return usual == null ? new NotTold() : new Usual(usual);
  }

  private static boolean isBacked(Source source) {
    return switch (source.reliability()) {
      case PUBLISHED, OWN_ANALYSIS, COMMON_PRACTICE -> true;
      case FROM_MEMORY, INVENTED -> false;
    };
  }

  private static String from(Source source, OptionalInt analyses) {
    return ", source "
        + source.id()
        + " ("
        + source.reliability().inWords()
        + "), "
        + (analyses.isPresent()
            ? "of " + analyses.getAsInt() + " analyses"
            : "number of analyses not given");
  }
}
