package dev.pellucid.engine.site;

import static j2html.TagCreator.div;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import dev.pellucid.engine.html.HtmlTable;
import j2html.tags.DomContent;
import j2html.tags.specialized.TdTag;
import j2html.tags.specialized.ThTag;
import j2html.tags.specialized.TrTag;
import java.util.List;
import java.util.stream.Stream;

/**
 * Tables that a screen reader can walk: a caption, heads of columns, a head to each row. Most cells
 * are figures, so it is cells of words that are marked.
 */
final class Tables {
  private Tables() {}

  /** A head; a head of figures stands to the right. */
  record Head(String words, boolean figures) {}

  static Head words(String words) {
    return new Head(words, false);
  }

  static Head figures(String words) {
    return new Head(words, true);
  }

  /** A table, which a narrow screen may scroll. */
  static DomContent table(String caption, List<Head> heads, Stream<TrTag> rows) {
    return div(HtmlTable.captioned(
            caption, heads.stream().map(Tables::head).toList(), rows.toList()))
        .withClass("wide");
  }

  /** One that the words around it tell of. */
  static DomContent table(List<Head> heads, List<TrTag> rows) {
    return div(HtmlTable.of(heads.stream().map(Tables::head).toList(), rows)).withClass("wide");
  }

  private static ThTag head(Head head) {
    return th(head.words()).attr("scope", "col").withCondClass(head.figures(), "n");
  }

  /** The first cell heads its row without saying so, since its column has no cell of data. */
  static TrTag row(DomContent head, DomContent... cells) {
    return tr(th(head)).with(cells);
  }

  static TrTag row(String head, DomContent... cells) {
    return row(text(head), cells);
  }

  static TdTag cell(String words) {
    return td(words).withCondClass(!words.isEmpty(), "t");
  }

  static TdTag cell(DomContent content) {
    return td(content).withClass("t");
  }

  static TdTag picture(DomContent picture) {
    return td(picture).withClass("pic");
  }

  static TdTag figure(String figure) {
    return td(figure);
  }
}
