package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code contents} of an ingredient: blocks of figures, as fed, each block with its source. */
final class ContentsReader {
  private final Nutrients nutrients;
  private final Names names;
  private final Remarks remarks;
  private boolean ofIngredient;
  private final Map<String, Span> told = new HashMap<>();

  ContentsReader(Nutrients nutrients, Names names, Remarks remarks) {
    this.nutrients = nutrients;
    this.names = names;
    this.remarks = remarks;
  }

  /**
   * Blocks for a species before the general ones, else in their order.
   *
   * @param key under which they stand
   */
  List<ContentBlock> read(Fields fields, Key<ListOf<Block>> key) {
    // Of a lot only what was measured is told.
    ofIngredient = key.equals(IngredientVocabulary.CONTENTS);
    List<ContentBlock> blocks = new ArrayList<>();
    for (Fields block : fields.blocks(key)) {
      blocks.add(block(block));
    }
    List<ContentBlock> inOrder = new ArrayList<>();
    for (ContentBlock block : blocks) {
      if (block.species().isPresent()) {
        inOrder.add(block);
      }
    }
    for (ContentBlock block : blocks) {
      if (block.species().isEmpty()) {
        inOrder.add(block);
      }
    }
    return inOrder;
  }

  private ContentBlock block(Fields block) {
    Source source = names.sources().of(block);
    Optional<Scalar> species = block.text(Vocabulary.FOR_SPECIES);
    if (species.isPresent()) {
      names.species().check(species.get(), remarks);
    }
    Map<String, Content> contents = new LinkedHashMap<>();
    Set<String> notKnown = new LinkedHashSet<>();
    boolean spread = false;
    for (Entry entry : block.others()) {
      Optional<Content> content = content(block, entry, species, source, notKnown);
      if (content.isPresent()) {
        contents.put(entry.key().text(), content.get());
        spread |= content.get().spread().isPresent();
      }
    }
    return new ContentBlock(
        species.isPresent() ? Optional.of(species.get().text()) : Optional.empty(),
        source,
        new FigureReader(remarks).analyses(block, spread),
        contents,
        notKnown);
  }

  private Optional<Content> content(
      Fields block, Entry entry, Optional<Scalar> species, Source source, Set<String> notKnown) {
    Scalar name = entry.key();
    if (!names.nutrients().check(name, block.keys(), remarks)) {
      return Optional.empty();
    }
    Optional<Scalar> value = block.textOf(entry);
    Optional<Nutrient> nutrient = nutrients.named(name.text());
    if (value.isEmpty() || nutrient.isEmpty() || isTold(name, species)) {
      return Optional.empty();
    }
    if (value.get().text().equals(Vocabulary.NOT_KNOWN) && ofIngredient) {
      notKnown.add(name.text());
      return Optional.empty();
    }
    return new FigureReader(remarks).content(value.get(), nutrient.get().unit().kind(), source);
  }

  private boolean isTold(Scalar name, Optional<Scalar> species) {
    String whom = species.isPresent() ? "for " + species.get().text() : "";
    Span earlier = told.putIfAbsent(whom + " " + name.text(), name.span());
    if (earlier != null) {
      String block = whom.isEmpty() ? "in this ingredient" : whom;
      remarks.add(ReferenceFindings.nutrientTwice(name, block, earlier));
    }
    return earlier != null;
  }
}
