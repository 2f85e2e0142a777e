package dev.pellucid.engine.records;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Species;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One ingredient of several lots that go into one line. Each content is the mean of theirs, by
 * weight; what one of them does not tell, the blend does not tell. Spreads are meant too, since the
 * lots of one ingredient are taken to move together.
 */
final class Blend {
  private final Optional<Species> species;
  private final List<Ingredient> lots;
  private final List<Double> parts;

  /**
   * @param species that is fed, by which contents are told
   * @param lots of one ingredient
   * @param parts of the line, together one
   */
  private Blend(Optional<Species> species, List<Ingredient> lots, List<Double> parts) {
    this.species = species;
    this.lots = lots;
    this.parts = parts;
  }

  /** A single lot stays as it is. */
  static Ingredient of(Optional<Species> species, List<Ingredient> lots, List<Double> parts) {
    return lots.size() == 1 ? lots.get(0) : new Blend(species, lots, parts).blended();
  }

  private Ingredient blended() {
    Map<String, Content> contents = new LinkedHashMap<>();
    for (String nutrient : nutrients()) {
      mean(nutrient).ifPresent(content -> contents.put(nutrient, content));
    }
    Ingredient first = lots.get(0);
    ContentBlock any = first.contents().get(0);
    List<ContentBlock> blocks = new ArrayList<>();
    blocks.add(new ContentBlock(Optional.empty(), any.source(), any.analyses(), contents));
    return first.ofLot(String.join(", ", lots.stream().map(Ingredient::lot).toList()), blocks);
  }

  private Set<String> nutrients() {
    Set<String> names = new LinkedHashSet<>();
    for (Ingredient lot : lots) {
      for (ContentBlock block : lot.contents()) {
        names.addAll(block.byNutrient().keySet());
      }
    }
    return names;
  }

  private Optional<Content> mean(String nutrient) {
    List<Content> told = new ArrayList<>();
    for (Ingredient lot : lots) {
      told(lot, nutrient).ifPresent(told::add);
    }
    return told.size() < lots.size() ? Optional.empty() : Optional.of(mean(told));
  }

  private Content mean(List<Content> told) {
    double low = 0;
    double more = 0;
    double spread = 0;
    boolean spreads = true;
    for (int i = 0; i < told.size(); i++) {
      Content one = told.get(i);
      low += parts.get(i) * one.low();
      more += parts.get(i) * (one.high() - one.low());
      spreads &= one.spread().isPresent();
      spread += parts.get(i) * one.spread().orElse(0);
    }
    Content first = told.get(0);
    return new Content(
        low,
        low + more,
        spreads ? OptionalDouble.of(spread) : OptionalDouble.empty(),
        first.asWritten(),
        first.place(),
        first.source());
  }

  private Optional<Content> told(Ingredient lot, String nutrient) {
    return lot.telling(nutrient, species)
        .flatMap(block -> Optional.ofNullable(block.byNutrient().get(nutrient)));
  }
}
