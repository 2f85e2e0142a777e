package dev.pellucid.engine.site;

import static j2html.TagCreator.tag;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.trend.Course;
import dev.pellucid.engine.trend.Run;
import dev.pellucid.engine.trend.RunRule;
import dev.pellucid.engine.trend.Spot;
import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import java.util.List;
import java.util.Optional;

/**
 * A course as a control chart: batches from left to right, spreads up and down, lines at the
 * centre, at two spreads and at three. Where a rule speaks the dot has another shape, with a word
 * beside the first of its kind.
 */
final class CourseChart {
  private static final double LEFT = 34;
  private static final double STEP = 16;
  private static final double LEAST = 720;
  private static final double HIGH = 240;
  private static final double EDGE = 14;

  /** So many spreads are shown at least, and at most. */
  private static final double NARROW = 3.6;

  private static final double WIDE = 8;

  private final Course course;
  private final double wide;
  private final double step;
  private final double most;
  private final ContainerTag<?> picture;

  private CourseChart(Course course, int batches) {
    this.course = course;
    this.wide = Math.max(LEAST, LEFT + EDGE + STEP * batches);
    this.step = (wide - LEFT - EDGE) / Math.max(1, batches);
    double far =
        course.spots().stream()
            .mapToDouble(spot -> Math.abs(spot.spreads().orElse(0)))
            .max()
            .orElse(0);
    this.most = Math.max(NARROW, Math.min(WIDE, far + 0.4));
    this.picture =
        tag("svg")
            .attr("width", at(wide))
            .attr("height", at(HIGH))
            .attr("viewBox", "0 0 " + at(wide) + " " + at(HIGH))
            .attr("role", "img")
            .with(
                tag("title")
                    .withText(
                        course.title()
                            + " of "
                            + course.spots().size()
                            + " batches in spreads, the oldest left"));
  }

  /** Empty where no batch tells how many spreads it is off. */
  static Optional<DomContent> of(Course course, int batches) {
    boolean any = course.spots().stream().anyMatch(spot -> spot.spreads().isPresent());
    return any ? Optional.of(new CourseChart(course, batches).drawn()) : Optional.empty();
  }

  private DomContent drawn() {
    level(0, "");
    for (int side : new int[] {1, -1}) {
      level(side * RunRule.INNER, "6 4");
      level(side * RunRule.OUTER, "2 3");
    }
    way();
    for (int i = 0; i < course.spots().size(); i++) {
      if (course.spots().get(i).spreads().isPresent()) {
        dot(i);
      }
    }
    return picture;
  }

  private void level(double spreads, String dashes) {
    ContainerTag<?> line = path("M" + at(LEFT) + " " + at(y(spreads)) + "H" + at(wide));
    picture.with(
        (dashes.isEmpty() ? line : line.attr("stroke-dasharray", dashes)).attr("stroke", "#000"));
    String words = spreads > 0 ? "+" + Figures.plain(spreads) : Figures.plain(spreads);
    picture.with(words(LEFT - 6, y(spreads) + 4, words).attr("text-anchor", "end"));
  }

  private void way() {
    StringBuilder points = new StringBuilder();
    for (Spot spot : course.spots()) {
      if (spot.spreads().isPresent()) {
        points.append(at(x(spot))).append(',').append(at(y(spot))).append(' ');
      }
    }
    picture.with(
        tag("polyline")
            .attr("points", points.toString().strip())
            .attr("fill", "none")
            .attr("stroke", "#777"));
  }

  private void dot(int i) {
    Spot spot = course.spots().get(i);
    Optional<RunRule> rule = rule(i);
    picture.with(
        shape(rule, x(spot), y(spot))
            .attr("fill", rule.isPresent() ? "#fff" : "#000")
            .attr("stroke", "#000")
            .attr("stroke-width", rule.isPresent() ? "2" : "1")
            .with(tag("title").withText(BatchesPage.spoken(course, i))));
    if (rule.isPresent() && isFirst(i, rule.get())) {
      word(spot, rule.get());
    }
  }

  /** Above or below its dot, so that the words of two rules at one place stand apart. */
  private void word(Spot spot, RunRule rule) {
    boolean below = rule == RunRule.TWO_OF_THREE || rule == RunRule.SIX_IN_A_ROW;
    double level = y(spot) + (below ? 18 : -10);
    boolean late = x(spot) > wide - 90;
    picture.with(
        words(x(spot), Math.max(11, Math.min(HIGH - 3, level)), word(rule))
            .attr("text-anchor", late ? "end" : "start"));
  }

  private boolean isFirst(int i, RunRule rule) {
    for (int before = 0; before < i; before++) {
      if (rule(before).filter(one -> one == rule).isPresent()) {
        return false;
      }
    }
    return true;
  }

  /** The first that speaks at a spot. */
  private Optional<RunRule> rule(int i) {
    List<Run> runs = course.at(i);
    return runs.isEmpty() ? Optional.empty() : Optional.of(runs.get(0).rule());
  }

  private static String word(RunRule rule) {
    return switch (rule) {
      case BEYOND_THREE -> "beyond three";
      case TWO_OF_THREE -> "two of three";
      case EIGHT_ON_ONE_SIDE -> "one side";
      case SIX_IN_A_ROW -> "in a row";
    };
  }

  /** A dot; or a diamond, a square, a triangle, a cross in a ring. */
  private static ContainerTag<?> shape(Optional<RunRule> rule, double x, double y) {
    if (rule.isEmpty()) {
      return tag("circle").attr("cx", at(x)).attr("cy", at(y)).attr("r", "3");
    }
    String from = "M" + at(x) + " " + at(y);
    return switch (rule.get()) {
      case BEYOND_THREE -> path(from + "m0-6 6 6-6 6-6-6z");
      case TWO_OF_THREE -> path(from + "m-4.5-4.5h9v9h-9z");
      case EIGHT_ON_ONE_SIDE -> path(from + "m0-6 5.5 10h-11z");
      case SIX_IN_A_ROW -> path(from + "m-5-5 10 10m0-10-10 10");
    };
  }

  private static ContainerTag<?> path(String way) {
    return tag("path").attr("d", way);
  }

  private static ContainerTag<?> words(double x, double y, String words) {
    return tag("text").attr("x", at(x)).attr("y", at(y)).attr("font-size", "11").withText(words);
  }

  private double x(Spot spot) {
    return LEFT + EDGE + step * spot.place();
  }

  private double y(Spot spot) {
    return y(Math.max(-most, Math.min(most, spot.spreads().orElse(0))));
  }

  private double y(double spreads) {
    return HIGH / 2 - spreads / most * (HIGH / 2 - EDGE);
  }

  /** To a tenth. */
  private static String at(double place) {
    return Figures.plain(Math.rint(place * 10) / 10);
  }
}
