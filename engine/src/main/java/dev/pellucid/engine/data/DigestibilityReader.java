package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Digestibility.ProcessKind;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code digestibility} of an ingredient: coefficients by species and kind of process. */
final class DigestibilityReader {
  /** Raw starch in a carnivore is digested to about a third; common practice, no source. */
  private static final double LEAST = 0.3;

  private final Nutrients nutrients;
  private final Names names;
  private final Remarks remarks;
  private final Map<String, Span> told = new HashMap<>();

  DigestibilityReader(Nutrients nutrients, Names names, Remarks remarks) {
    this.nutrients = nutrients;
    this.names = names;
    this.remarks = remarks;
  }

  List<Digestibility> read(Fields ingredient) {
    List<Digestibility> blocks = new ArrayList<>();
    for (Fields block : ingredient.blocks(IngredientVocabulary.DIGESTIBILITY)) {
      blocks.add(block(block));
    }
    return blocks;
  }

  private Digestibility block(Fields block) {
    Source source = names.sources().of(block);
    Optional<Scalar> species = block.text(Vocabulary.FOR_SPECIES);
    if (species.isPresent()) {
      names.species().check(species.get(), remarks);
    }
    Optional<ProcessKind> process =
        block.oneOf(IngredientVocabulary.DIGESTIBILITY_PROCESS, "a kind of process");
    String whom = whom(species, process);
    Map<String, Double> coefficients = new HashMap<>();
    for (Entry entry : block.others()) {
      OptionalDouble share = coefficient(block, entry, whom);
      if (share.isPresent()) {
        coefficients.put(entry.key().text(), share.getAsDouble());
      }
    }
    return new Digestibility(
        species.isPresent() ? Optional.of(species.get().text()) : Optional.empty(),
        process,
        source,
        coefficients);
  }

  private static String whom(Optional<Scalar> species, Optional<ProcessKind> process) {
    String fish = species.isPresent() ? "for " + species.get().text() + " " : "";
    String how = process.isPresent() ? "when " + process.get().word() : "";
    return (fish + how).strip();
  }

  private OptionalDouble coefficient(Fields block, Entry entry, String whom) {
    Scalar name = entry.key();
    if (!names.nutrients().check(name, block.keys(), remarks)
        || nutrients.named(name.text()).isEmpty()) {
      return OptionalDouble.empty();
    }
    Span earlier = told.putIfAbsent(whom + "/" + name.text(), name.span());
    if (earlier != null) {
      String where = whom.isEmpty() ? "in this digestibility" : whom;
      remarks.add(ReferenceFindings.nutrientTwice(name, where, earlier));
    }
    Optional<Scalar> value = block.textOf(entry);
    OptionalDouble share = new FigureReader(remarks).share(value);
    if (!isRead(name.text())) {
      remarks.add(UnusualFindings.unreadCoefficient(name));
    } else if (value.isPresent() && share.isPresent() && isLow(share.getAsDouble())) {
      remarks.add(UnusualFindings.hardlyDigested(name.text(), value.get(), share.getAsDouble()));
    }
    return share;
  }

  /** Of what a feed is judged by as digestible, no feed material is digested so little. */
  private static boolean isLow(double share) {
    return share > 0 && share < LEAST;
  }

  /** Whether any nutrient of the folder follows by a coefficient of this one. */
  private boolean isRead(String name) {
    for (Nutrient nutrient : nutrients.inOrder()) {
      if (nutrient.digestibleOf().orElse("").equals(name)
          || nutrient.standsIn().orElse("").equals(name)) {
        return true;
      }
    }
    return false;
  }
}
