package dev.pellucid.engine.html;

import static j2html.TagCreator.head;
import static j2html.TagCreator.html;
import static j2html.TagCreator.meta;

import j2html.TagCreator;
import j2html.tags.DomContent;
import j2html.tags.specialized.BodyTag;
import j2html.tags.specialized.MetaTag;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** Whole files in English that load nothing, to be written as UTF-8; lines end in {@code \n}. */
public final class HtmlFile {
  private HtmlFile() {}

  /**
   * A file.
   *
   * @param told what the head tells a browser beside the encoding
   * @param style the rules of its style sheet
   */
  public static String of(String title, List<MetaTag> told, String style, BodyTag body) {
    DomContent page =
        html(
                head(meta().withCharset("utf-8"))
                    .with(told)
                    .with(TagCreator.title(title), Inline.style(style)),
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
