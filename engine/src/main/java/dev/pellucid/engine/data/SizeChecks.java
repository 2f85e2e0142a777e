package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Species.Size;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import java.util.Optional;

/**
 * Whether the sizes of a species follow each other: heavier fish take thicker pellets and eat less
 * of their weight, and no fish falls between two rows.
 */
final class SizeChecks {
  static final Code CODE = new Code("data-sizes");

  private final Remarks remarks;

  SizeChecks(Remarks remarks) {
    this.remarks = remarks;
  }

  /** A row and where its pellet and its daily meal stand. */
  record Row(Size size, Scalar pellet, Optional<Scalar> meal) {}

  /**
   * @param row of heavier fish than those of the row before it
   */
  void look(Row before, Row row) {
    Size less = before.size();
    Size more = row.size();
    if (more.lightest() < less.lightest() || more.heaviest() < less.heaviest()) {
      add(row.size().asWritten(), row, "stands behind " + less.asWritten() + " of heavier fish");
    } else if (Closeness.isAbove(more.lightest(), less.heaviest())) {
      add(
          more.asWritten(),
          row,
          "leaves out the fish between it and the " + less.asWritten() + " before it");
    } else if (more.lightest() < less.heaviest() / 2) {
      add(more.asWritten(), row, "overlaps widely with the " + less.asWritten() + " before it");
    }
    if (more.thinnest() < less.thinnest() || more.thickest() < less.thickest()) {
      say(
          row.pellet(),
          "a pellet of "
              + row.pellet().text()
              + " for fish of "
              + more.asWritten()
              + " is thinner than the "
              + before.pellet().text()
              + " for smaller fish",
          before.pellet());
    }
    if (more.meal().isPresent()
        && less.meal().isPresent()
        && row.meal().isPresent()
        && before.meal().isPresent()
        && more.meal().getAsDouble() > less.meal().getAsDouble()) {
      boolean first = less.meal().getAsDouble() * 4 < more.meal().getAsDouble();
      Scalar at = first ? before.meal().get() : row.meal().get();
      say(
          at,
          "fish of "
              + more.asWritten()
              + " eat "
              + row.meal().get().text()
              + " of their weight a day, more than the "
              + before.meal().get().text()
              + " of smaller fish",
          first ? row.meal().get() : before.meal().get());
    }
  }

  private void add(String fish, Row row, String sentence) {
    remarks.add(
        Finding.warning(CODE, row.size().place(), "fish of " + fish + ": the row " + sentence)
            .helping("let each row begin where the one before it ends"));
  }

  private void say(Scalar at, String sentence, Scalar other) {
    remarks.add(
        Finding.warning(CODE, at.span(), sentence)
            .seeing("the other row", other.span())
            .helping("look for a slipped decimal point in one of the two"));
  }
}
