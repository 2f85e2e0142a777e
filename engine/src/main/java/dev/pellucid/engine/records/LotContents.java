package dev.pellucid.engine.records;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.quantity.Figures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An ingredient with what was measured in one lot of it.
 *
 * <p>What was measured takes the place of the library, for every species. Everything else is told
 * as fed, so a measured moisture rescales it by {@code (1 - w_lot) / (1 - w_library)}; a measured
 * crude protein rescales the parts of protein that were not measured by {@code protein_lot /
 * protein_library}. A measured figure has no spread between lots: it is this lot.
 *
 * @param ingredient under its own name, with the number of the lot
 * @param dry what unmeasured contents were multiplied by
 * @param protein what unmeasured parts of protein were multiplied by, where protein was measured
 */
public record LotContents(Ingredient ingredient, double dry, OptionalDouble protein) {
  private static final String PROTEIN = "crude-protein";

  public static LotContents of(Ingredient library, Lot lot, Nutrients nutrients) {
    if (lot.measured().isEmpty()) {
      return new LotContents(
          library.ofLot(lot.number(), library.contents()), 1, OptionalDouble.empty());
    }
    double dry = dry(library, lot);
    OptionalDouble protein = quotient(library, lot);
    List<ContentBlock> blocks = new ArrayList<>();
    lot.measured().forEach(block -> blocks.add(measured(block)));
    for (ContentBlock block : library.contents()) {
      blocks.add(rescaled(block, lot, nutrients, dry, protein.orElse(dry)));
    }
    blocks.sort(java.util.Comparator.comparing(block -> block.species().isEmpty()));
    return new LotContents(library.ofLot(lot.number(), blocks), dry, protein);
  }

  /** What was done, in words; empty where nothing was rescaled. */
  public String words() {
    List<String> words = new ArrayList<>();
    if (dry != 1) {
      words.add("contents times " + Figures.fixed(dry, 4) + " for its moisture");
    }
    protein.ifPresent(
        factor -> words.add("amino acids times " + Figures.fixed(factor, 4) + " for its protein"));
    return String.join(", ", words);
  }

  private static double dry(Ingredient library, Lot lot) {
    Optional<Content> here = lot.measured(Nutrients.MOISTURE).filter(it -> !it.isBound());
    Optional<Content> there = told(library, Nutrients.MOISTURE);
    return here.isEmpty() || there.isEmpty() || there.get().low() >= 1
        ? 1
        : (1 - here.get().low()) / (1 - there.get().low());
  }

  private static OptionalDouble quotient(Ingredient library, Lot lot) {
    Optional<Content> here = lot.measured(PROTEIN);
    Optional<Content> there = told(library, PROTEIN).filter(content -> content.low() > 0);
    return here.isEmpty() || there.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(here.get().low() / there.get().low());
  }

  static Optional<Content> told(Ingredient library, String nutrient) {
    return library.contents().stream()
        .filter(block -> block.species().isEmpty())
        .flatMap(block -> Optional.ofNullable(block.byNutrient().get(nutrient)).stream())
        .findFirst();
  }

  private static ContentBlock measured(ContentBlock block) {
    Map<String, Content> contents = new LinkedHashMap<>();
    block
        .byNutrient()
        .forEach(
            (name, content) -> {
              if (!isBoundOfWater(name, content)) {
                contents.put(
                    name,
                    new Content(
                        content.low(),
                        content.high(),
                        OptionalDouble.of(content.spread().orElse(0)),
                        content.asWritten(),
                        content.place(),
                        content.source()));
              }
            });
    return new ContentBlock(block.species(), block.source(), block.analyses(), contents);
  }

  /** The most of its moisture is no moisture: that of the library stays. */
  private static boolean isBoundOfWater(String name, Content content) {
    return name.equals(Nutrients.MOISTURE) && content.isBound();
  }

  private static ContentBlock rescaled(
      ContentBlock block, Lot lot, Nutrients nutrients, double dry, double protein) {
    Map<String, Content> contents = new LinkedHashMap<>();
    block
        .byNutrient()
        .forEach(
            (name, content) -> {
              if (lot.measured(name).filter(it -> !isBoundOfWater(name, it)).isEmpty()) {
                boolean ofProtein =
                    nutrients
                        .named(name)
                        .flatMap(Nutrient::partOf)
                        .filter(PROTEIN::equals)
                        .isPresent();
                boolean water = name.equals(Nutrients.MOISTURE);
                contents.put(name, times(content, water ? 1 : ofProtein ? protein : dry));
              }
            });
    return new ContentBlock(block.species(), block.source(), block.analyses(), contents);
  }

  private static Content times(Content content, double factor) {
    OptionalDouble spread =
        content.spread().isPresent()
            ? OptionalDouble.of(content.spread().getAsDouble() * factor)
            : OptionalDouble.empty();
    return new Content(
        content.low() * factor,
        content.high() * factor,
        spread,
        content.asWritten(),
        content.place(),
        content.source());
  }
}
