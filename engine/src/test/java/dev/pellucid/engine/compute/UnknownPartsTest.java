package dev.pellucid.engine.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not told is bounded by its whole, wherever in the file the whole stands. */
class UnknownPartsTest {
  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void partsBeforeTheirWhole() throws IOException {
    folder =
        new SmallFolder(root)
            .with(
                "nutrients/0-parts.yaml",
                nutrient("of-phosphorus", "part-of: phosphorus")
                    + nutrient("of-mystery", "part-of: mystery")
                    + nutrient("mystery", ""))
            .ingredient("meal", "moisture: 10 %, crude-ash: 20 %");
  }

  private static String nutrient(String name, String partOf) {
    return name
        + ":\n  title: "
        + name
        + "\n  unit: \"%\"\n  "
        + partOf
        + "\n  stability: stable\n";
  }

  @Test
  void aPartOfAPartIsBoundedByTheOutermostWhole() throws IOException {
    folder.recipe("mix\n  meal  100 %\nlimits\n  of-phosphorus  max 1 %\n");
    assertTrue(
        folder.text().contains("of-phosphorus is 20.0 %, the maximum is 1.0 %"), folder.text());
  }

  @Test
  void aPartOfWhatNothingBoundsIsNotBoundedByNothing() throws IOException {
    folder.recipe("mix\n  meal  100 %\nlimits\n  of-mystery  max 1 %\n");
    assertEquals(List.of("unknown-content"), folder.codes());
  }
}
