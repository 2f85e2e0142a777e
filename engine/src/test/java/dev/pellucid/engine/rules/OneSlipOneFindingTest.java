package dev.pellucid.engine.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What merely follows from one slip is not said beside it. */
class OneSlipOneFindingTest {
  private static final String PREMIX = "premixes/VM-CAT.premix";
  private static final String RECIPE = "recipes/CG-36.recipe";
  private static final Path MILL = Path.of("src", "test", "resources", "mill");

  @TempDir Path folder;

  @Test
  void aDoseThatCannotBeReadIsNotMissingToo() throws IOException {
    assertEquals(List.of("unit-kind"), codes(PREMIX, "10 g/kg", "10 g", StandardCharsets.UTF_8));
  }

  @Test
  void aPremixInAnotherEncodingIsNotUnknownToo() throws IOException {
    assertEquals(List.of("utf-16"), codes(PREMIX, "", "", StandardCharsets.UTF_16));
  }

  @Test
  void aRecipeInAnotherEncodingIsNamedOnce() throws IOException {
    assertEquals(List.of("not-utf-8"), codes(RECIPE, "", "", StandardCharsets.ISO_8859_1));
  }

  @Test
  void aProcessLineThatCannotBeReadLeavesNoUnknownMoisture() throws IOException {
    assertEquals(
        List.of("plus-minus"),
        codes(RECIPE, "9 %          accept", "9 ± 1 %      accept", StandardCharsets.UTF_8));
  }

  /** Codes of all findings after one stretch of a file is changed and it is saved so. */
  private List<String> codes(String path, String from, String to, Charset saved)
      throws IOException {
    String text = Files.readString(MILL.resolve(path));
    if (!from.isEmpty()) {
      assertTrue(text.contains(from), text);
      text = text.replace(from, to);
    }
    List<Finding> findings = new Mill(folder).write(path, text.getBytes(saved)).findings();
    return findings.stream().map(finding -> finding.code().text()).toList();
  }
}
