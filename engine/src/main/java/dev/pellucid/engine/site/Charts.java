package dev.pellucid.engine.site;

import static j2html.TagCreator.tag;
import static j2html.TagCreator.text;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.site.FeedView.Flow;
import dev.pellucid.engine.site.FeedView.FlowKind;
import dev.pellucid.syntax.Bound;
import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
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
  static DomContent bullet(Held held) {
    double most = Math.max(held.shown(), held.bound()) * ROOM;
    if (!(most > 0) || Double.isInfinite(most)) {
      return text("no picture");
    }
    double end = held.shown() / most * WIDE;
    double bound = held.bound() / most * WIDE;
    boolean min = held.demand().side() == Bound.Side.MIN;
    return svg(
        box(0.5, 6, Math.max(0, end - 0.5), 6, held.keeps() ? "#aaa" : "#fff"),
        path("M" + at(bound) + (min ? " 0v18m0-18 6 3-6 3z" : " 0v18m0-18-6 3 6 3z"))
            .attr("stroke", "#000")
            .attr("stroke-width", 2));
  }

  /** A part of the largest of its kind; what is below zero is hollow. */
  static DomContent bar(double part) {
    return svg(box(0.5, 3.5, Math.abs(part) * (WIDE - 1), 11, part < 0 ? "#fff" : "#555"));
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
      return svg(box(0.5, 3.5, kg, 11, "#fff"), box(0.5, 3.5, dry, 11, "#555"));
    }
    return svg(box(step.from() * scale + 0.5, 3.5, kg, 11, "#fff").attr("stroke-dasharray", "3 2"));
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

  /** A picture in a row whose words tell the same, so that nobody need be read it. */
  private static DomContent svg(DomContent... shapes) {
    return tag("svg")
        .attr("width", WIDE)
        .attr("height", HIGH)
        .attr("aria-hidden", "true")
        .with(shapes);
  }

  private static ContainerTag<?> picture(String what, int wide, int high) {
    return tag("svg")
        .attr("width", wide)
        .attr("height", high)
        .attr("viewBox", "0 0 " + wide + " " + high)
        .attr("role", "img")
        .with(tag("title").withText(what));
  }

  private static ContainerTag<?> box(double x, double y, double wide, int high, String fill) {
    String way = "M" + at(x) + " " + at(y) + "h" + at(wide) + "v" + high + "H" + at(x) + "z";
    return path(way).attr("fill", fill).attr("stroke", "#000");
  }

  private static ContainerTag<?> path(String way) {
    return shape("path").attr("d", way);
  }

  private static ContainerTag<?> shape(String name) {
    return tag(name);
  }

  private static String at(double x, double y) {
    return at(x) + "," + at(y);
  }

  /** To a tenth. */
  private static String at(double place) {
    long tenths = Math.round(place * 10);
    String whole = tenths / 10 == 0 && tenths < 0 ? "-0" : Long.toString(tenths / 10);
    return tenths % 10 == 0 ? whole : whole + "." + Math.abs(tenths % 10);
  }
}
