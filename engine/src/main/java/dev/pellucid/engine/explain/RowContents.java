package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Digestibility.Coefficient;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Source;
import dev.pellucid.engine.quantity.Figures;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the ingredients of one feed hold, in words, and where that is written. */
final class RowContents {
  private final ComputedFeed feed;

  RowContents(ComputedFeed feed) {
    this.feed = feed;
  }

  /**
   * A content as it is written.
   *
   * @param species for which alone it is written; empty where it holds for all
   */
  record Written(Content content, Optional<String> species) {}

  /**
   * The content that counts for this feed; empty where it is not written or follows from others.
   */
  Optional<Written> written(Row row, Nutrient nutrient) {
    Optional<Written> general = Optional.empty();
    for (Ingredient.ContentBlock block : row.ingredient().contents()) {
      Content content = block.byNutrient().get(nutrient.name());
      if (content == null) {
        continue;
      }
      Written one = new Written(content, block.species());
      if (block.species().isEmpty()) {
        general = Optional.of(one);
      } else if (feed.recipe()
          .species()
          .filter(fish -> fish.is(block.species().get()))
          .isPresent()) {
        return Optional.of(one);
      }
    }
    return general;
  }

  /** How much of a nutrient a row brings, in words, before anything is lost. */
  String holds(Row row, List<Nutrient> nutrients) {
    List<String> words = new ArrayList<>();
    for (Nutrient one : nutrients) {
      Optional<Written> written = written(row, one);
      if (written.isPresent()) {
        words.add(written.get().content().asWritten());
      } else if (row.composition().isUnknown(one.index())) {
        words.add("not given");
      } else {
        words.add(Figures.plain(row.composition().expected().at(one.index()), one.unit()));
      }
    }
    return String.join(" + ", words);
  }

  /** Percent that the process leaves; empty where there is nothing to keep. */
  static String kept(Row row, List<Nutrient> nutrients) {
    double full = 0;
    double left = 0;
    for (Nutrient one : nutrients) {
      full += row.composition().expected().at(one.index()) * row.kg();
      left += row.amount(Scenario.EXPECTED, one.index());
    }
    return full > 0 ? Figures.visible(left / full * 100, 1) : "";
  }

  /**
   * Where the contents are from; of what follows from others, where formula and factor are from.
   */
  String sources(Row row, List<Nutrient> nutrients) {
    Set<String> sources = new LinkedHashSet<>();
    for (Nutrient one : nutrients) {
      Optional<Written> written = written(row, one);
      if (written.isPresent()) {
        sources.add(
            source(written.get().content().source())
                + written.get().species().map(fish -> " for " + fish).orElse(""));
      } else if (!row.composition().isUnknown(one.index())) {
        sources.add(follows(row, one));
      }
    }
    return String.join(", ", sources);
  }

  private String follows(Row row, Nutrient nutrient) {
    Optional<Coefficient> part = coefficient(row, nutrient);
    if (part.isPresent()) {
      String source = source(part.get().told().source());
      return part.get().standsInFor(nutrient) ? source + ", that of " + part.get().of() : source;
    }
    return nutrient
        .formula()
        .flatMap(one -> one.source())
        .map(RowContents::source)
        .orElse("its formula");
  }

  /** The coefficient that counts, of what is the digestible part of another. */
  Optional<Coefficient> coefficient(Row row, Nutrient nutrient) {
    return row.ingredient()
        .coefficient(nutrient, feed.recipe().species(), feed.recipe().process().kind());
  }

  /** {@code handbook (from memory)}. */
  static String source(Source source) {
    return source.id() + " (" + source.reliability().inWords() + ")";
  }
}
