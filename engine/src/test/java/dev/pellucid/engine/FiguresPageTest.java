package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SlippedFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The difference on the page of the goal figures is the one that the change of the page makes. */
class FiguresPageTest {
  private static final Path PAGE = Path.of("..", "maven-plugin", "docs", "goals", "figures.md");
  private static final Pattern DIFF = Pattern.compile("(?s)\n```diff[^\n]*\n(.*?)\n```\n");
  private static final String SOYBEAN = "soybean-meal-48              4%d.00 %%";

  @TempDir Path copy;

  @Test
  void theDiffIsWhatTheChangeDoes() throws IOException {
    SlippedFolder folder = new SlippedFolder(copy);
    List<String> before = figures();
    folder.with("catfish/CG-36.recipe", SOYBEAN.formatted(4), SOYBEAN.formatted(0));
    List<String> after = figures();
    List<String> diff = shown();
    assertInOrder(before, without("+", diff));
    assertInOrder(after, without("-", diff));
    for (String line : diff) {
      assertFalse(line.startsWith("-") && after.contains(line.substring(1)), line);
      assertFalse(line.startsWith("+") && before.contains(line.substring(1)), line);
    }
  }

  private List<String> figures() throws IOException {
    return OwnFolder.figures(copy, "CG-36", false).changes().get(0).text().lines().toList();
  }

  private static List<String> shown() throws IOException {
    Matcher block = DIFF.matcher(Files.readString(PAGE));
    assertTrue(block.find(), "no diff on " + PAGE);
    List<String> lines = block.group(1).lines().toList();
    assertTrue(lines.size() > 15, "too little is shown");
    return lines;
  }

  private static List<String> without(String sign, List<String> diff) {
    return diff.stream()
        .filter(line -> !line.startsWith(sign))
        .map(line -> line.substring(1))
        .toList();
  }

  private static void assertInOrder(List<String> whole, List<String> shown) {
    List<String> found = new ArrayList<>(whole);
    found.retainAll(shown);
    assertEquals(shown, found);
  }
}
