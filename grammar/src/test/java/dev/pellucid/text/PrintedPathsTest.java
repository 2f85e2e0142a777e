package dev.pellucid.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** What leads to the folder stands before each path. */
class PrintedPathsTest {
  private final SourceFile file = new SourceFile("trout/A-1.recipe", "recipe A-1\nmix\n");

  @Test
  void theWayToTheFolderStandsBeforeEachPath() {
    PrintedPaths paths = new PrintedPaths("mill/feeds/");
    assertEquals("mill/feeds/trout/A-1.recipe", paths.of(file));
    assertEquals("mill/feeds/pellucid.yaml", paths.of("pellucid.yaml"));
    assertEquals("mill/feeds/trout/A-1.recipe:2:1", paths.place(file.span(11, 14)));
  }

  @Test
  void nothingStandsBeforeItForOneWhoIsThere() {
    assertEquals("trout/A-1.recipe", PrintedPaths.BELOW_FOLDER.of(file));
    assertEquals("trout/A-1.recipe:1:1", PrintedPaths.BELOW_FOLDER.place(file.beginning()));
  }

  @Test
  void whatCannotBeSeenInItIsShown() {
    assertEquals("a<U+001B>b/A-1.recipe", new PrintedPaths("a\u001Bb/").of("A-1.recipe"));
  }

  @Test
  void halfANameIsNoWay() {
    assertThrows(IllegalArgumentException.class, () -> new PrintedPaths("feeds"));
  }
}
