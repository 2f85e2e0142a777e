package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Retention.Row;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
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

  static final Code ORDER = new Code("data-retention-order");

  private static final int LEAST = 5;

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
    boolean slipped = false;
    if (inner.isPresent()) {
      Common usual = RetentionSpans.of(step);
      for (Entry entry : inner.get().others()) {
        slipped |= row(inner.get(), entry, rows, usual);
      }
    }
    rows.sort(Comparator.comparingDouble(Row::temperature));
    if (inner.isPresent() && !slipped) {
      inOrder(rows, inner.get());
    }
    return rows;
  }

  /**
   * Heat spares nothing: a hotter row does not keep more, nor less than a fifth of a cooler one.
   */
  private void inOrder(List<Row> rows, Fields inner) {
    for (int i = 1; i < rows.size(); i++) {
      Row cooler = rows.get(i - 1);
      Row hotter = rows.get(i);
      boolean slipped = i > 1 && cooler.keeps() * LEAST < rows.get(i - 2).keeps();
      if (hotter.keeps() > cooler.keeps() && !slipped) {
        say(cooler, hotter, inner, cooler);
      } else if (hotter.keeps() * LEAST < cooler.keeps()) {
        say(cooler, hotter, inner, hotter);
      }
    }
  }

  private void say(Row cooler, Row hotter, Fields inner, Row at) {
    Optional<Scalar> written = written(inner, at);
    if (written.isPresent()) {
      remarks.add(
          Finding.warning(
                  ORDER,
                  written.get().span(),
                  "at "
                      + Figures.plain(hotter.temperature())
                      + " °C "
                      + Figures.plain(hotter.keeps() * 100)
                      + " % is kept, and at "
                      + Figures.plain(cooler.temperature())
                      + " °C "
                      + Figures.plain(cooler.keeps() * 100)
                      + " %")
              .helping("look for a slipped decimal point, or for two rows that were swapped"));
    }
  }

  private static Optional<Scalar> written(Fields inner, Row row) {
    FigureReader figures = new FigureReader(new Remarks());
    Fields quiet = inner.into(new Remarks());
    for (Entry entry : inner.others()) {
      OptionalDouble temperature = figures.base(entry.key(), Kind.TEMPERATURE);
      if (temperature.isPresent() && temperature.getAsDouble() == row.temperature()) {
        return quiet.textOf(entry);
      }
    }
    return Optional.empty();
  }

  /** Whether its temperature is none of such a step. */
  private boolean row(Fields inner, Entry entry, List<Row> rows, Common usual) {
    FigureReader figures = new FigureReader(remarks);
    OptionalDouble temperature = figures.base(entry.key(), Kind.TEMPERATURE);
    OptionalDouble keeps = figures.share(inner.textOf(entry));
    if (temperature.isPresent() && keeps.isPresent()) {
      rows.add(new Row(temperature.getAsDouble(), keeps.getAsDouble()));
    }
    boolean slipped = temperature.isPresent() && !usual.holds(temperature.getAsDouble());
    if (slipped) {
      remarks.add(usual.outside(entry.key()));
    }
    return slipped;
  }
}
