package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Retention.Row;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Kind;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code practice/retention.yaml}: what each stability class keeps. */
final class RetentionReader {
  static final String FILE = "practice/retention.yaml";

  /** The steps in which something can be lost. */
  static final List<Step> STEPS = destroying();

  private final Sources sources;
  private final Remarks remarks;

  RetentionReader(Sources sources, Remarks remarks) {
    this.sources = sources;
    this.remarks = remarks;
  }

  private static List<Step> destroying() {
    List<Step> steps = new ArrayList<>();
    for (Step step : Step.values()) {
      if (step.destroys()) {
        steps.add(step);
      }
    }
    return List.copyOf(steps);
  }

  Map<String, Retention> read(Optional<DataFile> file) {
    Map<String, Retention> classes = new HashMap<>();
    Optional<Fields> fields = DataFile.fields(file, PracticeVocabulary.RETENTION_KEYS, remarks);
    if (fields.isPresent()) {
      for (Entry entry : fields.get().others()) {
        read(fields.get(), entry, classes);
      }
    }
    return classes;
  }

  private void read(Fields fields, Entry entry, Map<String, Retention> classes) {
    Scalar name = entry.key();
    if (!Vocabulary.isName(name.text()) || name.text().equals(Nutrient.STABLE)) {
      remarks.add(KeyFindings.name(name.span(), name.text(), "a stability class"));
      return;
    }
    Optional<Fields> block = fields.blockOf(entry, PracticeVocabulary.RETENTION_CLASS_KEYS);
    if (block.isPresent()) {
      classes.put(name.text(), retention(name, block.get()));
    }
  }

  private Retention retention(Scalar name, Fields block) {
    Map<Step, List<Row>> steps = new EnumMap<>(Step.class);
    for (Step step : STEPS) {
      List<Row> rows = rows(block, step);
      if (!rows.isEmpty()) {
        steps.put(step, rows);
      }
    }
    return new Retention(
        name.text(),
        block.word(PracticeVocabulary.UNPROTECTED, "yes").isPresent(),
        steps,
        rows(block, Step.STORE),
        sources.of(block),
        name.span());
  }

  private List<Row> rows(Fields block, Step step) {
    List<Row> rows = new ArrayList<>();
    Optional<Fields> inner = block.block(PracticeVocabulary.rows(step));
    if (inner.isPresent()) {
      for (Entry entry : inner.get().others()) {
        row(inner.get(), entry, rows);
      }
    }
    rows.sort(Comparator.comparingDouble(Row::temperature));
    return rows;
  }

  private void row(Fields inner, Entry entry, List<Row> rows) {
    FigureReader figures = new FigureReader(remarks);
    OptionalDouble temperature = figures.base(entry.key(), Kind.TEMPERATURE);
    OptionalDouble keeps = figures.share(inner.textOf(entry));
    if (temperature.isPresent() && keeps.isPresent()) {
      rows.add(new Row(temperature.getAsDouble(), keeps.getAsDouble()));
    }
  }
}
