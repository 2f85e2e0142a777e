package dev.pellucid.engine.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Orders of steps that no mill can do are told once, at the step that stands wrong. */
class ProcessOrderTest {
  private static final List<String> GOOD =
      List.of(
          "grind screen 1 mm",
          "blend time 12 min",
          "add-water on-mix 18 %",
          "condition start 20 °C",
          "condition temperature 85 °C",
          "extrude temperature 90 °C",
          "extrude die 4 mm",
          "dry temperature 60 °C",
          "dry moisture 9 %",
          "coat method drum",
          "cool temperature 30 °C",
          "sieve screen 2 mm",
          "pack bag 25 kg",
          "store shelf-life 60 d",
          "store temperature 25 °C");

  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void oneMeal() throws IOException {
    folder =
        new SmallFolder(root)
            .ingredient("meal", "moisture: 10 %, crude-protein: 40 %")
            .ingredient("oil", "moisture: 0.1 %, crude-fat: 99 %, crude-protein: none");
  }

  /** The step that moves, the place it moves to, and what it then stands wrong to. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "coat | 0 | coat stands before dry | below those of dry",
        "coat | 3 | coat stands before dry | below those of dry",
        "blend | 14 | blend stands after extrude | above those of extrude",
        "blend | 8 | blend stands after extrude | above those of extrude",
        "add-water | 9 | add-water stands after extrude | above those of extrude",
        "condition | 9 | condition stands after extrude | above those of extrude",
        "extrude | 0 | extrude stands before condition | below those of condition",
        "extrude | 2 | extrude stands before condition | below those of condition",
        "pack | 0 | pack stands before sieve | below those of sieve",
        "store | 8 | store stands before sieve | below those of sieve",
        "sieve | 13 | sieve stands after pack | above those of pack",
      })
  void oneStepInAWrongPlaceIsOneFinding(String step, int place, String headline, String move)
      throws IOException {
    process(moved(step, place));
    List<Finding> order =
        folder.findings().stream().filter(f -> f.code().text().equals("process-order")).toList();
    assertEquals(1, order.size(), folder.text());
    assertTrue(order.get(0).headline().startsWith(headline), order.get(0).headline());
    assertTrue(order.get(0).helps().get(0).endsWith(move), order.get(0).helps().toString());
    String at = order.get(0).span().text();
    assertEquals(step, at);
  }

  /** Two steps that are wrong to each other alone: either may move, the later one is told. */
  @Test
  void ofTwoTheLaterIsTold() throws IOException {
    process(moved("coat", 7));
    assertTrue(folder.text().contains("dry stands after coat"), folder.text());
    assertEquals(List.of("process-order"), folder.codes());
  }

  /** What is practice somewhere is computed as it is written. */
  @ParameterizedTest
  @CsvSource({"grind,2", "grind,4", "cool,8", "sieve,8", "sieve,0", "cool,11"})
  void otherOrdersArePractice(String step, int place) throws IOException {
    process(moved(step, place));
    assertFalse(folder.codes().contains("process-order"), folder.text());
  }

  @Test
  void waterToldInTwoWaysIsAnError() throws IOException {
    process(beside("add-water to-moisture 25 %"));
    assertEquals(List.of("setting-twice"), folder.codes(), folder.text());
    assertTrue(folder.text().contains("given in two ways, on-mix and to-moisture"), folder.text());
  }

  /** A file of nothing else is answered at once, with the first of them. */
  @Test
  void ofTensOfThousandsOutOfPlaceTwentyAreTold() throws IOException {
    List<String> steps = new ArrayList<>();
    for (int i = 0; i < 12000; i++) {
      steps.add("extrude temperature 90 °C");
      steps.add("blend time 12 min");
    }
    process(steps);
    long order = folder.codes().stream().filter(code -> code.equals("process-order")).count();
    assertEquals(20, order);
  }

  @Test
  void aGoodOrderIsSilent() throws IOException {
    process(GOOD);
    assertFalse(folder.codes().contains("process-order"), folder.text());
    assertFalse(folder.codes().contains("setting-twice"), folder.text());
  }

  @Test
  void aCoatAtTwoPlacesIsTold() throws IOException {
    List<String> steps = new ArrayList<>(GOOD);
    steps.add(11, "coat temperature 60 °C");
    process(steps);
    assertTrue(folder.text().contains("coat stands at two places"), folder.text());
  }

  @Test
  void aFeedOfAWrongOrderIsNotChecked() throws IOException {
    process(moved("coat", 0));
    assertEquals(List.of("process-order"), folder.codes(), folder.text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "store shelf-life 5 d",
        "dry temperature 55 °C",
        "dry moisture 8 %",
        "extrude die 3 mm",
        "coat method hand",
        "blend time 2 min",
        "grind screen 2 mm",
        "pack bag 20 kg",
        "dry moisture 9 % accept 8 to 10 %"
      })
  void twoFiguresForOneSettingAreAnError(String line) throws IOException {
    process(beside(line));
    List<Finding> twice =
        folder.findings().stream().filter(f -> f.code().text().equals("setting-twice")).toList();
    assertEquals(1, twice.size(), folder.text());
    assertTrue(twice.get(0).headline().endsWith("is given twice, with two figures"));
    assertEquals("error", twice.get(0).severity().word());
  }

  @Test
  void theSameFigureTwiceIsAWarning() throws IOException {
    process(beside("store shelf-life 60 d"));
    Finding twice =
        folder.findings().stream()
            .filter(f -> f.code().text().equals("setting-twice"))
            .findFirst()
            .orElseThrow();
    assertEquals("warning", twice.severity().word());
    assertEquals("store shelf-life is given twice", twice.headline());
  }

  /** The shelf life is one, however the lines of the store are parted. */
  @Test
  void theStoreIsOneAlsoWhereItsLinesAreParted() throws IOException {
    List<String> steps = new ArrayList<>(GOOD);
    steps.add(12, "store shelf-life 5 d");
    process(steps);
    assertTrue(folder.text().contains("store shelf-life is given twice"), folder.text());
  }

  @Test
  void aSettingForOneIngredientStandsBesideTheSettingForAll() throws IOException {
    process(beside("grind meal screen 0.5 mm"));
    assertFalse(folder.codes().contains("setting-twice"), folder.text());
  }

  @Test
  void aStepThatIsDoneTwiceHasItsOwnSettings() throws IOException {
    List<String> steps = new ArrayList<>(GOOD);
    steps.add(2, "grind screen 0.5 mm");
    process(steps);
    assertFalse(folder.codes().contains("setting-twice"), folder.text());
  }

  private static List<String> beside(String line) {
    String step = line.substring(0, line.indexOf(' '));
    List<String> steps = new ArrayList<>(GOOD);
    int last = 0;
    for (int i = 0; i < steps.size(); i++) {
      last = steps.get(i).startsWith(step + " ") ? i : last;
    }
    steps.add(last + 1, line);
    return steps;
  }

  private static List<String> moved(String step, int place) {
    List<String> steps =
        new ArrayList<>(GOOD.stream().filter(l -> !l.startsWith(step + " ")).toList());
    List<String> own = GOOD.stream().filter(l -> l.startsWith(step + " ")).toList();
    steps.addAll(Math.min(place, steps.size()), own);
    return steps;
  }

  private void process(List<String> steps) throws IOException {
    folder.recipe(
        "  batch 100 kg weighed\nmix\n  meal 95 %\ncoat\n  oil 5 %\nlimits\n  crude-protein min 1 %\n"
            + "process\n  "
            + String.join("\n  ", steps)
            + "\n");
  }
}
