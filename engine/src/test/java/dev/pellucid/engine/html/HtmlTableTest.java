package dev.pellucid.engine.html;

import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import j2html.tags.DomContent;
import j2html.tags.specialized.ThTag;
import j2html.tags.specialized.TrTag;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables, and rows that do not fit them. */
class HtmlTableTest {
  private static final List<ThTag> HEADS = List.of(th("Line"), th("kg").withClass("figure"));

  @Test
  void aTableHasAHeadAndRows() {
    assertEquals(
        "<table><thead><tr><th>Line</th><th class=\"figure\">kg</th></tr></thead>"
            + "<tbody><tr><td>x</td><td>x</td></tr></tbody></table>",
        HtmlTable.of(HEADS, List.of(row(2))).render());
  }

  @Test
  void aCaptionComesFirst() {
    assertEquals(
        "<table><caption>A &amp; B</caption><thead><tr><th>Line</th>"
            + "<th class=\"figure\">kg</th></tr></thead><tbody></tbody></table>",
        HtmlTable.captioned("A & B", HEADS, List.of()).render());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3})
  void aRowOfMoreOrLessCellsIsRefused(int cells) {
    List<TrTag> rows = List.of(row(2), row(cells));
    assertThrows(IllegalArgumentException.class, () -> HtmlTable.of(HEADS, rows));
    assertThrows(IllegalArgumentException.class, () -> HtmlTable.captioned("c", HEADS, rows));
  }

  private static TrTag row(int cells) {
    return tr().with(Stream.<DomContent>generate(() -> td("x")).limit(cells));
  }
}
