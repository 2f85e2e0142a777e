package dev.pellucid.engine.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Outputs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is made of pages from the code is as it is made today. */
class MadePartsTest {
  private static final Path MADE = Path.of("target", "docs");

  static List<Path> pages() throws IOException {
    return DocPage.all();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void thePageHoldsWhatIsMade(Path page) throws IOException {
    String there = Files.readString(page);
    String made = MadeParts.made(there);
    Outputs.into(MADE).write(page.getFileName().toString(), made);
    assertTrue(made.equals(there), () -> "copy engine/" + MADE.resolve(page.getFileName()));
  }

  @Test
  void whatIsPutBetweenTheMarksIsMadeAnew() {
    String page = "<!-- made: steps -->\nold\n<!-- end of what is made -->\nmore\n";
    assertTrue(MadeParts.made(page).contains("| `grind` | `screen` (a length) |"), page);
    assertTrue(MadeParts.made(page).endsWith("<!-- end of what is made -->\nmore\n"), page);
    assertEquals(MadeParts.made(page), MadeParts.made(MadeParts.made(page)));
  }
}
