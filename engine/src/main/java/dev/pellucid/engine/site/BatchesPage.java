package dev.pellucid.engine.site;

import static dev.pellucid.engine.site.Tables.cell;
import static dev.pellucid.engine.site.Tables.figure;
import static dev.pellucid.engine.site.Tables.figures;
import static dev.pellucid.engine.site.Tables.row;
import static dev.pellucid.engine.site.Tables.table;
import static dev.pellucid.engine.site.Tables.words;
import static j2html.TagCreator.a;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.pre;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.text;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.trend.Course;
import dev.pellucid.engine.trend.Course.Around;
import dev.pellucid.engine.trend.History;
import dev.pellucid.engine.trend.Measured;
import dev.pellucid.engine.trend.OwnSpread;
import dev.pellucid.engine.trend.Run;
import dev.pellucid.engine.trend.Spot;
import dev.pellucid.text.Plural;
import j2html.tags.DomContent;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The batches of one recipe over time. */
final class BatchesPage {
  private final MadeView made;
  private final List<DomContent> out = new ArrayList<>();

  private BatchesPage(MadeView made) {
    this.made = made;
  }

  static List<DomContent> of(MadeView made, String currency) {
    BatchesPage page = new BatchesPage(made);
    page.content(currency);
    return page.out;
  }

  private void content(String currency) {
    History history = made.history();
    int count = history.batches().size();
    out.add(
        p(
            text(
                Plural.of(count, "batch was made", "batches were made")
                    + ", the last on "
                    + history.batches().get(count - 1).day()
                    + (made.others() > 0
                        ? ". Not shown, for they could not be judged: " + made.others()
                        : "")
                    + ". Each is held against what was expected of itself as it was made, so that"
                    + " batches of a changed recipe compare. Of the feed as it is now: "),
            a(made.code()).withHref("../feeds/" + made.code() + ".html"),
            text(".")));
    if (!made.findings().isEmpty()) {
      out.add(h2("Findings"));
      made.findings().forEach(finding -> out.add(pre(finding)));
    }
    if (!history.courses().isEmpty()) {
      legend();
    }
    history.courses().forEach(course -> course(course, count));
    out.addAll(YieldTable.of(history, currency));
  }

  private void legend() {
    out.add(h2("How to read the charts"));
    out.add(
        p(
            "A spread is one standard deviation of what is found less what is expected. Lines:"
                + " centre, two spreads (long dashes), three spreads (dots). A dot is left to"
                + " chance. A diamond is further off than three spreads; a square is the second of"
                + " three that are further off than two; a triangle is the eighth, or a later one,"
                + " in a row on one side; a cross is the sixth, or a later one, in a row that rises"
                + " or falls. By chance alone one batch in 65 or so gets such a mark."));
  }

  private void course(Course course, int batches) {
    out.add(h2(title(course)));
    out.add(p(centre(course) + " " + spread(course)));
    CourseChart.of(course, batches)
        .ifPresentOrElse(
            chart -> out.add(div(chart).withClass("wide pic")),
            () -> out.add(p("No picture: no batch tells how many spreads it is off.")));
    out.add(
        details(
            summary(Plural.of(course.spots().size() + course.left().size(), "figure")),
            table(
                List.of(
                    words("Batch"),
                    words("Day"),
                    words("Is"),
                    figures("Found " + course.unit().symbol()),
                    figures("Expected " + course.unit().symbol()),
                    figures("Off in spreads"),
                    words("Marked for")),
                rows(course))));
  }

  private static String title(Course course) {
    return switch (course.what()) {
      case MOISTURE, CONTENT -> course.title() + " by the laboratory";
      case DRYER, YIELD, DURABILITY, EVENNESS -> course.title();
    };
  }

  private static String centre(Course course) {
    return course.around() == Around.OWN_MEAN
        ? "The centre is the mean of these batches."
        : "The centre is what was expected of each batch.";
  }

  private static String spread(Course course) {
    return switch (course.scale()) {
      case TOLD -> "The spread is that of each batch by itself.";
      case OWN -> "The spread is the one that these batches show from one to the next.";
      case NOT_KNOWN ->
          "Not all tell a spread, and there are fewer than "
              + OwnSpread.FEWEST
              + " batches that differ, which would show one.";
    };
  }

  private static List<TrTag> rows(Course course) {
    List<Placed> rows = new ArrayList<>();
    for (int i = 0; i < course.spots().size(); i++) {
      rows.add(new Placed(course.spots().get(i), marks(course, i)));
    }
    for (Spot spot : course.left()) {
      rows.add(
          new Placed(
              spot,
              spot.figure().expected().isEmpty()
                  ? "left out: it is not known what to expect"
                  : "left out: a slip of the pen"));
    }
    return rows.stream()
        .sorted(Comparator.comparingInt(one -> one.spot().place()))
        .map(one -> row(course, one))
        .toList();
  }

  private record Placed(Spot spot, String marks) {}

  private static TrTag row(Course course, Placed one) {
    Spot spot = one.spot();
    Measured figure = spot.figure();
    boolean told = figure.expected().isPresent();
    double centre = course.unit().fromBase(spot.centre());
    return Tables.row(
        spot.batch().number(),
        cell(spot.batch().day().toString()),
        cell(spot.batch().standing()),
        figure(Figures.plain(course.unit().fromBase(figure.found()))),
        figure(told ? Figures.plain(centre) : ""),
        figure(spot.spreads().isPresent() ? signed(spot.spreads().getAsDouble()) : ""),
        one.marks().isEmpty() ? cell("") : cell(FeedPage.bad(one.marks())));
  }

  private static String signed(double spreads) {
    return (spreads > 0 ? "+" : "") + Figures.fixed(spreads, 1);
  }

  private static String marks(Course course, int spot) {
    return course.at(spot).stream().map(BatchesPage::mark).collect(Collectors.joining(", "));
  }

  private static String mark(Run run) {
    return switch (run.rule()) {
      case BEYOND_THREE -> "beyond three spreads";
      case TWO_OF_THREE -> "two of three beyond two spreads";
      case EIGHT_ON_ONE_SIDE -> run.count() + " in a row " + (run.up() ? "above" : "below");
      case SIX_IN_A_ROW -> run.count() + " in a row " + (run.up() ? "rising" : "falling");
    };
  }

  /** What a dot of the chart says when it is pointed at. */
  static String spoken(Course course, int i) {
    Spot spot = course.spots().get(i);
    String marks = marks(course, i);
    return Stream.of(
            spot.batch().number(),
            Figures.plain(spot.figure().found(), course.unit()),
            signed(spot.spreads().orElse(0)) + " spreads",
            marks)
        .filter(one -> !one.isEmpty())
        .collect(Collectors.joining(", "));
  }
}
