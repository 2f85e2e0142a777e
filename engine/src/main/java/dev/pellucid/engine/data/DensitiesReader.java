package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.measure.Extent;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code practice/densities.yaml}: mass per volume as a stuff lies in a mixer, by its form. */
final class DensitiesReader {
  static final String FILE = "practice/densities.yaml";

  private final Sources sources;
  private final Remarks remarks;

  DensitiesReader(Sources sources, Remarks remarks) {
    this.sources = sources;
    this.remarks = remarks;
  }

  Densities read(Optional<DataFile> file) {
    return file.flatMap(it -> it.fields(PracticeVocabulary.DENSITIES_KEYS, remarks))
        .map(this::densities)
        .orElse(Densities.NONE);
  }

  private Densities densities(Fields fields) {
    sources.of(fields);
    FigureReader figures = new FigureReader(remarks);
    Map<Form, Double> byForm = new EnumMap<>(Form.class);
    for (Form form : Form.values()) {
      fields
          .text(PracticeVocabulary.density(form))
          .map(value -> figures.positive(value, Extent.DENSITY))
          .filter(OptionalDouble::isPresent)
          .ifPresent(density -> byForm.put(form, density.getAsDouble()));
    }
    OptionalDouble wet =
        fields
            .text(PracticeVocabulary.WET_MASH)
            .map(value -> figures.positive(value, Extent.DENSITY))
            .orElse(OptionalDouble.empty());
    return new Densities(byForm, wet);
  }
}
