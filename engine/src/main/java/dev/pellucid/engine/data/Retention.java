package dev.pellucid.engine.data;

import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a stability class keeps in each step and in storage.
 *
 * <p>Rows rise in temperature. Between two rows the part kept is read on the straight line between
 * them; below the coolest row that row counts, since a gentler step cannot lose more; above the
 * hottest row nothing is known.
 *
 * @param unprotected whether it is a form that should not go into a heated feed
 * @param bySteps for each step, what is left after it
 * @param storage what is left after a month, by storage temperature
 */
public record Retention(
    String stability,
    boolean unprotected,
    Map<Step, List<Row>> bySteps,
    List<Row> storage,
    Source source,
    Span declared) {
  public Retention {
    bySteps = Map.copyOf(bySteps);
    storage = List.copyOf(storage);
  }

  /** At {@code temperature} °C the part {@code keeps} of one is left. */
  public record Row(double temperature, double keeps) {}

  /** The part kept in a step; empty where the class tells nothing for it or the step is hotter. */
  public OptionalDouble through(Step step, double temperature) {
    return read(bySteps.getOrDefault(step, List.of()), temperature);
  }

  /** The hottest row of a step, in °C; beyond it nothing is told. */
  public OptionalDouble hottest(Step step) {
    List<Row> rows = bySteps.getOrDefault(step, List.of());
    return rows.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(rows.get(rows.size() - 1).temperature());
  }

  /** The least and the most that is kept at any temperature of a band. */
  public record Range(double least, double most) {}

  /**
   * The same where the temperature may lie anywhere from {@code coolest} to {@code hottest} °C. The
   * line that is read bends at the rows alone, so that its ends and the rows between them tell all.
   */
  public Optional<Range> through(Step step, double coolest, double hottest) {
    OptionalDouble cool = through(step, coolest);
    OptionalDouble hot = through(step, hottest);
    if (cool.isEmpty() || hot.isEmpty()) {
      return Optional.empty();
    }
    double least = Math.min(cool.getAsDouble(), hot.getAsDouble());
    double most = Math.max(cool.getAsDouble(), hot.getAsDouble());
    for (Row row : bySteps.getOrDefault(step, List.of())) {
      if (row.temperature() > coolest && row.temperature() < hottest) {
        least = Math.min(least, row.keeps());
        most = Math.max(most, row.keeps());
      }
    }
    return Optional.of(new Range(least, most));
  }

  /** The part kept in a month of storage. */
  public OptionalDouble perMonth(double temperature) {
    return read(storage, temperature);
  }

  private static OptionalDouble read(List<Row> rows, double temperature) {
    if (rows.isEmpty() || temperature > rows.get(rows.size() - 1).temperature()) {
      return OptionalDouble.empty();
    }
    Row before = rows.get(0);
    for (Row row : rows) {
      if (temperature <= row.temperature()) {
        return OptionalDouble.of(between(before, row, temperature));
      }
      before = row;
    }
    return OptionalDouble.empty();
  }

  private static double between(Row low, Row high, double temperature) {
    double width = high.temperature() - low.temperature();
    if (width == 0 || temperature <= low.temperature()) {
      return low.keeps();
    }
    double part = (temperature - low.temperature()) / width;
    return low.keeps() + part * (high.keeps() - low.keeps());
  }
}
