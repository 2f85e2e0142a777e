package dev.pellucid.engine.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.goal.ExplainReport;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * 95 kg of a meal and 5 kg of oil: a moisture that a step sets hangs on no lot, one that no step
 * sets does.
 */
class DriedMoistureTest {
  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void aMealAndOil() throws IOException {
    folder =
        new SmallFolder(root)
            .ingredient("meal", "moisture: 10 ± 2 %, crude-protein: 40 ± 2 %")
            .ingredient("oil", "moisture: 1.0 ± 0.2 %, crude-protein: none");
  }

  /**
   * Kernel 85.5 / 0.9 = 95 kg at the wet end with 9.5 kg of water, 0.05 kg with the oil: 9.55 %.
   * The oil alone varies, by 5 x 0.2 % = 0.01 %, and 1.645 of these are 0.0164 %.
   */
  @Test
  void theBandOfTheDryerIsItsSpread() throws IOException {
    recipe("moisture max 9.567 % in 95 % of batches", "dry moisture 9 % accept 8 to 10 %");
    assertEquals(List.of(), folder.codes(), folder.text());
    recipe("moisture max 9.566 % in 95 % of batches", "dry moisture 9 % accept 8 to 10 %");
    assertEquals(List.of("above-maximum"), folder.codes(), folder.text());
  }

  /** 9.55 % with a deviation of 0.95 x 2 %: 9.55 + 1.645 x 1.9 = 12.68 %. */
  @Test
  void aMashKeepsTheSpreadOfItsLots() throws IOException {
    recipe("moisture max 12.6 % in 95 % of batches", "blend time 12 min");
    assertTrue(folder.text().contains("moisture is 12.7 % in 95 % of batches"), folder.text());
    recipe("moisture max 12.7 % in 95 % of batches", "blend time 12 min");
    assertEquals(List.of(), folder.codes(), folder.text());
  }

  @Test
  void explainedFromTheStepThatSetsIt() throws IOException {
    recipe("moisture max 12 %", "dry moisture 9 % accept 8 to 10 %");
    String told = explained("moisture");
    assertTrue(told.contains("set by the process: dry aims at 9 %, and takes 8 to 10 %"), told);
    assertTrue(told.matches("(?s).*\ndry +93\\.956 .*9 %.*process.*8\\.545.*"), told);
    assertTrue(told.matches("(?s).*\noil +5\\.000 .*0\\.051\n.*"), told);
    assertFalse(told.contains("meal"), told);
    assertFalse(told.matches("(?s).* -0\\..*"), told);
  }

  /** A cooler that aims at no moisture changes nothing, before the coat or after it. */
  @Test
  void explainedWhereACoolerOnlyCools() throws IOException {
    recipe(
        "moisture max 12 %",
        "dry moisture 9 % accept 8 to 10 %", "coat method drum", "cool temperature 25 °C");
    String told = explained("moisture");
    assertTrue(told.matches("(?s).*\ndry +93\\.956 .*9 %.*process.*8\\.545.*"), told);
    assertTrue(told.matches("(?s).*\noil +5\\.000 .*0\\.051\n.*"), told);
    assertTrue(told.matches("(?s).*\nAt the richest +9\\.550 .*dry leaves 10 % moisture.*"), told);
    assertFalse(told.contains("meal"), told);
    assertFalse(told.matches("(?s).* -0\\..*"), told);
  }

  /** A cooler after the coat takes its aim of the coated feed: nothing else brings water. */
  @Test
  void explainedWhereTheCoatIsInTheAim() throws IOException {
    recipe("moisture max 12 %", "coat method drum", "cool moisture 9 %");
    String told = explained("moisture");
    assertTrue(told.contains("set by the process: cool aims at 9 %"), told);
    assertFalse(told.contains("\noil"), told);
    assertTrue(told.contains("9.000"), told);
  }

  @Test
  void explainedOfAMash() throws IOException {
    recipe("moisture max 30 %", "add-water on-mix 10 %");
    String told = explained("moisture");
    assertTrue(told.matches("(?s).*\nadd-water +9\\.500 .*water.*process.*8\\.68.*"), told);
    assertTrue(told.matches("(?s).*\nmeal +95\\.000 .*10 ± 2 %.*8\\.68.*"), told);
  }

  private String explained(String figure) throws IOException {
    ExplainReport report = OwnFolder.explain(root, LocalDate.of(2026, 11, 25), "A-1", figure);
    return report.text();
  }

  private void recipe(String limit, String... steps) throws IOException {
    folder.recipe(
        "mix\n  meal 95 %\ncoat\n  oil 5 %\nprocess\n  "
            + String.join("\n  ", steps)
            + "\nlimits\n  "
            + limit
            + "\n");
  }
}
