package dev.pellucid.engine.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What no plant can do is told at the figure, and what the largest or oddest can is not. */
class OutOfBoundsTest {
  private static final String CODE = "figure-out-of-bounds";

  @TempDir Path root = Path.of("");

  @ParameterizedTest
  @CsvSource({
    "batch 1 g weighed, batch 0.999 g weighed",
    "batch 10000 t finished, batch 10001 t finished",
    "batch 1000 mg weighed, batch 0.000000000001 mg weighed",
    "fish 0 to 1000 kg, fish 1 to 1001 kg",
  })
  void inTheHead(String can, String cannot) {
    each("recipe A-1\n  ", "\nmix\n  lean  100 %\n", can, cannot);
  }

  @ParameterizedTest
  @CsvSource({
    "store shelf-life 3653 d, store shelf-life 999999999999 d",
    "store shelf-life 120 months, store shelf-life 121 months",
    "store shelf-life 1 h, store shelf-life 0 d",
    "pack bag 2 t, pack bag 0 kg",
    "pack bag 1 g, pack bag 2001 kg",
    "add-water on-mix 400 %, add-water on-mix 10000 %",
    "add-water to-moisture 95 %, add-water to-moisture 100 %",
    "dry moisture 9 % accept 8 to 95 %, dry moisture 9 % accept 8 to 96 %",
    "extrude die 0.01 mm, extrude die 0 mm",
    "extrude temperature 400 °C, extrude temperature 401 °C",
    "grind screen 200 mm, grind screen 20 to 201 mm",
    "blend time 30 d, blend time 0 min",
  })
  void inTheProcess(String can, String cannot) {
    each("recipe A-1\nmix\n  lean  100 %\nprocess\n  ", "\n", can, cannot);
  }

  @ParameterizedTest
  @CsvSource({
    "inclusion lean max 100 %, inclusion lean max 400 %",
    "crude-fat max 1000 g/kg, crude-fat max 1001 g/kg",
    "energy max 60 MJ/kg, energy max 61 MJ/kg",
    "vitamin-d3 max 100000000000 IU/kg, vitamin-d3 max 200000000000 IU/kg",
    "calcium : phosphorus max 120 %, calcium : phosphorus max 1000001 %",
    "crude-fat max 5 % in 100 % of batches, crude-fat max 5 % in 101 % of batches",
    "crude-fat max 5 % at 95 % moisture, crude-fat max 5 % at 100 % moisture",
  })
  void inALimit(String can, String cannot) {
    each("recipe A-1\nmix\n  lean  100 %\nlimits\n  ", "\n", can, cannot);
  }

  @ParameterizedTest
  @CsvSource({
    "lean 100 %, lean 101 %",
    "lean 10 % within 0 to 100 %, lean 10 % within 10 to 3000 %",
  })
  void inTheMix(String can, String cannot) {
    each("recipe A-1\nmix\n  ", "\n", can, cannot);
  }

  @ParameterizedTest
  @CsvSource({
    "2199-12-31, 2200-01-01",
    "1900-01-01, 1899-12-31",
    "2027-03-31, 9999-12-31",
  })
  void inTheDayOfAWaiver(String can, String cannot) {
    String before = "recipe A-1\nmix\n  lean  100 %\nwaivers\n  crude-fat max 9 % until ";
    each(before, " by \"N\" because \"of a trial\"\n", can, cannot);
  }

  private static void each(String before, String after, String can, String cannot) {
    assertEquals(List.of(), codes(before + can + after));
    assertEquals(List.of(CODE), codes(before + cannot + after));
  }

  private static List<String> codes(String text) {
    return FeedParser.parse(new SourceFile("A-1.recipe", text)).findings().stream()
        .map(finding -> finding.code().text())
        .toList();
  }

  /** The recipe with a batch record whose lots once made the days run out. */
  @Test
  void theFindingIsTheOnlyOneAndNamesTheBounds() throws IOException {
    SmallFolder folder =
        new SmallFolder(root).ingredient("lean", "moisture: 12 %, crude-protein: 10 %");
    folder.recipe(
        """
        mix
          lean  100 %
        process
          store  shelf-life  999999999999 d
        limits
          crude-protein  min 1 %
        """);
    String told = FindingText.of(folder.findings());
    assertEquals(List.of(CODE), folder.codes(), told);
    assertTrue(told.contains("999999999999 d cannot be, a shelf life is from 1 h to 3653 d"), told);
  }
}
