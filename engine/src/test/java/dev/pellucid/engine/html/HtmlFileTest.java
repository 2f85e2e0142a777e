package dev.pellucid.engine.html;

import static j2html.TagCreator.a;
import static j2html.TagCreator.body;
import static j2html.TagCreator.br;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import j2html.tags.DomContent;
import j2html.tags.specialized.MetaTag;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The frame of a file, what is escaped in it and where its lines end. */
class HtmlFileTest {
  private static final String STYLE = "p > b { content: \"&\"; }\n";

  @Test
  void whatIsSaidIsEscapedAndTheStyleIsNot() {
    assertEquals(
        """
        <!DOCTYPE html>
        <html lang="en"><head><meta charset="utf-8">\
        <meta name="viewport" content="width=device-width"><title>&lt;b&gt; &amp; &#x27;c&#x27;</title><style>
        p > b { content: "&"; }
        </style></head><body><p class="&quot;&lt;">&lt;i&gt; &quot;d&quot;</p>
        </body></html>
        """,
        HtmlFile.of("<b> & 'c'", STYLE, body(p("<i> \"d\"").withClass("\"<"))));
  }

  @Test
  void aSheetBesideItIsLinked() {
    MetaTag told = meta().withName("a").withContent("\">");
    String page = HtmlFile.linked("t", List.of(told), "../a.css", body());
    assertTrue(page.contains("<meta name=\"a\" content=\"&quot;&gt;\">"), page);
    assertTrue(page.contains("<title>t</title><link rel=\"stylesheet\" href=\"../a.css\"></head>"));
  }

  @Test
  void noTextGetsTheEndOfALine() {
    DomContent words = p(text("a "), strong("b"), span("c"), br(), a("d"), text(" e\nf"));
    assertEquals(
        "<p>a <strong>b</strong><span>c</span><br><a>d</a> e\nf</p>\n",
        inBody(HtmlFile.of("t", STYLE, body(words))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"</style><b>x", "p { } </STYLE >", "a { content: \"</\"; }"})
  void aStyleSheetThatWouldEndBeforeItsEndIsRefused(String style) {
    assertThrows(IllegalArgumentException.class, () -> HtmlFile.of("t", style, body()));
  }

  @Test
  void aFileThatIsNotThereIsABug() {
    assertThrows(IllegalStateException.class, () -> Inline.text("site/none.css"));
  }

  private static String inBody(String page) {
    return page.substring(page.indexOf("<body>") + 6, page.indexOf("</body>"));
  }
}
