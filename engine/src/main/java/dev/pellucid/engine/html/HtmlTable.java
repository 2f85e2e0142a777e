package dev.pellucid.engine.html;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.specialized.TableTag;
import j2html.tags.specialized.ThTag;
import j2html.tags.specialized.TrTag;
import java.util.List;

/** Tables: a head, and rows that fit it. One that does not is a bug, and no table is made of it. */
public final class HtmlTable {
  private HtmlTable() {}

  /** A table under words of its own. */
  public static TableTag captioned(String caption, List<ThTag> heads, List<TrTag> rows) {
    return filled(table(caption(caption)), heads, rows);
  }

  /** A table that the words around it tell of. */
  public static TableTag of(List<ThTag> heads, List<TrTag> rows) {
    return filled(table(), heads, rows);
  }

  private static TableTag filled(TableTag table, List<ThTag> heads, List<TrTag> rows) {
    for (TrTag row : rows) {
      if (row.getNumChildren() != heads.size()) {
        throw new IllegalArgumentException(
            row.getNumChildren() + " cells under " + heads.size() + " heads: " + row.render());
      }
    }
    return table.with(thead(tr().with(heads)), tbody().with(rows));
  }
}
