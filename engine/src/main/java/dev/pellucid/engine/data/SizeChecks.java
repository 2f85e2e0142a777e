package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Species.Size;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the sizes of a species follow each other: heavier fish take thicker pellets and eat less
 * of their weight, and no fish falls between two rows.
 */
final class SizeChecks {
  static final Code CODE = new Code("data-sizes");

  private final List<Row> rows;
  private final Remarks remarks;
  private final SizeSlips slips;

  /**
   * @param rows one after the other, as they are written
   */
  SizeChecks(List<Row> rows, Remarks remarks) {
    this.rows = List.copyOf(rows);
    this.remarks = remarks;
    this.slips = new SizeSlips(this.rows, remarks);
  }

  /**
   * A row and where its figures stand.
   *
   * @param meal empty where it is told already that it can hardly be so
   */
  record Row(Size size, Scalar fish, Scalar pellet, Optional<Scalar> meal) {
    OptionalDouble eaten() {
      return meal.isPresent() ? size.meal() : OptionalDouble.empty();
    }
  }

  void look() {
    slips.look();
    for (int i = 1; i < rows.size(); i++) {
      if (!slips.fish(i - 1) && !slips.fish(i)) {
        lookAtFish(rows.get(i - 1), rows.get(i));
      }
      if (!slips.pellet(i - 1) && !slips.pellet(i)) {
        lookAtPellets(rows.get(i - 1), rows.get(i));
      }
      if (!slips.meals()) {
        lookAtMeals(rows.get(i - 1), rows.get(i));
      }
    }
  }

  private void lookAtFish(Row before, Row row) {
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
  }

  private void lookAtPellets(Row before, Row row) {
    Size less = before.size();
    Size more = row.size();
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
  }

  private void lookAtMeals(Row before, Row row) {
    if (before.meal().isPresent()
        && row.meal().isPresent()
        && row.eaten().orElse(0) > before.eaten().orElse(Double.MAX_VALUE)) {
      say(
          row.meal().get(),
          "fish of "
              + row.size().asWritten()
              + " eat "
              + row.meal().get().text()
              + " of their weight a day, more than the "
              + before.meal().get().text()
              + " of smaller fish",
          before.meal().get());
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
