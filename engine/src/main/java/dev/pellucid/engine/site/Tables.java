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

/** Tables that a screen reader can walk: a caption, heads of columns, a head to each row. */
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

  private static ThTag head(Head head) {
    return th(head.words()).attr("scope", "col").withCondClass(head.figures(), "n");
  }

  static TrTag row(DomContent head, DomContent... cells) {
    return tr(th(head).attr("scope", "row")).with(cells);
  }

  static TrTag row(String head, DomContent... cells) {
    return row(text(head), cells);
  }

  static TdTag cell(String words) {
    return td(words);
  }

  static TdTag cell(DomContent content) {
    return td(content);
  }

  static TdTag picture(DomContent picture) {
    return td(picture).withClass("pic");
  }

  static TdTag figure(String figure) {
    return td(figure).withClass("n");
  }
}
