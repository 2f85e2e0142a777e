package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Drawing.Anchor;
import dev.pellucid.engine.report.Flow.Arrow;
import dev.pellucid.engine.report.FlowLayout.Placed;
import dev.pellucid.engine.report.FlowLayout.Point;
import dev.pellucid.engine.report.FlowLayout.Routed;
import dev.pellucid.engine.trace.Kilograms;
import dev.pellucid.text.Plural;
import j2html.tags.DomContent;

/**
 * A flow as a picture. What is certain has full lines, what is only possible broken ones; what is
 * looked for has a thick frame. Above each arrow stands its kind, below it the kg.
 */
final class FlowPicture {
  /** So far before a box words of an arrow begin. */
  private static final int WORDS = 82;

  private static final int BESIDE = 4;
  private static final int MARGIN = 3;

  private final Drawing drawing;

  private FlowPicture(Drawing drawing) {
    this.drawing = drawing;
  }

  /**
   * Draws a flow; one of many boxes is folded first.
   *
   * @param what it shows, for who cannot see it
   */
  static DomContent of(String what, Flow flow) {
    FlowLayout layout = new FlowLayout(FlowFolding.of(flow));
    Drawing drawing =
        new Drawing(
            what, (int) layout.wide() + 2 * MARGIN, (int) Math.ceil(layout.high()) + 2 * MARGIN);
    FlowPicture picture = new FlowPicture(drawing);
    layout
        .heads()
        .forEach((x, head) -> drawing.words(x + MARGIN, LINE_OF_HEADS, Anchor.START, head));
    layout.arrows().forEach(picture::arrow);
    layout.arrows().forEach(picture::words);
    layout.boxes().forEach(picture::box);
    return drawing.svg();
  }

  private static final int LINE_OF_HEADS = 12;

  private void box(Placed placed) {
    drawing.frame(
        placed.x() + MARGIN,
        placed.y(),
        FlowLayout.WIDE,
        placed.high(),
        placed.box().asked(),
        !placed.box().certain());
    double room = placed.high() - placed.words().size() * FlowLayout.LINE;
    for (int i = 0; i < placed.words().size(); i++) {
      drawing.words(
          placed.x() + MARGIN + BESIDE,
          placed.y() + room / 2 + i * FlowLayout.LINE + 10,
          Anchor.START,
          placed.words().get(i));
    }
  }

  private void arrow(Routed routed) {
    boolean dashed = !routed.arrow().certain();
    Point at = moved(routed.from());
    for (Point lane : routed.lanes()) {
      Point begins = moved(lane);
      drawing.curve(at.x(), at.y(), begins.x(), begins.y(), false, dashed);
      at = new Point(begins.x() + FlowLayout.WIDE, begins.y());
      drawing.broken(begins.x(), begins.y(), at.x(), at.y(), dashed);
    }
    Point to = moved(routed.to());
    drawing.curve(at.x(), at.y(), to.x() - WORDS, to.y(), routed.back(), dashed);
    drawing.broken(to.x() - WORDS, to.y(), to.x(), to.y(), dashed);
    drawing.head(to.x(), to.y());
  }

  private static Point moved(Point point) {
    return new Point(point.x() + MARGIN, point.y());
  }

  /** What comes with bags is a delivery, as the head of the column says. */
  private void words(Routed routed) {
    Arrow arrow = routed.arrow();
    Point to = moved(routed.to());
    String kind =
        arrow.bags().isPresent() ? Plural.of(arrow.bags().getAsInt(), "bag") : arrow.kind();
    drawing.wordsOverLines(to.x() - WORDS + 2, to.y() - 3, kind);
    drawing.wordsOverLines(to.x() - WORDS + 2, to.y() + 10, amount(arrow));
  }

  private static String amount(Arrow arrow) {
    return arrow.kg().map(kg -> (arrow.most() && kg.whole() ? "up to " : "") + kg(kg)).orElse("");
  }

  private static String kg(Kilograms kg) {
    if (kg.told() == 0 && !kg.whole()) {
      return "kg not given";
    }
    return (kg.whole() ? "" : "over ") + RecallFigures.kg(kg.told()) + " kg";
  }
}
