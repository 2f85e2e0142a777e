package dev.pellucid.engine.data;

import dev.pellucid.engine.data.MeantContent.Written;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a figure of plant and practice commonly is: common practice, drawn wide, no source. One
 * outside can be, but most often its decimal point has slipped.
 */
enum CommonSpan {
  SHRINK("a shrink", 0.2, 9, Unit.PERCENT),
  AIR("the air of a plant", 3, 45, Unit.CELSIUS),
  TRAY_LOAD("the load of a tray", 0.3, 15, Unit.KG),
  BULK_DENSITY("a bulk density", 0.15, 3, Unit.KG_PER_L),
  SPREAD("a spread between lots", 0.5, 60, Unit.PERCENT),
  DAILY_MEAL("a daily meal", 0.4, 40, Unit.PERCENT),
  /** The most of a scale over its division. */
  DIVISIONS("the most of a scale over its division", 150, 120_000, Unit.PERCENT),
  /** The high end of the fill of a mixer over the low one. */
  FILL("the most fill of a mixer over its least", 1, 8, Unit.PERCENT);

  static final Code CODE = new Code("data-off-practice");

  private final String what;
  private final double low;
  private final double high;
  private final Unit unit;

  CommonSpan(String what, double low, double high, Unit unit) {
    this.what = what;
    this.low = low;
    this.high = high;
    this.unit = unit;
  }

  private boolean holds(double base) {
    return base >= unit.toBase(low) && base <= unit.toBase(high);
  }

  /** Says so where a figure is outside. */
  void look(Optional<Scalar> written, OptionalDouble base, Remarks remarks) {
    if (written.isEmpty()
        || base.isEmpty()
        || base.getAsDouble() <= 0
        || holds(base.getAsDouble())) {
      return;
    }
    String text = written.get().text();
    Finding finding =
        Finding.warning(
            CODE,
            written.get().span(),
            KeyFindings.shown(text)
                + " is far from practice, "
                + what
                + " is commonly "
                + Figures.plain(low)
                + " to "
                + Figures.plain(high)
                + " "
                + unit.symbol());
    Optional<Written> read = Written.of(text);
    Optional<String> meant =
        read.isPresent() ? MeantContent.of(read.get(), unit, this::holds) : Optional.empty();
    remarks.add(
        finding.helping(
            meant.isPresent()
                ? Meant.question(meant.get())
                : "look for a slipped decimal point or a wrong unit"));
  }

  /** The same of a quotient of two figures, told at one of them. */
  void lookAtQuotient(Scalar written, double quotient, Remarks remarks) {
    if (quotient >= low && quotient <= high) {
      return;
    }
    remarks.add(
        Finding.warning(
                CODE,
                written.span(),
                KeyFindings.shown(written.text())
                    + " is far from practice, "
                    + what
                    + " is "
                    + Figures.plain(quotient)
                    + ", commonly "
                    + Figures.plain(low)
                    + " to "
                    + Figures.plain(high))
            .helping("look for a slipped decimal point or a wrong unit in both figures"));
  }
}
