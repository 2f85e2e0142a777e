package dev.pellucid.engine.trend;

import dev.pellucid.engine.trend.Measured.What;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Batches that a test makes up. */
final class Made {
  static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final Span PLACE = new SourceFile("batches/x.yaml", "x").beginning();

  private Made() {}

  /** A batch a day, each found so many spreads off; a spread is one point. */
  static List<MeasuredBatch> inSpreads(double... spreads) {
    List<MeasuredBatch> batches = new ArrayList<>();
    for (int i = 0; i < spreads.length; i++) {
      batches.add(
          batch(
              i,
              1,
              measured(
                  0.34 + spreads[i] * 0.01, OptionalDouble.of(0.34), OptionalDouble.of(0.01))));
    }
    return batches;
  }

  /** A batch a day, of which nothing but the figure is known. */
  static List<MeasuredBatch> bare(double... found) {
    List<MeasuredBatch> batches = new ArrayList<>();
    for (int i = 0; i < found.length; i++) {
      batches.add(batch(i, 1, measured(found[i], OptionalDouble.empty(), OptionalDouble.empty())));
    }
    return batches;
  }

  static MeasuredBatch batch(int day, int serial, Measured... figures) {
    LocalDate on = FIRST.plusDays(day);
    return new MeasuredBatch(
        "A-1",
        "A-1-" + on + "-" + serial,
        on,
        serial,
        "released",
        false,
        List.of(figures),
        Optional.empty());
  }

  static Measured measured(double found, OptionalDouble expected, OptionalDouble spread) {
    return new Measured(
        What.CONTENT,
        "crude-protein",
        "crude protein",
        Unit.PERCENT,
        found,
        expected,
        spread,
        true,
        PLACE);
  }

  static Course course(List<MeasuredBatch> batches) {
    return History.of(batches).courses().get(0);
  }

  /** The courses of so many spreads, as runs. */
  static List<Run> runs(double... spreads) {
    return course(inSpreads(spreads)).runs();
  }
}
