package dev.pellucid.engine.larder;

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
import java.util.OptionalDouble;

/** {@code practice/retention.yaml}. */
final class RetentionReader {
  static final List<Step> STEPS = List.of(Step.CONDITION, Step.PELLET, Step.EXTRUDE, Step.DRY);

  private final Shelf shelf;

  RetentionReader(Shelf shelf) {
    this.shelf = shelf;
  }

  Map<String, Retention> read(Fields file) {
    Map<String, Retention> classes = new HashMap<>();
    for (Entry entry : file.others()) {
      file.blockOf(entry, Vocabulary.RETENTION_CLASS)
          .flatMap(
              block -> shelf.source(block).map(source -> retention(entry.key(), block, source)))
          .ifPresent(retention -> classes.put(retention.stability(), retention));
    }
    return classes;
  }

  private Retention retention(Scalar name, Fields block, Source source) {
    Map<Step, List<Retention.Row>> bySteps = new EnumMap<>(Step.class);
    for (Step step : STEPS) {
      bySteps.put(step, rows(block, step));
    }
    return new Retention(
        name.text(),
        block.has("unprotected"),
        bySteps,
        rows(block, Step.STORE),
        source,
        name.span());
  }

  private List<Retention.Row> rows(Fields block, Step step) {
    if (!block.has(step.word())) {
      return List.of();
    }
    List<Retention.Row> rows = new ArrayList<>();
    block.block(step.word(), Vocabulary.ROWS).ifPresent(one -> rows(one, rows));
    rows.sort(Comparator.comparingDouble(Retention.Row::temperature));
    return rows;
  }

  private void rows(Fields block, List<Retention.Row> rows) {
    for (Entry entry : block.others()) {
      OptionalDouble temperature = shelf.figures().base(entry.key(), Kind.TEMPERATURE);
      OptionalDouble keeps =
          block.textOf(entry).map(shelf.figures()::share).orElse(OptionalDouble.empty());
      if (temperature.isPresent() && keeps.isPresent()) {
        rows.add(new Retention.Row(temperature.getAsDouble(), keeps.getAsDouble()));
      }
    }
  }
}
