package dev.pellucid.engine.html;

import static j2html.TagCreator.head;
import static j2html.TagCreator.html;
import static j2html.TagCreator.link;
import static j2html.TagCreator.meta;

import j2html.TagCreator;
import j2html.tags.DomContent;
import j2html.tags.specialized.BodyTag;
import j2html.tags.specialized.MetaTag;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** Whole files in English, to be written as UTF-8; lines end in {@code \n}. */
public final class HtmlFile {
  private HtmlFile() {}

  /**
   * A file by itself, as wide as the screen that shows it.
   *
   * @param style the rules of its style sheet
   */
  public static String of(String title, String style, BodyTag body) {
    MetaTag width = meta().withName("viewport").withContent("width=device-width");
    return written(title, List.of(width), Inline.style(style), body);
  }

  /**
   * One of several files that share a style sheet.
   *
   * @param told what the head tells a browser beside the encoding
   * @param sheet the way to it
   */
  public static String linked(String title, List<MetaTag> told, String sheet, BodyTag body) {
    return written(title, told, link().withRel("stylesheet").withHref(sheet), body);
  }

  private static String written(String title, List<MetaTag> told, DomContent style, BodyTag body) {
    DomContent page =
        html(
                head(meta().withCharset("utf-8")).with(told).with(TagCreator.title(title), style),
                body)
            .withLang("en");
    try {
      return page.render(new Lines().appendUnescapedText("<!DOCTYPE html>\n"))
          .append('\n')
          .toString();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
