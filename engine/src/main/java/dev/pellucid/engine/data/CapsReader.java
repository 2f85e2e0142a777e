package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Cap;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code caps} of an ingredient: the most that species take, or that there is no most. */
final class CapsReader {
  private final Names names;
  private final Remarks remarks;

  CapsReader(Names names, Remarks remarks) {
    this.names = names;
    this.remarks = remarks;
  }

  List<Cap> read(Fields ingredient) {
    List<Cap> caps = new ArrayList<>();
    for (Fields block : ingredient.blocks(IngredientVocabulary.CAPS)) {
      Optional<Cap> cap = cap(block);
      if (cap.isPresent()) {
        against(caps, cap.get());
        caps.add(cap.get());
      }
    }
    return caps;
  }

  private Optional<Cap> cap(Fields block) {
    Optional<Scalar> species = block.text(IngredientVocabulary.CAP_SPECIES);
    if (species.isPresent()) {
      names.species().check(species.get(), remarks);
    }
    Optional<Scalar> max = block.text(IngredientVocabulary.CAP_MAX);
    boolean none = max.isPresent() && max.get().text().equals(Vocabulary.NONE);
    OptionalDouble most = none ? OptionalDouble.empty() : new FigureReader(remarks).share(max);
    String because = block.textOr(IngredientVocabulary.CAP_BECAUSE, "");
    boolean onPurpose = block.word(IngredientVocabulary.CAP_ON_PURPOSE, "yes").isPresent();
    Source source = names.sources().of(block);
    if (species.isEmpty() || max.isEmpty() || (most.isEmpty() && !none)) {
      return Optional.empty();
    }
    return Optional.of(
        new Cap(
            species.get().text(),
            most,
            max.get().text(),
            because,
            onPurpose,
            source,
            max.get().span()));
  }

  /** A cap and the word that there is none cannot both be so. */
  private void against(List<Cap> earlier, Cap cap) {
    for (Cap other : earlier) {
      if (other.species().equals(cap.species())
          && other.most().isPresent() != cap.most().isPresent()) {
        remarks.add(ReferenceFindings.capAndNone(cap, other));
        return;
      }
    }
  }
}
