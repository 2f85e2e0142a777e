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
  /** So that a phone shows letters that can be read. */
  private static final String WIDTH = "width=device-width";

  private HtmlFile() {}

  /**
   * A file.
   *
   * @param told what the head tells a browser beside encoding and width
   * @param style the rules of its style sheet
   */
  public static String of(String title, List<MetaTag> told, String style, BodyTag body) {
    return written(title, told, Inline.style(style), body);
  }

  /**
   * One of several files that share a style sheet.
   *
   * @param sheet the way to it
   */
  public static String linked(String title, List<MetaTag> told, String sheet, BodyTag body) {
    return written(title, told, link().withRel("stylesheet").withHref(sheet), body);
  }

  private static String written(String title, List<MetaTag> told, DomContent style, BodyTag body) {
    DomContent page =
        html(
                head(meta().withCharset("utf-8"), meta().withName("viewport").withContent(WIDTH))
                    .with(told)
                    .with(TagCreator.title(title), style),
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
