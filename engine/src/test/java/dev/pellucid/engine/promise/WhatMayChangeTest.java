package dev.pellucid.engine.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Outputs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page that says what may change names all that this version does, and nothing else. */
class WhatMayChangeTest {
  private static final Path DOCS = Path.of("docs");
  private static final Path MADE = Path.of("target", "docs");
  private static final String PAGE = "what-may-change.md";

  @TempDir Path folder = Path.of("");

  @Test
  void thePageNamesWhatIsThere() throws IOException {
    PromisedPage page =
        PromisedPage.against(Files.readString(DOCS.resolve(PAGE)), Lists.all(folder));
    Outputs.into(MADE).write(PAGE, page.next());
    assertEquals(
        "",
        page.told(),
        () -> "engine/docs/" + PAGE + " is to be replaced by engine/" + MADE + "/" + PAGE);
  }

  @Test
  void theListsHoldEnough() throws IOException {
    for (Listed list : Lists.all(folder)) {
      int least = list.name().equals("codes") ? 350 : 15;
      assertTrue(list.marked().size() > least, list::text);
    }
  }

  @Test
  void whatIsRetiredSaysWhatComesInstead() throws IOException {
    String page = Files.readString(DOCS.resolve(PAGE));
    assertEquals(List.of(), Retired.read(PromisedPage.block(page, Retired.BLOCK)).untold());
  }
}
