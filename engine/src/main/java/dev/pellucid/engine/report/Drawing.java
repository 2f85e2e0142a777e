package dev.pellucid.engine.report;

import static j2html.TagCreator.tag;

import j2html.tags.ContainerTag;
import j2html.tags.DomContent;

/**
 * A picture of figures as SVG, drawn piece by piece: names to the left, what is drawn beside them.
 * It tells by place, length and shape, never by colour.
 */
final class Drawing {
  /** How wide each is, and where names end and figures begin. */
  static final int WIDE = 660;

  static final int LEFT = 190;
  static final int RIGHT = 560;
  static final int ROW = 19;
  private static final int SMALL = 11;

  /** So far a line goes out that goes back. */
  private static final int LOOP = 26;

  private final ContainerTag<?> svg;

  /**
   * @param what it shows, for who cannot see it
   */
  Drawing(String what, int high) {
    this(what, WIDE, high);
  }

  /**
   * One of another width.
   *
   * @param what it shows, for who cannot see it
   */
  Drawing(String what, int wide, int high) {
    svg =
        tag("svg")
            .attr("width", wide)
            .attr("height", high)
            .attr("viewBox", "0 0 " + wide + " " + high)
            .attr("role", "img")
            .with(tag("title").withText(what));
  }

  DomContent svg() {
    return svg;
  }

  /** A bar from one place to another; a hollow one is of now, or held. */
  void bar(double from, double to, double y, double high, boolean hollow) {
    double left = Math.min(from, to);
    svg.with(
        tag("path")
            .attr(
                "d",
                "M"
                    + at(left)
                    + " "
                    + at(y)
                    + "h"
                    + at(Math.abs(to - from))
                    + "v"
                    + at(high)
                    + "H"
                    + at(left)
                    + "z")
            .attr("fill", hollow ? "#fff" : "#777")
            .attr("stroke", "#000"));
  }

  void line(double x1, double y1, double x2, double y2, boolean thick) {
    svg.with(
        tag("path")
            .attr("d", "M" + at(x1) + " " + at(y1) + "L" + at(x2) + " " + at(y2))
            .attr("stroke", "#000")
            .attr("stroke-width", thick ? "2" : "0.7"));
  }

  /** A line that is broken: what is not reached, or only a help for the eye. */
  void dashed(double x1, double y1, double x2, double y2) {
    svg.with(
        tag("path")
            .attr("d", "M" + at(x1) + " " + at(y1) + "L" + at(x2) + " " + at(y2))
            .attr("stroke", "#000")
            .attr("stroke-width", "0.7")
            .attr("stroke-dasharray", "3 2"));
  }

  /** A frame to write in, over what lies below it. */
  void frame(double x, double y, double wide, double high, boolean thick, boolean dashed) {
    svg.with(
        broken(
            "M" + at(x) + " " + at(y) + "h" + at(wide) + "v" + at(high) + "H" + at(x) + "z",
            thick ? "2.4" : "1",
            dashed,
            "#fff"));
  }

  /** A straight line, full or broken. */
  void broken(double x1, double y1, double x2, double y2, boolean dashed) {
    String way = "M" + at(x1) + " " + at(y1) + "L" + at(x2) + " " + at(y2);
    svg.with(broken(way, "1", dashed, "none"));
  }

  /**
   * A line that leaves one place level and comes to the other level.
   *
   * @param loops whether it leaves to the left, and comes from there
   */
  void curve(double x1, double y1, double x2, double y2, boolean loops, boolean dashed) {
    double first = loops ? x1 - LOOP : (x1 + x2) / 2;
    double second = loops ? x2 - LOOP : (x1 + x2) / 2;
    String way =
        "M"
            + at(x1)
            + " "
            + at(y1)
            + "C"
            + at(first)
            + " "
            + at(y1)
            + " "
            + at(second)
            + " "
            + at(y2)
            + " "
            + at(x2)
            + " "
            + at(y2);
    svg.with(broken(way, "1", dashed, "none"));
  }

  private static ContainerTag<?> broken(String way, String thick, boolean dashed, String fill) {
    ContainerTag<?> path = path(way);
    path.attr("fill", fill).attr("stroke", "#000").attr("stroke-width", thick);
    if (dashed) {
      path.attr("stroke-dasharray", "5 3");
    }
    return path;
  }

  private static ContainerTag<?> path(String way) {
    ContainerTag<?> path = tag("path");
    path.attr("d", way);
    return path;
  }

  /** The point of an arrow that ends here, coming from the left. */
  void head(double x, double y) {
    svg.with(path("M" + at(x) + " " + at(y) + "l-7 -3v6z").attr("fill", "#000"));
  }

  void dot(double x, double y, boolean hollow) {
    svg.with(
        tag("circle")
            .attr("cx", at(x))
            .attr("cy", at(y))
            .attr("r", "3.5")
            .attr("fill", hollow ? "#fff" : "#000")
            .attr("stroke", "#000"));
  }

  /** Which end of words stands at their place. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  void words(double x, double y, Anchor anchor, String words) {
    svg.with(text(x, y, anchor, words));
  }

  /** The same where lines may lie: a white rim keeps them off the letters. */
  void wordsOverLines(double x, double y, String words) {
    svg.with(
        text(x, y, Anchor.START, words)
            .attr("stroke", "#fff")
            .attr("stroke-width", "3")
            .attr("paint-order", "stroke"));
  }

  private static ContainerTag<?> text(double x, double y, Anchor anchor, String words) {
    String side =
        switch (anchor) {
          case START -> "start";
          case MIDDLE -> "middle";
          case END -> "end";
        };
    ContainerTag<?> text = tag("text");
    text.attr("x", at(x))
        .attr("y", at(y))
        .attr("font-size", SMALL)
        .attr("font-family", "sans-serif")
        .attr("text-anchor", side)
        .withText(words);
    return text;
  }

  /** To a tenth. */
  private static String at(double place) {
    long tenths = Math.round(place * 10);
    String whole = tenths / 10 == 0 && tenths < 0 ? "-0" : Long.toString(tenths / 10);
    return tenths % 10 == 0 ? whole : whole + "." + Math.abs(tenths % 10);
  }
}
