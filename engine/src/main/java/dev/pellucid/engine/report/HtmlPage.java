package dev.pellucid.engine.report;

import static j2html.TagCreator.body;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.main;
import static j2html.TagCreator.p;
import static j2html.TagCreator.pre;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import dev.pellucid.engine.html.HtmlFile;
import dev.pellucid.engine.html.HtmlTable;
import dev.pellucid.engine.html.Inline;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Folded;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Picture;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Running;
import dev.pellucid.engine.report.Block.Signatures;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Ticks;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Together;
import dev.pellucid.engine.report.Block.Verbatim;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import j2html.TagCreator;
import j2html.tags.DomContent;
import j2html.tags.Tag;
import j2html.tags.specialized.ThTag;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Blocks as one HTML file. */
final class HtmlPage implements Block.Renderer {
  private static final String STYLE = Inline.text("report/sheet.css");

  /** A table to write in is kept on one page up to so many rows. */
  private static final int KEPT_WHOLE = 6;

  /** A table to read is set small beyond so many rows. */
  private static final int DENSE_FROM = 14;

  private final StringBuilder margins = new StringBuilder();
  private final List<DomContent> content = new ArrayList<>();

  String render(String title, List<Block> blocks) {
    return render(title, "", blocks);
  }

  /**
   * The same with more rules than all sheets have.
   *
   * @param more rules of a style sheet
   */
  String render(String title, String more, List<Block> blocks) {
    blocks.forEach(block -> block.to(this));
    return HtmlFile.of(title, STYLE + more + margins, body(main().with(content)));
  }

  /**
   * Boxes in the margins of each printed page; a browser that knows no such boxes leaves them out,
   * and the heads of both parts still say where the sheet comes from.
   */
  @Override
  public void running(Running running) {
    margins
        .append("@page {\n  @top-center { content: ")
        .append(quoted(running.above()))
        .append("; font: bold 11pt sans-serif; }\n  @bottom-left { content: ")
        .append(quoted(running.words()))
        .append(
            """
            ; font: 8pt sans-serif; }
              @bottom-right { content: "page " counter(page) " of " counter(pages);\
             font: 8pt sans-serif; }
            }
            """);
  }

  /** As a string of a style sheet: all but letters, figures and plain marks by their numbers. */
  private static String quoted(String words) {
    StringBuilder text = new StringBuilder("\"");
    words
        .codePoints()
        .forEach(
            c -> {
              if (Character.isLetterOrDigit(c) || " ,.-:".indexOf(c) >= 0) {
                text.appendCodePoint(c);
              } else {
                text.append('\\').append(Integer.toHexString(c)).append(' ');
              }
            });
    return text.append('"').toString();
  }

  @Override
  public void title(Title title) {
    List<DomContent> words = new ArrayList<>();
    words.add(text(title.code() + " "));
    for (String word : title.title().split(" ", -1)) {
      words.add(text(" "));
      words.add(isNumber(word) ? span(word).withClass("name") : text(word));
    }
    content.add(h1().with(words));
  }

  /** Whether a word is the number of a lot or of a batch, which is not to be broken over lines. */
  private static boolean isNumber(String word) {
    return word.contains("-") && word.chars().anyMatch(Character::isDigit);
  }

  @Override
  public void stamp(Stamp stamp) {
    content.add(HtmlPieces.stamp(stamp.words(), stamp.because()));
  }

  @Override
  public void heading(Heading heading) {
    content.add(h2(heading.words()).withCondClass(heading.newPart(), "part"));
  }

  @Override
  public void words(Words words) {
    content.add(p(words.words()));
  }

  @Override
  public void folded(Folded folded) {
    HtmlPage inner = new HtmlPage();
    folded.blocks().forEach(block -> block.to(inner));
    content.add(details(summary(folded.words())).with(inner.content));
  }

  @Override
  public void together(Together together) {
    HtmlPage inner = new HtmlPage();
    together.blocks().forEach(block -> block.to(inner));
    String look =
        switch (together.look()) {
          case KEPT -> "kept";
          case ASIDE -> "aside";
        };
    content.add(div().withClass(look).with(inner.content));
  }

  @Override
  public void facts(Facts facts) {
    content.add(
        dl().with(
                facts.facts().stream()
                    .flatMap(fact -> HtmlPieces.fact(fact.name(), fact.value()))));
  }

  @Override
  public void ticks(Ticks ticks) {
    list("tick", ticks.sentences());
  }

  @Override
  public void warnings(Warnings warnings) {
    list("warn", warnings.sentences());
  }

  private void list(String kind, List<String> sentences) {
    content.add(ul().withClass(kind).with(sentences.stream().map(TagCreator::li)));
  }

  @Override
  public void points(Points points) {
    list("points", points.sentences());
  }

  @Override
  public void verbatim(Verbatim verbatim) {
    content.add(pre(String.join("\n", verbatim.lines())));
  }

  @Override
  public void picture(Picture picture) {
    content.add(picture.svg());
  }

  @Override
  public void signatures(Signatures signatures) {
    content.add(div().withClass("sign").with(signatures.who().stream().map(TagCreator::span)));
  }

  @Override
  public void table(Table table) {
    boolean writes = table.columns().stream().anyMatch(column -> column.holds() == Holds.INITIALS);
    int last = table.rows().size() - 1;
    List<TrTag> rows =
        IntStream.rangeClosed(0, last)
            .mapToObj(
                i ->
                    row(table.columns(), table.rows().get(i))
                        .withCondClass(table.total() && i == last, "total"))
            .toList();
    content.add(
        HtmlTable.of(table.columns().stream().map(HtmlPage::head).toList(), rows)
            .withClass(kind(table, writes)));
  }

  private static String kind(Table table, boolean writes) {
    int rows = table.rows().size();
    if (writes) {
      return rows > KEPT_WHOLE ? "write" : "write whole";
    }
    return rows > DENSE_FROM ? "dense" : "whole";
  }

  private static ThTag head(Column column) {
    return classed(th(column.head()), column.holds());
  }

  private static TrTag row(List<Column> columns, List<String> cells) {
    return tr().with(
            IntStream.range(0, cells.size())
                .mapToObj(i -> classed(td(cells.get(i)), columns.get(i).holds())));
  }

  private static <T extends Tag<T>> T classed(T cell, Holds holds) {
    return switch (holds) {
      case WORDS -> cell;
      case NAME -> cell.withClass("name");
      case FIGURES -> cell.withClass("figure");
      case WEIGHT -> cell.withClass("weigh");
      case ROOM -> cell.withClass("room");
      case INITIALS -> cell.withClass("short");
    };
  }
}
