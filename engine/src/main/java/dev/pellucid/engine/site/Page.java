package dev.pellucid.engine.site;

import static j2html.TagCreator.a;
import static j2html.TagCreator.body;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.header;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.nav;

import dev.pellucid.engine.html.HtmlFile;
import j2html.tags.DomContent;
import java.util.List;

/**
 * The frame of a page. Its policy lets it load nothing but what lies where it lies itself: the one
 * style sheet and the one script of all pages.
 */
record Page(String house, String day) {
  private static final String POLICY =
      "default-src 'none'; style-src 'self'; script-src 'self'; img-src data:";

  /**
   * A page.
   *
   * @param up the way to the folder of the index: empty, or {@code ../}
   */
  String of(String name, String up, List<? extends DomContent> content) {
    return HtmlFile.linked(
        name + ", " + house,
        List.of(
            meta().attr("http-equiv", "Content-Security-Policy").withContent(POLICY),
            meta().withName("viewport").withContent("width=device-width")),
        up + Site.STYLE,
        body(
            a("To the content").withHref("#main").withClass("skip"),
            header(nav(a(house).withHref(up + "index.html")).attr("aria-label", "All feeds")),
            main(h1(name)).withId("main").with(content),
            footer(
                "Figures are of "
                    + day
                    + ", worked out from the folder of recipes. They are only as good as"
                    + " the data in it: local law, a veterinarian and a licensed"
                    + " nutritionist decide.")));
  }
}
