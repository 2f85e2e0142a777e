package dev.pellucid.engine.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A limit that stands twice in one file, and a ratio to energy without its unit. */
class TwiceTest {
  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void aMeal() throws IOException {
    folder = new SmallFolder(root).ingredient("meal", "moisture: 10 %, crude-ash: 9 %");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "  crude-ash  max 10 %\n  crude-ash  max 12 %\n",
        "  crude-ash  max 12 %\n  crude-ash  max 10 %\n",
        "  crude-ash  max 10 %\n  crude-ash  max 100 g/kg\n"
      })
  void twoMaximaOfOneFigureAreAskedAboutInEitherOrder(String limits) throws IOException {
    folder.recipe("mix\n  meal  100 %\nlimits\n" + limits);
    assertEquals(List.of("listed-twice"), folder.codes(), folder.text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "  crude-ash  min 5 %\n  crude-ash  max 12 %\n",
        "  crude-ash  max 12 %\n  crude-ash  max 11 % on dry matter\n",
        "  crude-ash  max 12 %\n  crude-ash  max 12.5 % in 90 % of batches\n"
      })
  void otherSidesBasesAndPartsOfBatchesAreOtherLimits(String limits) throws IOException {
    folder.recipe("mix\n  meal  100 %\nlimits\n" + limits);
    assertTrue(!folder.codes().contains("listed-twice"), folder.text());
  }

  @Test
  void aRatioToEnergyNeedsItsUnit() throws IOException {
    folder
        .ingredient("meal", "moisture: 10 %, crude-protein: 40 %, crude-fat: 8 %, crude-ash: 9 %")
        .recipe("mix\n  meal  100 %\nlimits\n  crude-protein : gross-energy  min 18\n");
    assertTrue(folder.text().contains("help: write 18 g/MJ"), folder.text());
  }
}
