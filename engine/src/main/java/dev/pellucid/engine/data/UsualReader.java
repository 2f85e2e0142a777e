package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FigureReader.Ends;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code usual} of a nutrient: what ingredients usually hold of it, a row for some groups. */
final class UsualReader {
  private final Sources sources;
  private final Known groups;
  private final Known nutrients;
  private final Map<String, Kind> kinds;
  private final Remarks remarks;

  /**
   * @param kinds of all nutrients
   */
  UsualReader(
      Sources sources, Known groups, Known nutrients, Map<String, Kind> kinds, Remarks remarks) {
    this.sources = sources;
    this.groups = groups;
    this.nutrients = nutrients;
    this.kinds = kinds;
    this.remarks = remarks;
  }

  /** The rows of one nutrient, in their order. */
  List<Usual> read(Fields nutrient, Kind kind) {
    List<Usual> rows = new ArrayList<>();
    for (Fields block : nutrient.blocks(NutrientVocabulary.USUAL)) {
      Optional<Usual> row = row(block, kind);
      if (row.isPresent()) {
        rows.add(row.get());
      }
    }
    return rows;
  }

  private Optional<Usual> row(Fields block, Kind kind) {
    Source source = sources.of(block);
    Set<String> in = new LinkedHashSet<>();
    for (Scalar group : block.texts(NutrientVocabulary.USUAL_IN)) {
      groups.check(group, remarks);
      in.add(group.text());
    }
    Optional<Scalar> of = block.text(NutrientVocabulary.USUAL_OF);
    if (of.isPresent() && !isMass(of.get(), kind)) {
      return Optional.empty();
    }
    Optional<Scalar> holds = block.text(NutrientVocabulary.USUAL_HOLDS);
    Optional<Ends> ends = new FigureReader(remarks).range(holds, kind);
    if (holds.isEmpty() || ends.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Usual(
            in,
            block.word(NutrientVocabulary.USUAL_AS_ADDITIVE, "yes").isPresent(),
            of.isPresent() ? Optional.of(of.get().text()) : Optional.empty(),
            ends.get().low(),
            ends.get().high(),
            holds.get().text(),
            source,
            holds.get().span()));
  }

  /** Whether one can be told as a part of the other. */
  private boolean isMass(Scalar of, Kind kind) {
    boolean known = nutrients.check(of, remarks) && kinds.containsKey(of.text());
    if (known && (kind != Kind.SHARE || kinds.get(of.text()) != Kind.SHARE)) {
      remarks.add(NutrientFindings.wholeKind(of, "a part is given as its whole is"));
      return false;
    }
    return known;
  }
}
