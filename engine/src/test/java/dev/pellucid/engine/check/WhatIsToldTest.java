package dev.pellucid.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Half a meal that tells its selenium and half another: a headline tells what is known, and never a
 * bound of what is not as if it were there.
 */
class WhatIsToldTest {
  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void oneThatTells() throws IOException {
    folder =
        new SmallFolder(root)
            .ingredient(
                "told",
                "moisture: 10 %, selenium: 4 mg/kg, calcium: 40 mg/kg, phosphorus: 8 mg/kg");
  }

  @Test
  void aMaximumThatWhatIsToldBreaks() throws IOException {
    folder.ingredient("other", "moisture: 10 %");
    limit("selenium max 1.0 mg/kg");
    assertTrue(
        folder.text().contains("selenium is at least 2.0 mg/kg, the maximum is 1.0 mg/kg"),
        folder.text());
    assertTrue(folder.text().contains("told  50 %"), folder.text());
    assertTrue(folder.text().contains("supplies 2.0 of the 2.0 mg/kg"), folder.text());
    assertFalse(folder.text().contains("with the most"), folder.text());
  }

  @Test
  void aMaximumThatABoundAloneBreaks() throws IOException {
    folder.ingredient("other", "moisture: 10 %, selenium: below 3 mg/kg");
    limit("selenium max 3.0 mg/kg");
    assertTrue(
        folder.text().contains("selenium may be as much as 3.5 mg/kg, the maximum is 3.0 mg/kg"),
        folder.text());
  }

  @Test
  void aMaximumThatTheUntoldAloneBreaksCannotBeJudged() throws IOException {
    folder.ingredient("other", "moisture: 10 %");
    limit("selenium max 3.0 mg/kg");
    assertEquals(List.of("unknown-content"), folder.codes(), folder.text());
  }

  @Test
  void aMaximumThatAllIsToldOf() throws IOException {
    folder.ingredient("other", "moisture: 10 %, selenium: 1 mg/kg");
    limit("selenium max 1.0 mg/kg");
    assertTrue(folder.text().contains("selenium is 2.5 mg/kg, the maximum"), folder.text());
  }

  /** Nothing is sure of it, and the bounds alone may break the maximum. */
  @Test
  void aMaximumOfWhichOnlyBoundsAreTold() throws IOException {
    folder
        .ingredient("told", "moisture: 10 %, selenium: below 4 mg/kg")
        .ingredient("other", "moisture: 10 %");
    limit("selenium max 1.0 mg/kg");
    assertTrue(
        folder.text().contains("selenium may be as much as 2.0 mg/kg, the maximum is 1.0 mg/kg"),
        folder.text());
  }

  @Test
  void aMinimumOfWhichHalfTheFeedTellsNothing() throws IOException {
    folder.ingredient("other", "moisture: 10 %");
    limit("selenium min 3 mg/kg");
    assertTrue(
        folder.text().contains("of what is given, selenium is 2.0 mg/kg, the minimum is 3.0 mg/kg"),
        folder.text());
  }

  /** 20 mg calcium and 8 mg phosphorus are told, 2.5; the other may hold any amount of either. */
  @Test
  void aRatioThatTheUntoldAloneBreaksCannotBeJudged() throws IOException {
    folder.ingredient("other", "moisture: 10 %, calcium: 10 mg/kg");
    limit("calcium : phosphorus min 2");
    assertEquals(List.of("unknown-content"), folder.codes(), folder.text());
  }

  @Test
  void aRatioThatWhatIsToldBreaks() throws IOException {
    folder.ingredient("other", "moisture: 10 %, calcium: 10 mg/kg");
    limit("calcium : phosphorus min 7");
    assertTrue(
        folder.text().contains("of what is given, calcium : phosphorus is 6.3, the minimum is 7.0"),
        folder.text());
  }

  /** 25 of calcium over 4 of phosphorus, or over 6 where the other holds all that it may. */
  @Test
  void aRatioThatABoundAloneBreaks() throws IOException {
    folder.ingredient("other", "moisture: 10 %, calcium: 10 mg/kg, phosphorus: below 4 mg/kg");
    limit("calcium : phosphorus min 5");
    assertTrue(
        folder.text().contains("calcium : phosphorus may be as little as 4.2, the minimum is 5.0"),
        folder.text());
  }

  @Test
  void theRecordOfFiguresCarriesTheSign() throws IOException {
    folder.ingredient("other", "moisture: 10 %, selenium: below 3 mg/kg, calcium: 10 mg/kg");
    limit("selenium max 1.0 mg/kg");
    String figures = OwnFolder.figures(root, "A-1", false).changes().get(0).text();
    assertTrue(figures.matches("(?s).*\n  selenium +≥ 2\\.000 mg/kg\n.*"), figures);
    assertTrue(figures.matches("(?s).*\n  calcium +0\\.002500 %\n.*"), figures);
    assertTrue(
        figures.matches("(?s).*\n  selenium +≥ 2\\.000 mg/kg +max 1\\.0 mg/kg +BROKEN by 1.*"),
        figures);
  }

  private void limit(String line) throws IOException {
    folder.recipe("mix\n  told  50 %\n  other 50 %\nlimits\n  " + line + "\n");
  }
}
