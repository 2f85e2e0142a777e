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

/** Limits are judged at the end that is worst for them; what nobody knows never keeps them. */
class WorstEndTest {
  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void empty() throws IOException {
    folder = new SmallFolder(root);
  }

  /**
   * One meal tells no lysine, the other no protein, of which it can hold 57 %: 1 % lysine in the
   * feed stands over 20 to 48.5 % protein, so the ratio is as low as 2.06 %.
   */
  @Test
  void aRatioIsLowestWithTheLeastAboveOverTheMostBelow() throws IOException {
    folder
        .ingredient("one", "moisture: 10 %, crude-protein: 40 %, crude-fat: 50 %")
        .ingredient("two", "moisture: 10 %, crude-fat: 33 %, lysine: 2 %")
        .recipe("mix\n  one  50 %\n  two  50 %\nlimits\n  lysine : crude-protein  min 4 %\n");
    assertTrue(
        folder.text().contains("lysine : crude-protein is 2.1 %, the minimum is 4.0 %"),
        folder.text());
  }

  @Test
  void aRatioOverNothingBreaksItsMaximumAndKeepsItsMinimum() throws IOException {
    folder
        .ingredient("one", "moisture: 10 %, calcium: 1 %, phosphorus: none")
        .recipe("mix\n  one  100 %\nlimits\n  calcium : phosphorus  min 1  max 2\n");
    assertEquals(List.of("above-maximum"), folder.codes());
    assertTrue(folder.text().contains("calcium : phosphorus is ∞, the maximum is 2"));
  }

  @Test
  void aMinimumOfARatioWithABoundlessLowerSumIsNotKeptInSilence() throws IOException {
    folder
        .ingredient("one", "moisture: 10 %, lysine: 1 %, crude-protein: 30 %")
        .recipe("mix\n  one  100 %\nlimits\n  lysine : digestible-energy  min 0.1 g/MJ\n");
    assertEquals(List.of("unknown-content"), folder.codes());
    assertTrue(
        folder.text().contains("the minimum of lysine : digestible-energy cannot be judged"));
  }

  /** 12 : 1 with the overage and without it; paired wrongly it would be 24 : 1 or 6 : 1. */
  @Test
  void overageIsPresentOrLostAboveAndBelowAlike() throws IOException {
    folder
        .ingredient("one", "moisture: 10 %, calcium: 12 %, phosphorus: 1 %")
        .recipe(
            """
              batch  60 kg weighed
            mix
              one  100 %
            overage
              one  100 %  for handling
            limits
              calcium : phosphorus  min 11.9  max 12.1
            """);
    assertEquals(List.of(), folder.codes());
  }

  /** 10000 ± 1000 IU in kg of 90 % dry matter, 9100 ± 910 at 9 % moisture before extrusion. */
  @Test
  void aHeatThatNobodyKnowsDoesNotTakeTheSpreadOffAMaximum() throws IOException {
    folder
        .ingredient("one", "moisture: 10 %, vitamin-a: 10000 ± 1000 IU/kg")
        .recipe(
            """
            mix
              one  100 %
            process
              add-water  on-mix       20 %
              extrude    temperature  200 °C
              dry        temperature  20 °C
              dry        moisture     9 %
            limits
              vitamin-a  max 10000 IU/kg  in 95 % of batches
            """);
    assertTrue(folder.text().contains("the maximum is 10000.0 IU/kg"), folder.text());
  }

  @Test
  void aLineOfNothingAsksForNoContent() throws IOException {
    folder
        .ingredient("one", "moisture: 10 %, vitamin-a: none")
        .ingredient("two", "moisture: 10 %")
        .recipe("mix\n  one  100 %\n  two  0 %\nlimits\n  vitamin-a  max 9 IU/kg\n");
    assertEquals(List.of("line-at-zero"), folder.codes());
  }

  /**
   * Half of 10 % fat and half of 2 % are 6.0 %; the overage of the lean half, if it is not lost,
   * thins that to 4.7 %.
   */
  @Test
  void overageThatThinsAFeedDoesNotKeepAMaximum() throws IOException {
    folder
        .ingredient("rich", "moisture: 10 %, crude-fat: 10 %")
        .ingredient("lean", "moisture: 10 %, crude-fat: 2 %")
        .recipe(
            """
            mix
              rich  50 %
              lean  50 %
            overage
              lean  100 %  for handling
            limits
              crude-fat  max 5.5 %
            """);
    assertEquals(List.of("above-maximum"), folder.codes());
    assertTrue(folder.text().contains("crude-fat is 6.0 %, the maximum is 5.5 %"), folder.text());
  }

  /** 40 % protein, of which no more than all is digested. */
  @Test
  void noMoreIsDigestedThanThereIs() throws IOException {
    folder
        .ingredient("one", "moisture: 10 %, crude-protein: 40 %")
        .recipe("mix\n  one  100 %\nlimits\n  digestible-protein  max 40 %\n");
    assertEquals(List.of(), folder.codes());
    folder.recipe("mix\n  one  100 %\nlimits\n  digestible-protein  max 39 %\n");
    assertEquals(List.of("unknown-content"), folder.codes());
    assertTrue(folder.text().contains("digestible-protein is 40.0 %, the maximum is 39.0 %"));
  }

  /** Dried from 10 to 2 % moisture, 100 kg of an ingredient become 92 kg; it is still all of it. */
  @Test
  void noMoreThanAllOfAFeedIsNotTold() throws IOException {
    folder
        .ingredient("one", "moisture: 10 %, crude-ash: 20 %")
        .recipe(
            """
            mix
              one  100 %
            process
              dry  temperature  60 °C
              dry  moisture     2 %
            limits
              calcium  min 1 %
            """);
    assertTrue(folder.text().contains("note: 100 % of the feed is of ingredients that do not"));
  }
}
