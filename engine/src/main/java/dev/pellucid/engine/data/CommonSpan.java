package dev.pellucid.engine.data;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a figure of plant and practice commonly is: common practice, drawn wide, no source. */
enum CommonSpan {
  SHRINK("a shrink", 0.3, 9, Unit.PERCENT),
  AIR("the air of a plant", 3, 45, Unit.CELSIUS),
  TRAY_LOAD("the load of a tray", 0.3, 15, Unit.KG),
  BULK_DENSITY("a bulk density", 0.15, 3, Unit.KG_PER_L),
  LAW_KEPT_IN("the part of batches that is to keep the law", 80, 99.99, Unit.PERCENT),
  SPREAD("a standard deviation between lots", 2, 45, Unit.PERCENT),
  DAILY_MEAL("a daily meal", 0.4, 40, Unit.PERCENT),
  FLUSH("a flush", 0.3, 200, Unit.KG),
  PACK("a pack", 0.1, 30_000, Unit.KG),
  LEAD_TIME("a lead time", 1, 200, Unit.DAY),
  /** Whether a mix is too uneven the bound of practice tells. */
  EVENNESS("the variation of a mix", 1, 15, Unit.PERCENT),
  /** The most of a scale over its division. */
  DIVISIONS("the most of a scale over its division", 300, 120_000, Unit.PERCENT),
  /** What is told as the least of a scale over its division. */
  LEAST_DIVISIONS("the least of a scale over its division", 8, 180, Unit.PERCENT),
  /** The most of a scale over what is told as its least. */
  MOST_OF_LEAST("the most of a scale over its least", 20, 20_000, Unit.PERCENT),
  /** The high end of the fill of a mixer over the low one. */
  FILL("the most fill of a mixer over its least", 1, 8, Unit.PERCENT),
  /** The high end of the time of a mixer over the low one. */
  MIXING_TIME("the longest time of a mixer over its shortest", 1, 9, Unit.PERCENT);

  static final Code CODE = Common.CODE;

  private final Common common;

  CommonSpan(String what, double low, double high, Unit unit) {
    this.common = new Common(what, low, high, unit);
  }

  /** Says so where a figure is outside; whether it does. */
  boolean look(Optional<Scalar> written, OptionalDouble base, Remarks remarks) {
    if (written.isEmpty()
        || base.isEmpty()
        || base.getAsDouble() <= 0
        || common.holds(base.getAsDouble())) {
      return false;
    }
    remarks.add(common.outside(written.get()));
    return true;
  }

  /** The same of what is too small alone. */
  void lookForTooLittle(Optional<Scalar> written, OptionalDouble base, Remarks remarks) {
    if (base.isPresent() && base.getAsDouble() < common.unit().toBase(common.low())) {
      look(written, base, remarks);
    }
  }

  /** The same of a quotient of two figures, told at one of them. */
  boolean lookAtQuotient(Scalar written, double quotient, Remarks remarks) {
    if (quotient >= common.low() && quotient <= common.high()) {
      return false;
    }
    remarks.add(
        Finding.warning(
                CODE,
                written.span(),
                KeyFindings.shown(written.text())
                    + " is far from practice, "
                    + common.what()
                    + " is "
                    + Figures.plain(quotient)
                    + ", commonly "
                    + Figures.plain(common.low())
                    + " to "
                    + Figures.plain(common.high()))
            .helping("look for a slipped decimal point or a wrong unit in both figures"));
    return true;
  }
}
