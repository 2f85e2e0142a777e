package dev.pellucid.engine.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a page is told when the code has moved away from it. */
class PromisedPageTest {
  private static final String PAGE =
      """
      Words.

      ```codes
      law error: a b
      law note: c
      ```

      ```keys
      plant, mill: name! size
      ```

      ```retired
      %s
      ```
      """;

  private static PromisedPage against(String retired, List<Row> codes, List<Row> keys) {
    return PromisedPage.against(
        PAGE.formatted(retired),
        List.of(new Listed("codes", "code", codes, true), new Listed("keys", "key", keys, false)));
  }

  private static final List<Row> CODES =
      List.of(new Row("law error", List.of("a", "b")), new Row("law note", List.of("c")));
  private static final List<Row> KEYS = List.of(new Row("plant, mill", List.of("name!", "size")));

  @Test
  void thePageThatIsRightStaysAsItIs() {
    PromisedPage page = against("none", CODES, KEYS);
    assertEquals("", page.told());
    assertEquals(PAGE.formatted("none"), page.next());
  }

  @Test
  void whatIsGoneIsToldAndNotLost() {
    PromisedPage page = against("none", List.of(new Row("law error", List.of("a"))), KEYS);
    assertEquals(
        """
        REMOVED, which breaks whoever uses it. Put it back, or fill in its line:
          code b
          code c
        """,
        page.told());
    Retired retired = Retired.read(PromisedPage.block(page.next(), Retired.BLOCK));
    assertEquals(List.of("code b", "code c"), retired.names());
    assertEquals(retired.lines(), retired.untold());
  }

  @Test
  void whatIsRenamedIsGoneAndNew() {
    List<Row> keys =
        List.of(new Row("plant", List.of("name!", "width")), new Row("mill", List.of("name!")));
    assertEquals(
        """
        REMOVED, which breaks whoever uses it. Put it back, or fill in its line:
          key mill: size
          key plant: size
        Added, which is fine:
          key plant: width
        """,
        against("none", CODES, keys).told());
  }

  @Test
  void whatIsAskedOtherwiseIsChanged() {
    List<Row> codes =
        List.of(new Row("law error", List.of("a", "b")), new Row("law error", List.of("c")));
    List<Row> keys = List.of(new Row("plant, mill", List.of("name!", "size!")));
    assertEquals(
        """
        CHANGED. Read in the page whether this version may do so:
          code c was law note, is law error
          key mill: size was size, is size!
          key plant: size was size, is size!
        """,
        against("none", codes, keys).told());
  }

  @Test
  void aValueThatIsGoneIsRemovedAndANewOneAdded() {
    Listed was =
        new Listed("keys", "key", List.of(new Row("plant", List.of("coater!=a|b"))), false);
    Listed is = new Listed("keys", "key", List.of(new Row("plant", List.of("coater!=b|c"))), false);
    String page = "\n```keys\n" + was.text() + "```\n\n```retired\nnone\n```\n";
    assertEquals(
        """
        REMOVED, which breaks whoever uses it. Put it back, or fill in its line:
          key plant: coater=a
        Added, which is fine:
          key plant: coater=c
        """,
        PromisedPage.against(page, List.of(is)).told());
  }

  @Test
  void aWordIsNeverUsedTwice() {
    String told = against("code a | 1.0.0 | use b in its place", CODES, KEYS).told();
    assertTrue(told.startsWith("retired, and yet there; use another word:\n  code a\n"), told);
  }

  @Test
  void aRetiredWordSaysSinceWhenAndWhatElse() {
    Retired good = Retired.read("code a | 1.0.0 | use b in its place\n");
    assertEquals(List.of(), good.untold());
    assertEquals(1, Retired.read("code a | 1.0.0 | gone\n").untold().size());
    assertEquals(1, Retired.read("code a\n").untold().size());
  }

  @Test
  void longRowsReadBackAsTheyWere() {
    List<String> many = List.of("one-long-word!".repeat(4), "two-long-words".repeat(5), "x=a|b");
    Row row = new Row("first, second", many);
    assertTrue(row.text().lines().count() > 1, row::text);
    assertEquals(List.of(row), Row.read(row.text()));
    List<Row> parts = List.of(new Row("first", many), new Row("second", many));
    assertEquals(List.of(row), Row.joined(parts));
  }
}
