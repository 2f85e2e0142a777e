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

/** 100 kg of a meal of 90 % dry matter through dryers that tell too little, or an odd band. */
class DryingAndHeatTest {
  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  @BeforeEach
  void oneMeal() throws IOException {
    folder =
        new SmallFolder(root)
            .ingredient("meal", "moisture: 10 %, crude-protein: 40 ± 2 %, vitamin-a: 10000 IU/kg");
  }

  @Test
  void aDryerWithoutATemperatureLeavesNobodyKnowsWhat() throws IOException {
    process("add-water on-mix 20 %", "dry moisture 9 %");
    limits("vitamin-a min 100 IU/kg");
    assertEquals(List.of("unknown-retention"), folder.codes());
    assertTrue(folder.text().contains("what dry without a temperature leaves of"), folder.text());
  }

  @Test
  void aDryerWithoutATargetLeavesTheMoistureUnknownOfAMashToo() throws IOException {
    process("add-water on-mix 20 %", "dry temperature 60 °C", "dry time 6 h");
    limits("moisture max 30 %");
    assertEquals(List.of("moisture-unknown"), folder.codes());
  }

  @Test
  void aBandThatEndsAboveTheMoistureBeforeEndsThere() throws IOException {
    process("dry temperature 60 °C", "dry moisture 9 % accept 8 to 11 %");
    limits("moisture max 9.9 %");
    assertEquals(List.of("above-maximum"), folder.codes());
    assertTrue(folder.text().contains("moisture is 10.0 %, the maximum is 9.9 %"), folder.text());
  }

  /** 40 of 90 parts of dry matter are 40.44 % at 9 % moisture and 40.00 % at 10 %. */
  @Test
  void aBandBesideTheTargetDoesNotSpareTheTarget() throws IOException {
    process(
        "add-water on-mix 20 %",
        "dry temperature 60 °C", "dry moisture 9 to 10 % accept 10 to 12 %");
    limits("crude-protein max 40.2 %");
    assertEquals(List.of("above-maximum"), folder.codes());
  }

  @Test
  void waterAloneHasNoDryMatterToTellAnythingOn() throws IOException {
    folder
        .ingredient("meal", "moisture: 100 %")
        .recipe("mix\n  meal  100 %\nlimits\n  crude-fat  min 1 %  on dry matter\n");
    assertTrue(folder.codes().contains("below-minimum"), folder.text());
  }

  /** The most is no value: with 0 % the feed would be reckoned too dry, with 14 % too wet. */
  @Test
  void withOnlyTheMostOfAMoistureNothingIsReckoned() throws IOException {
    folder
        .ingredient("meal", "moisture: below 14 %, crude-protein: 40 %")
        .recipe(
            """
            mix
              meal  100 %
            limits
              moisture       max 13 %
              crude-protein  max 46 %  on dry matter
            """);
    assertEquals(List.of("data-no-moisture"), folder.codes(), folder.text());
    assertTrue(
        folder.text().contains("meal gives the most of its moisture, below 14 %, and not its"),
        folder.text());
  }

  /** 100 kg at 10 % to 25 %: 120 kg; to 30 %: 128.57 kg, where 40 kg of protein are 31.11 %. */
  @Test
  void waterToAMoistureIsABandToo() throws IOException {
    process("add-water to-moisture 25 % accept 21 to 30 %");
    limits("crude-protein min 31.2 %");
    assertTrue(folder.text().contains("crude-protein is 31.1 %, the minimum is 31.2 %"));
    limits("moisture max 29 %");
    assertTrue(folder.text().contains("moisture is 30.0 %, the maximum is 29.0 %"), folder.text());
  }

  /** 25 kg of water on 100 kg make 40 kg of protein 32 %. */
  @Test
  void waterOnTheMixIsABandToo() throws IOException {
    process("add-water on-mix 15 to 25 %");
    limits("crude-protein min 32.1 %");
    assertTrue(folder.text().contains("crude-protein is 32.0 %, the minimum is 32.1 %"));
  }

  /** At the dry end of the dryer the cooler finds the feed dry enough already. */
  @Test
  void aCoolerAfterTheDryEndOfADryerTakesNothing() throws IOException {
    process(
        "add-water on-mix 20 %",
        "dry temperature 60 °C",
        "dry moisture 12 % accept 10 to 13 %",
        "cool temperature 30 °C",
        "cool moisture 11 %");
    limits("crude-protein max 39.9 %");
    assertEquals(List.of("above-maximum"), withoutCooler(), folder.text());
  }

  private List<String> withoutCooler() throws IOException {
    return folder.codes().stream().filter(code -> !code.equals("cooler-cannot-dry")).toList();
  }

  private String steps = "";

  private void process(String... lines) {
    steps = "process\n  " + String.join("\n  ", lines) + "\n";
  }

  private void limits(String line) throws IOException {
    folder.recipe("mix\n  meal  100 %\n" + steps + "limits\n  " + line + "\n");
  }
}
