package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.yaml.Yaml.Scalar;
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
    Optional<Fields> fields = DataFile.fields(file, PracticeVocabulary.DENSITIES_KEYS, remarks);
    return fields.isPresent() ? densities(fields.get()) : Densities.NONE;
  }

  private Densities densities(Fields fields) {
    sources.of(fields);
    FigureReader figures = new FigureReader(remarks);
    Map<Form, Double> byForm = new EnumMap<>(Form.class);
    for (Form form : Form.values()) {
      Optional<Scalar> written = fields.text(PracticeVocabulary.density(form));
      OptionalDouble density = figures.positive(written, Extent.DENSITY);
      CommonSpan.BULK_DENSITY.look(written, density, remarks);
      if (density.isPresent()) {
        byForm.put(form, density.getAsDouble());
      }
    }
    OptionalDouble wet = figures.positive(fields.text(PracticeVocabulary.WET_MASH), Extent.DENSITY);
    CommonSpan.BULK_DENSITY.look(fields.text(PracticeVocabulary.WET_MASH), wet, remarks);
    return new Densities(byForm, wet);
  }
}
