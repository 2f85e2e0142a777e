package dev.pellucid.engine.account;

import dev.pellucid.engine.account.RestsOn.Figure;
import dev.pellucid.engine.account.RestsOn.Kind;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Losses;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Digestibility.Coefficient;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Practice.DefaultSpread;
import dev.pellucid.engine.data.Source;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the figures that the judged limits of a feed hang on, from each limit down to what
 * ingredients tell. A content counts where its ingredient brings more than a trace of the nutrient.
 */
final class Grounds {
  /** A part of what all ingredients together bring of a nutrient: less does not decide a limit. */
  private static final double TRACE = 0.001;

  private final ComputedFeed feed;
  private final Practice practice;

  /** By kind, place and name, so that each figure counts once. */
  private final Map<String, Figure> figures = new LinkedHashMap<>();

  Grounds(ComputedFeed feed, Practice practice) {
    this.feed = feed;
    this.practice = practice;
  }

  List<Figure> of(List<LimitStatus> limits) {
    BitSet read = new BitSet();
    BitSet varying = new BitSet();
    for (LimitStatus status : limits) {
      if (status.state().isJudged()) {
        limit(status.limit());
        boolean varies = isJudgedByLots(status);
        for (Nutrient nutrient : status.limit().subject().nutrients()) {
          read.set(nutrient.index());
          varying.set(nutrient.index(), varies || varying.get(nutrient.index()));
        }
      }
    }
    List<List<Row>> ingredients = feed.rowsByIngredient();
    for (int i = read.nextSetBit(0); i >= 0; i = read.nextSetBit(i + 1)) {
      nutrient(ingredients, feed.nutrients().inOrder().get(i), varying.get(i));
    }
    return new ArrayList<>(figures.values());
  }

  private void limit(Limit limit) {
    Optional<Source> source = limit.origin().source();
    if (source.isPresent() && limit.waiver().isEmpty()) {
      String asks = limit.demand().about() + limit.basis().words();
      add(Kind.LIMIT, limit.origin().name(), asks, source.get());
    }
  }

  /** Whether what is said of the limit hangs on how lots differ. */
  private static boolean isJudgedByLots(LimitStatus status) {
    if (status.limit().inBatches().isPresent()) {
      return true;
    }
    Optional<LawMargin> margin = LawMargin.of(status);
    return margin.isPresent() && margin.get().reading().deviation() > 0;
  }

  private void nutrient(List<List<Row>> ingredients, Nutrient nutrient, boolean varies) {
    double[] brings = new double[ingredients.size()];
    double all = 0;
    for (int i = 0; i < brings.length; i++) {
      for (Row row : ingredients.get(i)) {
        brings[i] += brings(row, nutrient.index());
      }
      all += brings[i];
    }
    for (int i = 0; i < brings.length; i++) {
      if (brings[i] > TRACE * all) {
        for (Row row : ingredients.get(i)) {
          told(row, nutrient, varies);
        }
      }
    }
  }

  /** What is told of a row, at the most that it can be. */
  private double brings(Row row, int nutrient) {
    boolean dried = feed.nutrients().isMoisture(nutrient) && !feed.keepsItsWater(row);
    return dried || row.composition().isUnknown(nutrient)
        ? 0
        : row.amount(Scenario.RICHEST, nutrient);
  }

  /** What is told directly counts, then the formula, then the digestible part of another. */
  private void told(Row row, Nutrient nutrient, boolean varies) {
    String ingredient = row.ingredient().name();
    Optional<Content> content = content(row, nutrient);
    boolean none = content.isPresent() && content.get().high() == 0;
    if (none || isUnknown(row, nutrient)) {
      return;
    }
    retention(row, nutrient);
    if (content.isPresent()) {
      add(Kind.CONTENT, ingredient, nutrient.name(), content.get().source());
      if (varies) {
        spread(ingredient, nutrient, content.get());
      }
    } else if (nutrient.formula().isPresent() && isKnown(row, nutrient.formula().get())) {
      formula(row, nutrient, nutrient.formula().get(), varies);
    } else if (nutrient.digestibleOf().isPresent()) {
      digestible(row, nutrient, nutrient.digestibleOf().get(), varies);
    }
  }

  private Optional<Content> content(Row row, Nutrient nutrient) {
    Optional<ContentBlock> block =
        row.ingredient().telling(nutrient.name(), feed.recipe().species());
    return block.isPresent()
        ? Optional.ofNullable(block.get().byNutrient().get(nutrient.name()))
        : Optional.empty();
  }

  private static boolean isUnknown(Row row, Nutrient nutrient) {
    return row.composition().isUnknown(nutrient.index());
  }

  private boolean isKnown(Row row, Nutrient.Formula formula) {
    for (Nutrient.Formula.Term term : formula.terms()) {
      Optional<Nutrient> of = feed.nutrients().named(term.nutrient());
      if (of.isEmpty() || isUnknown(row, of.get())) {
        return false;
      }
    }
    return true;
  }

  private void formula(Row row, Nutrient nutrient, Nutrient.Formula formula, boolean varies) {
    if (formula.source().isPresent()) {
      add(Kind.FORMULA, nutrient.name(), formula.asWritten(), formula.source().get());
    }
    for (Nutrient.Formula.Term term : formula.terms()) {
      told(row, feed.nutrients().named(term.nutrient()).orElseThrow(), varies);
    }
  }

  private void digestible(Row row, Nutrient nutrient, String whole, boolean varies) {
    Optional<Coefficient> part =
        row.ingredient()
            .coefficient(nutrient, feed.recipe().species(), feed.recipe().process().kind());
    if (part.isPresent()) {
      add(Kind.DIGESTIBILITY, row.ingredient().name(), nutrient.name(), part.get().told().source());
    }
    told(row, feed.nutrients().named(whole).orElseThrow(), varies);
  }

  /** The ± of the ingredient itself, else what practice tells of the nutrient. */
  private void spread(String ingredient, Nutrient nutrient, Content content) {
    DefaultSpread usual = practice.spreads().get(nutrient.name());
    if (content.spread().isPresent()) {
      add(Kind.SPREAD, ingredient, nutrient.name(), content.source());
    } else if (usual != null) {
      add(Kind.SPREAD, RestsOn.PRACTICE, nutrient.name(), usual.source());
    }
  }

  /** One figure for each place where its class tells what is left. */
  private void retention(Row row, Nutrient nutrient) {
    if (row.composition().stability().get(nutrient.index()) == 0) {
      return;
    }
    Optional<Losses.Way> way = Losses.of(feed, row, nutrient, practice);
    if (way.isPresent()) {
      for (Losses.Loss loss : way.get().losses()) {
        if (loss.told()) {
          add(
              Kind.RETENTION,
              way.get().stability().stability(),
              loss.step().word(),
              way.get().stability().source());
        }
      }
    }
  }

  private void add(Kind kind, String of, String what, Source source) {
    figures.putIfAbsent(
        kind + "\n" + of + "\n" + what,
        new Figure(kind, of, what, source.id(), source.reliability()));
  }
}
