package dev.pellucid.engine.data;

import dev.pellucid.engine.data.MeantContent.Written;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import java.util.Optional;

/**
 * Where figures of one sort commonly lie, drawn wide. One outside can be, but most often its
 * decimal point has slipped.
 *
 * @param what "a shrink"
 * @param unit in which the ends are told
 */
record Common(String what, double low, double high, Unit unit) {
  static final Code CODE = new Code("data-off-practice");

  boolean holds(double base) {
    return base >= unit.toBase(low) && base <= unit.toBase(high);
  }

  Finding outside(Scalar written) {
    Finding finding =
        Finding.warning(
            CODE,
            written.span(),
            KeyFindings.shown(written.text())
                + " is far from practice, "
                + what
                + " is commonly "
                + Figures.plain(low)
                + " to "
                + Figures.plain(high)
                + " "
                + unit.symbol());
    return finding.helping(help(written));
  }

  /** The question after the figure with its point elsewhere, where that one fits. */
  String help(Scalar written) {
    Optional<Written> read = Written.of(written.text());
    Optional<String> meant =
        read.isPresent() ? MeantContent.of(read.get(), unit, this::holds) : Optional.empty();
    return meant.isPresent()
        ? Meant.question(meant.get())
        : "look for a slipped decimal point or a wrong unit";
  }
}
