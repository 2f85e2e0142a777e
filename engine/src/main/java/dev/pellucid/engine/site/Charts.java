package dev.pellucid.engine.site;

import static j2html.TagCreator.tag;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.site.FeedView.Flow;
import dev.pellucid.engine.site.FeedView.FlowKind;
import dev.pellucid.syntax.Bound;
import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Pictures of figures as SVG in the page. What a picture shows stands beside it in words too; it
 * tells by place, length and shape, never by colour.
 */
final class Charts {
  private static final int WIDE = 120;
  private static final int LONG = 480;
  private static final int HIGH = 18;
  private static final double ROOM = 1.2;

  private Charts() {}

  /**
   * A figure against its bound: the bar ends at the figure, the thick line is the bound, and the
   * flag on it points to the side that is allowed. The bar of a broken limit is hollow.
   */
  static DomContent bullet(String what, Held held) {
    double most = Math.max(held.shown(), held.bound()) * ROOM;
    if (!(most > 0) || Double.isInfinite(most)) {
      return svg(what + ", no picture");
    }
    double end = held.shown() / most * WIDE;
    double bound = held.bound() / most * WIDE;
    boolean min = held.demand().side() == Bound.Side.MIN;
    double flag = min ? bound + 6 : bound - 6;
    return svg(
        what + (held.keeps() ? ", kept" : ", not kept"),
        rect(0.5, 3.5, WIDE - 1, 11, "none", "#999"),
        rect(0.5, 6, Math.max(0, end - 0.5), 6, held.keeps() ? "#aaa" : "#fff", "#000"),
        line(bound, 0, bound, HIGH, 2.5),
        shape("polygon")
            .attr("points", at(bound, 0) + " " + at(flag, 3) + " " + at(bound, 6))
            .attr("fill", "#000"));
  }

  /** A part of the largest of its kind; what is below zero is hollow. */
  static DomContent bar(String what, double part) {
    return svg(
        what,
        rect(
            0.5,
            3.5,
            Math.max(0, Math.abs(part) * (WIDE - 1)),
            11,
            part < 0 ? "#fff" : "#555",
            "#000"));
  }

  /**
   * One step of the mass: the whole as a bar with its water hollow at the end; what comes or goes
   * where it does.
   *
   * @param most kg of the longest bar
   */
  static DomContent step(Flow step, double most) {
    double scale = (WIDE - 1) / most;
    double kg = step.kg() * scale;
    if (step.kind() == FlowKind.WHOLE) {
      double dry = (step.kg() - step.water()) * scale;
      return svg(
          step.words() + ", the hollow end is water",
          rect(0.5, 3.5, kg, 11, "#fff", "#000"),
          rect(0.5, 3.5, dry, 11, "#555", "#000"));
    }
    return svg(
        step.words(),
        rect(step.from() * scale + 0.5, 3.5, kg, 11, "#fff", "#000")
            .attr("stroke-dasharray", "3 2"));
  }

  /** A course over states, the oldest left. */
  static DomContent course(String what, List<Double> oldestFirst) {
    double least = oldestFirst.stream().mapToDouble(value -> value).min().orElse(0);
    double most = oldestFirst.stream().mapToDouble(value -> value).max().orElse(0);
    double span = most > least ? most - least : 1;
    StringBuilder points = new StringBuilder();
    ContainerTag<?> picture = picture(what, LONG, 60);
    for (int i = 0; i < oldestFirst.size(); i++) {
      double x = 6 + i * (LONG - 12.0) / Math.max(1, oldestFirst.size() - 1);
      double y = 52 - (oldestFirst.get(i) - least) / span * 44;
      points.append(at(x, y)).append(' ');
      picture.with(
          shape("circle").attr("cx", at(x)).attr("cy", at(y)).attr("r", "3").attr("fill", "#000"));
    }
    return picture.with(
        shape("polyline")
            .attr("points", points.toString().strip())
            .attr("fill", "none")
            .attr("stroke", "#000")
            .attr("stroke-width", "1.5"));
  }

  private static DomContent svg(String what, DomContent... shapes) {
    return picture(what, WIDE, HIGH).with(shapes);
  }

  private static ContainerTag<?> picture(String what, int wide, int high) {
    return tag("svg")
        .attr("width", wide)
        .attr("height", high)
        .attr("viewBox", "0 0 " + wide + " " + high)
        .attr("role", "img")
        .with(tag("title").withText(what));
  }

  private static ContainerTag<?> rect(
      double x, double y, double wide, double high, String fill, String stroke) {
    return shape("rect")
        .attr("x", at(x))
        .attr("y", at(y))
        .attr("width", at(wide))
        .attr("height", at(high))
        .attr("fill", fill)
        .attr("stroke", stroke);
  }

  private static ContainerTag<?> line(double x, double y, double toX, double toY, double wide) {
    return shape("line")
        .attr("x1", at(x))
        .attr("y1", at(y))
        .attr("x2", at(toX))
        .attr("y2", at(toY))
        .attr("stroke", "#000")
        .attr("stroke-width", at(wide));
  }

  private static ContainerTag<?> shape(String name) {
    return tag(name);
  }

  private static String at(double x, double y) {
    return at(x) + "," + at(y);
  }

  private static String at(double place) {
    return BigDecimal.valueOf(place)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
