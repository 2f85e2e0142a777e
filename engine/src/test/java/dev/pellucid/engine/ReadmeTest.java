package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What README.md shows is what the tool says today; the pages that it leads to have their own test.
 */
class ReadmeTest {
  private static final String GROWER = "catfish/CG-36.recipe";
  private static final Path README = Path.of("..", "README.md");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)[^)]*\\)");

  @TempDir Path copy;

  @Test
  void theRecipeIsTheExampleWithLinesLeftOut() throws IOException {
    String example = Files.readString(Example.OWN.resolve(GROWER));
    assertShortened(example.lines().toList(), block("recipe"));
  }

  @Test
  void theFindingIsWhatTheSlipGives() throws IOException {
    String slip = "soybean-meal-48              4%d.00 %%";
    String text = new SlippedFolder(copy).with(GROWER, slip.formatted(4), slip.formatted(0)).text();
    assertEquals(text.strip().replace("catfish/", "recipes/catfish/"), block("finding").strip());
  }

  @Test
  void theRecallIsWhatTheExampleAnswers() throws IOException {
    String readme = Files.readString(README);
    String number = "MIN-WW-2026-11-12-1";
    assertTrue(readme.contains("\nmvn pellucid:recall -Dpellucid.lot=" + number + "\n"));
    String text =
        OwnFolder.recall(
                Example.whole(), PrintedPaths.BELOW_FOLDER, LocalDate.of(2026, 11, 25), number, "")
            .text();
    assertShortened(text.lines().toList(), block("output"));
  }

  @Test
  void whatItLeadsToIsThere() throws IOException {
    Matcher link = LINK.matcher(Files.readString(README));
    int links = 0;
    while (link.find()) {
      assertTrue(Files.exists(README.resolveSibling(link.group(1))), link.group(1));
      links++;
    }
    assertTrue(links > 10, links + " links");
  }

  private static void assertShortened(List<String> whole, String shortened) {
    Iterator<String> lines = whole.iterator();
    List<String> kept = shortened.lines().filter(line -> !line.isBlank()).toList();
    assertFalse(kept.size() < 8, "too little is shown");
    for (String line : kept) {
      boolean found = false;
      while (!found && lines.hasNext()) {
        found = lines.next().equals(line);
      }
      assertTrue(found, "not there, or not in this order: " + line);
    }
  }

  private static String block(String kind) throws IOException {
    Matcher block =
        Pattern.compile("(?s)\n```" + kind + "\n(.*?)\n```\n").matcher(Files.readString(README));
    assertTrue(block.find(), "no block " + kind);
    return block.group(1);
  }
}
